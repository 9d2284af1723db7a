package measure

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Value is what was entered, kept as its token: a JSON number to the last digit typed, or a text
// for the few points that are read as one (tyre code, bolt grade). The zero Value is absent.
type Value struct {
	token string
	text  bool
}

// ErrNumber is returned for a token that is not a finite JSON number.
var ErrNumber = errors.New("not a number")

// maxNumberToken is the longest number token taken from a file or a keypad.
const maxNumberToken = 40

// NumberValue takes a JSON number token ("2.40", "-17", "1e3"). It errs with ErrNumber for
// anything else, for tokens over 40 characters and for numbers that overflow a float64.
func NumberValue(token string) (Value, error) {
	if len(token) > maxNumberToken || !isJSONNumber(token) {
		return Value{}, fmt.Errorf("%.40q is %w", token, ErrNumber)
	}
	if f, err := strconv.ParseFloat(token, 64); err != nil || math.IsInf(f, 0) {
		return Value{}, fmt.Errorf("%.40q is %w this program can hold", token, ErrNumber)
	}
	return Value{token: token}, nil
}

// TextValue takes a text such as a tyre code.
func TextValue(text string) Value { return Value{token: text, text: true} }

// FloatValue writes f in its shortest form. It errs with ErrNumber when f is not finite.
func FloatValue(f float64) (Value, error) {
	return NumberValue(strconv.FormatFloat(f, 'g', -1, 64))
}

// IsZero reports an absent value.
func (v Value) IsZero() bool { return v.token == "" && !v.text }

// IsText reports a value that was entered as text.
func (v Value) IsText() bool { return v.text }

// Token returns the number token or the text, verbatim.
func (v Value) Token() string { return v.token }

// Float returns the number, and false for a text or an absent value.
func (v Value) Float() (float64, bool) {
	if v.text || v.token == "" {
		return 0, false
	}
	f, err := strconv.ParseFloat(v.token, 64)
	return f, err == nil
}

// LastDigit returns the place value of the last digit written: 0.01 for "2.40", 1 for "17",
// 100 for "1.2e3". It is 0 for a text.
func (v Value) LastDigit() float64 {
	if v.text || v.token == "" {
		return 0
	}
	mantissa, exponent, _ := strings.Cut(strings.ToLower(v.token), "e")
	power, _ := strconv.Atoi(exponent)
	if _, decimals, ok := strings.Cut(mantissa, "."); ok {
		power -= len(decimals)
	}
	f, err := strconv.ParseFloat("1e"+strconv.Itoa(power), 64)
	if err != nil {
		return 0
	}
	return f
}

func isJSONNumber(s string) bool {
	s = strings.TrimPrefix(s, "-")
	whole, rest := digits(s)
	if whole == "" || len(whole) > 1 && whole[0] == '0' {
		return false
	}
	if after, ok := strings.CutPrefix(rest, "."); ok {
		var decimals string
		if decimals, rest = digits(after); decimals == "" {
			return false
		}
	}
	if rest == "" {
		return true
	}
	if rest[0] != 'e' && rest[0] != 'E' {
		return false
	}
	rest = rest[1:]
	if rest != "" && (rest[0] == '+' || rest[0] == '-') {
		rest = rest[1:]
	}
	exponent, rest := digits(rest)
	return exponent != "" && rest == ""
}

func digits(s string) (run, rest string) {
	n := 0
	for n < len(s) && s[n] >= '0' && s[n] <= '9' {
		n++
	}
	return s[:n], s[n:]
}
