package words

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"yokebook/checks"
	"yokebook/measure"
)

// gap is one place in a sentence that takes an argument: {index kind}.
type gap struct {
	index int
	kind  string
}

// wordKinds are the kinds of gap that put in the word for a key. Every other kind is a unit.
var wordKinds = []string{"", "point", "check", "subject", "input", "state", "verdict", "group", "tool", "unit", "id", "word", "ride", "load"}

// word returns the word for a key, and the key itself for a kind that is a unit.
func (l *Language) word(kind, key string) string {
	switch kind {
	case "point":
		return l.Point(key)
	case "check":
		return l.Check(key, "")
	case "subject":
		return l.Subject(key)
	case "input":
		return l.Input(key)
	case "state":
		return l.stateText(key)
	case "verdict":
		return l.Verdict(checks.Verdict(key))
	case "group":
		return l.Group(measure.Group(key))
	case "tool":
		return l.Instrument(key)
	case "unit":
		return l.Unit(key)
	case "ride":
		return l.Ride(measure.Ride(key))
	case "load":
		return l.Load(measure.Load(key))
	case "id":
		return shortID(key)
	case "word":
		return l.or("word."+key, key)
	}
	return key
}

// parts cuts a sentence into plain text and gaps: texts[i] stands before gaps[i], and one more text
// follows the last gap. An opening brace that starts no gap is plain text.
func parts(sentence string) (texts []string, gaps []gap) {
	rest, plain := sentence, ""
	for {
		open := strings.IndexByte(rest, '{')
		if open < 0 {
			return append(texts, plain+rest), gaps
		}
		inside, after, closed := strings.Cut(rest[open+1:], "}")
		g, ok := parseGap(inside)
		if !closed || !ok {
			plain += rest[:open+1]
			rest = rest[open+1:]
			continue
		}
		texts = append(texts, plain+rest[:open])
		gaps = append(gaps, g)
		rest, plain = after, ""
	}
}

func parseGap(inside string) (gap, bool) {
	number, kind, _ := strings.Cut(inside, " ")
	index, err := strconv.Atoi(number)
	if err != nil || index < 0 {
		return gap{}, false
	}
	return gap{index: index, kind: kind}, true
}

// fill puts args into the gaps of a sentence. A gap without an argument shows as "?".
func (l *Language) fill(sentence string, args []any) string {
	texts, gaps := parts(sentence)
	var out strings.Builder
	for i, g := range gaps {
		out.WriteString(texts[i])
		switch {
		case g.index >= len(args):
			out.WriteString("?")
		case g.kind == "finding":
			out.WriteString(l.findingNamed(args[g.index:]))
		case g.kind == "base":
			out.WriteString(l.put(args[g.index], baseUnit(args[0])))
		default:
			out.WriteString(l.put(args[g.index], g.kind))
		}
	}
	out.WriteString(texts[len(texts)-1])
	return out.String()
}

// put writes one argument: the word for a key, or a number with the unit that the gap names.
func (l *Language) put(arg any, kind string) string {
	switch a := arg.(type) {
	case string:
		return l.word(kind, Plain(a))
	case int:
		if _, _, ok := l.otherUnit(kind); ok {
			return l.Number(float64(a), kind, 0)
		}
		return l.number(strconv.Itoa(a), kind)
	case float64:
		if kind == "percent" {
			return l.percent(a)
		}
		if _, _, ok := l.otherUnit(kind); ok {
			return l.Number(a, kind, 0)
		}
		return l.number(short(a), kind)
	case *float64:
		if a == nil {
			return "?"
		}
		return l.put(*a, kind)
	}
	return fmt.Sprint(arg)
}

// Plain takes out what would move the cursor or break a line or a column: text from a file is
// shown, never obeyed.
func Plain(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) || r == '\u2028' || r == '\u2029' || r >= '\u202a' && r <= '\u202e' || r >= '\u2066' && r <= '\u2069' {
			return ' '
		}
		return r
	}, text)
}

// number dresses digits with the decimal sign and, unless kind is one of words, with its unit.
func (l *Language) number(digits, kind string) string {
	if slices.Contains(wordKinds, kind) {
		return l.decimal(digits)
	}
	return l.decimal(digits) + l.unitAfter(kind)
}

// baseUnit is the unit that values of a point are computed in: a gap {1 base} has the unit of the
// point named by the first argument.
func baseUnit(point any) string {
	key, _ := point.(string)
	p, _ := measure.PointOf(key)
	return string(p.Quantity.Base())
}

// findingNamed is the title of the finding that three arguments name: check, subject, state.
func (l *Language) findingNamed(args []any) string {
	var name [3]string
	for i := range min(len(args), len(name)) {
		name[i], _ = args[i].(string)
	}
	state, _ := measure.ParseState(name[2])
	return l.Title(checks.Finding{Check: name[0], Subject: name[1], State: state})
}

// shortID is the part of an id that people can compare by eye: its last eight characters.
func shortID(id string) string {
	if len(id) != 36 {
		return id
	}
	return "…" + id[28:]
}
