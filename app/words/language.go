package words

import (
	"fmt"
	"sort"
	"strings"

	"yokebook/measure"
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

// Differences lists what one of two languages lacks: keys that only one has, sentences whose gaps
// differ, and questions, places and answers of points. It is sorted and empty for two complete
// languages.
func Differences(a, b *Language) []string {
	out := append(a.pointTextsLacking(), b.pointTextsLacking()...)
	for key, sentence := range a.sentences {
		other, ok := b.sentences[key]
		switch {
		case ofPoint(key):
		case !ok:
			out = append(out, fmt.Sprintf("%s lacks %s", b.Tag, key))
		case !sameGaps(sentence, other):
			out = append(out, fmt.Sprintf("%s and %s have other gaps in %s", a.Tag, b.Tag, key))
		}
	}
	for key := range b.sentences {
		if !a.Has(key) && !ofPoint(key) {
			out = append(out, fmt.Sprintf("%s lacks %s", a.Tag, key))
		}
	}
	sort.Strings(out)
	return out
}

// ofPoint reports a key of a text that a native language takes from the table of points.
func ofPoint(key string) bool {
	return strings.HasPrefix(key, "question.") || strings.HasPrefix(key, "place.") || strings.HasPrefix(key, "code.")
}

// pointTextsLacking lists the texts of points that a language lacks whose words do not stand in the
// table of points itself.
func (l *Language) pointTextsLacking() []string {
	if l.native {
		return nil
	}
	var out []string
	for _, p := range measure.Points {
		keys := []string{"question." + p.Key, "place." + p.Key}
		for _, c := range p.Codes {
			keys = append(keys, codeKey(p, c))
		}
		for _, key := range keys {
			if !l.Has(key) {
				out = append(out, fmt.Sprintf("%s lacks %s", l.Tag, key))
			}
		}
	}
	return out
}
