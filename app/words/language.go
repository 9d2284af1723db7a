package words

import (
	"fmt"
	"sort"
	"strings"
)

// table holds the sentences of one area: key → sentence with gaps.
type table map[string]string

// Language makes all sentences of one human language. It is read only once made and safe for
// concurrent use.
type Language struct {
	Tag   string // "en"
	Name  string // in the language itself
	Comma bool   // numbers are written with a decimal comma

	units     Units
	chosen    Chosen
	sentences map[string]string
	double    []string // keys that stood in two tables; a test demands that there are none
	native    bool     // questions and places of points come from the table of points
}

// Languages lists the languages that the program speaks, the default first.
var Languages = []*Language{English, German}

// newLanguage merges the tables of a language.
func newLanguage(tag, name string, tables ...table) *Language {
	l := &Language{Tag: tag, Name: name, sentences: map[string]string{}}
	for _, t := range tables {
		for key, sentence := range t {
			if _, taken := l.sentences[key]; taken {
				l.double = append(l.double, key)
			}
			l.sentences[key] = sentence
		}
	}
	sort.Strings(l.double)
	return l
}

// WithComma returns the same language with the decimal comma switched on or off.
func (l *Language) WithComma(on bool) *Language {
	with := *l
	with.Comma = on
	return &with
}

// Has reports whether the language has a sentence for the key.
func (l *Language) Has(key string) bool {
	_, ok := l.sentences[key]
	return ok
}

// Say returns the sentence for key with its gaps filled. A key that the language lacks comes back
// with its arguments, so that nothing is lost; tests see to it that none is lacking.
func (l *Language) Say(key string, args ...any) string {
	sentence, ok := l.sentences[key]
	if !ok {
		return strings.TrimSpace(key + " " + strings.TrimSpace(fmt.Sprintln(args...)))
	}
	return l.fill(sentence, args)
}

// or returns the sentence for key, or other where the language has none.
func (l *Language) or(key, other string) string {
	if sentence, ok := l.sentences[key]; ok {
		return sentence
	}
	return other
}
