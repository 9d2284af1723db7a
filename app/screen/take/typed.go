package take

import (
	"strings"

	"yokebook/measure"
)

// Typed is a half-typed number: digits with at most one decimal sign, never a sign in front.
type Typed struct {
	text string // with a point, whatever the decimal sign of the language
}

// TypedOf types a number again as it was; what no keys could have typed is left out.
func TypedOf(text string) Typed {
	var t Typed
	for _, r := range text {
		if r == '.' {
			t.Decimal()
		} else {
			t.Digit(int(r - '0'))
		}
	}
	return t
}

// mostDigits is the longest number that the keypad takes.
const mostDigits = 8

// Digit adds a digit; what makes no number is left out.
func (t *Typed) Digit(d int) {
	switch {
	case d < 0 || d > 9 || len(strings.Replace(t.text, ".", "", 1)) >= mostDigits:
	case t.text == "0":
		t.text = string(rune('0' + d))
	default:
		t.text += string(rune('0' + d))
	}
}

// Decimal adds the decimal sign, once.
func (t *Typed) Decimal() {
	switch {
	case strings.Contains(t.text, "."):
	case t.text == "":
		t.text = "0."
	default:
		t.text += "."
	}
}

// Erase takes back the last sign.
func (t *Typed) Erase() {
	if t.text != "" {
		t.text = t.text[:len(t.text)-1]
	}
}

// Empty reports that nothing was typed.
func (t Typed) Empty() bool { return t.text == "" }

// Text is what was typed, with a decimal comma where the language writes one.
func (t Typed) Text(comma bool) string {
	if comma {
		return strings.Replace(t.text, ".", ",", 1)
	}
	return t.text
}

// Value is the number as a value, negative when asked for. It is false while nothing was typed.
func (t Typed) Value(negative bool) (measure.Value, bool) {
	token := strings.TrimSuffix(t.text, ".")
	if token == "" {
		return measure.Value{}, false
	}
	if negative && !t.zero() {
		token = "-" + token
	}
	v, err := measure.NumberValue(token)
	return v, err == nil
}

// zero reports a number that needs no side.
func (t Typed) zero() bool { return strings.Trim(t.text, "0.") == "" }
