package measure

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"unicode"
	"unicode/utf8"
)

// ErrEntry is returned for typed text that can't be taken for a value.
var ErrEntry = errors.New("can't be read")

// maxEntry is the longest text taken from a keypad or a command line, in bytes.
const maxEntry = 60

// entry is typed text, understood.
type entry struct {
	value   Value
	unit    Unit
	typed   string  // where the digits of value are worked out, not typed
	stepOne float64 // one step of the last place typed, in unit
}

// ParseEntry reads what a person typed for a quantity. unit is what a number without a unit is in;
// empty means the quantity's base unit. It returns the value and its unit, and the typed text where
// the digits of the value were worked out from it: that text is kept in Reading.Entered.
//
//	2.40   2,40   +2.4   .5        decimal point or comma, never a mark for thousands
//	74,5 mm   3 in   3"   2.5°     a unit behind the number wins over unit
//	2°30'  2 30'  2d30m  2°30  45' degrees and minutes of an angle
//	7/16   3 1/2"  3-1/2 in        halves to 128ths of an inch; inches even where unit is mm
//	3.73:1                         a ratio
//	yes  no                        an answer, for 1 and 0
//
// Texts are taken as they stand, without blanks around them. It errs with ErrEntry, or with what is
// wrong about the unit; whether the number can be true is asked of the point (Point.Possible).
func ParseEntry(text string, q Quantity, unit Unit) (Value, string, Unit, error) {
	e, err := parseEntry(text, q, unit)
	return e.value, e.typed, e.unit, err
}

// Step returns one step of the last place that was typed, in the base unit of the point's quantity:
// 0.1 for 2.4 deg, a 60th of a degree for 2°30', 1.5875 mm for 7/16 in. Entered counts as long as
// Value holds what it says, with either sign; otherwise the last digit of Value does. It is 0 for a
// text and for an unknown point or unit.
func (r Reading) Step() float64 {
	p, ok := PointOf(r.Point)
	if !ok {
		return 0
	}
	step := r.Value.LastDigit()
	if r.Entered != "" {
		e, err := parseEntry(r.Entered, p.Quantity, r.Unit)
		if err == nil && e.unit == r.Unit && holds(r.Value, e) {
			step = e.stepOne
		}
	}
	out, err := Convert(step, r.Unit, p.Quantity.Base())
	if err != nil {
		return 0
	}
	return out
}

// holds reports whether v says the same as e to within half a step, signs apart: a screen asks for
// the size and for the side apart.
func holds(v Value, e entry) bool {
	a, okA := v.Float()
	b, okB := e.value.Float()
	return okA && okB && e.stepOne > 0 && math.Abs(math.Abs(a)-math.Abs(b)) <= e.stepOne/2
}

func parseEntry(text string, q Quantity, unit Unit) (entry, error) {
	text = strings.TrimSpace(text)
	if len(text) > maxEntry || !utf8.ValidString(text) || strings.ContainsFunc(text, unicode.IsControl) {
		return entry{}, fmt.Errorf("%.40q %w: more than %d characters, or none that a keyboard has", text, ErrEntry, maxEntry)
	}
	if text == "" {
		return entry{}, fmt.Errorf("nothing was typed; type %s", example(q))
	}
	if q == Text {
		return entry{value: TextValue(text)}, nil
	}
	if unit == "" {
		unit = q.Base()
	}
	if err := checkUnit(unit, q); err != nil {
		return entry{}, err
	}
	plain := marks.Replace(text)
	var e entry
	var err error
	switch {
	case q == Answer && (plain == "yes" || plain == "no"):
		e = entry{value: Value{token: map[string]string{"yes": "1", "no": "0"}[plain]}, typed: text, stepOne: 1}
	case q == Angle && degMin.MatchString(plain):
		e, err = minutesOf(degMin.FindStringSubmatch(plain))
	case q == Length && fraction.MatchString(plain):
		e, err = fractionOf(fraction.FindStringSubmatch(plain))
	default:
		return decimalOf(plain, q, unit)
	}
	if err != nil {
		return entry{}, fmt.Errorf("%.40q %w", text, err)
	}
	if e.unit == "" {
		e.unit = unit
	}
	e.typed = text
	return e, nil
}

// marks brings what keyboards offer for one mark to one form.
var marks = strings.NewReplacer("−", "-", "′", "'", "’", "'", "''", `"`, "″", `"`, "”", `"`, "º", "°", "⁄", "/", "\u00a0", " ")

// example shows how a quantity is typed.
func example(q Quantity) string {
	switch q {
	case Angle:
		return "degrees such as 2.4 or 2°30'"
	case Length:
		return `a length such as 74.5, 74.5 mm, 3 in or 3 1/2"`
	case Count:
		return "a whole number such as 24"
	case Answer:
		return "yes, no or the number of the answer"
	case Text:
		return "the text as it is written on the part"
	}
	if q.Bare() {
		return "a number such as 3.73"
	}
	return fmt.Sprintf("a number such as 12.5 %s", q.Base())
}
