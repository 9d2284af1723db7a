package words

import (
	"fmt"
	"sort"
	"strings"

	"yokebook/measure"
)

// differences lists what one of two languages lacks: keys that only one has, sentences whose gaps
// differ, and questions, places and answers of points. It is sorted and empty for two complete
// languages.
func differences(a, b *Language) []string {
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

func sameGaps(a, b string) bool {
	return gapList(a) == gapList(b)
}

func gapList(sentence string) string {
	_, gaps := parts(sentence)
	list := make([]string, len(gaps))
	for i, g := range gaps {
		list[i] = fmt.Sprintf("%d %s", g.index, g.kind)
	}
	sort.Strings(list)
	return strings.Join(list, "|")
}
