package words

import (
	"sort"
	"strings"
)

// Fault puts what a place, or the store behind it, says it could not do into the language. The line
// comes in the words of the package that met it, with names, paths and addresses in it: those stay,
// and so does a phrase that no table knows.
func (l *Language) Fault(line string) string { return l.phrases("fault.", line) }

// Source puts the phrases that tell of no paper, or of one that was not looked up, into the language.
// Names of papers stay as they are.
func (l *Language) Source(source string) string { return l.phrases("source.", source) }

// phrases replaces each English phrase whose key begins so by the language's own, the longest first,
// so that none is taken apart by a shorter one within it.
func (l *Language) phrases(prefix, text string) string {
	if l.Tag == English.Tag {
		return text
	}
	var keys []string
	for key := range English.sentences {
		if strings.HasPrefix(key, prefix) {
			keys = append(keys, key)
		}
	}
	sort.Slice(keys, func(i, j int) bool {
		a, b := English.sentences[keys[i]], English.sentences[keys[j]]
		return len(a) > len(b) || len(a) == len(b) && a < b
	})
	for _, key := range keys {
		text = strings.ReplaceAll(text, English.sentences[key], l.sentences[key])
	}
	return text
}
