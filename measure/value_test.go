package measure

import (
	"encoding/json"
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Number tokens are those of JSON (RFC 8259 section 6), no more and no less.
func TestNumberTokens(t *testing.T) {
	for _, tt := range []struct {
		token     string
		want      float64
		lastDigit float64
	}{
		{"0", 0, 1},
		{"-0", 0, 1},
		{"17", 17, 1},
		{"-17", -17, 1},
		{"2.4", 2.4, 0.1},
		{"2.40", 2.4, 0.01},
		{"0.001", 0.001, 0.001},
		{"1e3", 1000, 1000},
		{"1E+3", 1000, 1000},
		{"1.2e3", 1200, 100},
		{"1.20e3", 1200, 10},
		{"25e-1", 2.5, 0.1},
		{"1e-400", 0, 0}, // too small to be told from 0, and so is its last digit
		{strings.Repeat("9", 40), 1e40, 1},
	} {
		v, err := NumberValue(tt.token)
		if err != nil {
			t.Errorf("%q: %v", tt.token, err)
			continue
		}
		if v.Token() != tt.token || v.IsText() || v.IsZero() {
			t.Errorf("%q is kept as %q, text %v, absent %v", tt.token, v.Token(), v.IsText(), v.IsZero())
		}
		if f, ok := v.Float(); !ok || f != tt.want {
			t.Errorf("%q is %v, want %v", tt.token, f, tt.want)
		}
		if got := v.LastDigit(); got != tt.lastDigit {
			t.Errorf("last digit of %q stands for %v, want %v", tt.token, got, tt.lastDigit)
		}
	}
}

// Each refusal stands beside a near twin that is taken.
func TestWhatIsNoNumberIsRefused(t *testing.T) {
	for _, tt := range []struct{ bad, twin string }{
		{"", "0"}, {" 1", "1"}, {"1 ", "1"}, {"+1", "1"}, {"01", "10"}, {"-01", "-10"}, {".5", "0.5"}, {"5.", "5.0"},
		{"1,5", "1.5"}, {"1e", "1e1"}, {"1e+", "1e+1"}, {"1.e1", "1.0e1"}, {"--1", "-1"}, {"-", "-1"}, {"0x10", "10"},
		{"1_000", "1000"}, {"NaN", "0"}, {"Infinity", "0"}, {"1e309", "1e308"}, {"-1e309", "-1e308"}, {"null", "0"},
		{strings.Repeat("1", 41), strings.Repeat("1", 40)},
	} {
		if _, err := NumberValue(tt.bad); !errors.Is(err, ErrNumber) {
			t.Errorf("%q: error %v, want that it is not a number", tt.bad, err)
		}
		if _, err := NumberValue(tt.twin); err != nil {
			t.Errorf("the near twin %q of %q: %v", tt.twin, tt.bad, err)
		}
	}
}

func TestTextsAndAbsentValuesAreNoNumbers(t *testing.T) {
	for name, v := range map[string]Value{"text": TextValue("10.9"), "empty text": TextValue(""), "absent": {}} {
		if f, ok := v.Float(); ok || f != 0 || v.LastDigit() != 0 {
			t.Errorf("%s passes for the number %v with last digit %v", name, f, v.LastDigit())
		}
	}
	if TextValue("").IsZero() || !(Value{}).IsZero() {
		t.Error("an empty text is present, the zero value is absent")
	}
}

func TestFloatsAreWrittenInTheirShortestForm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.Float64().Draw(t, "f")
		v, err := FloatValue(f)
		if math.IsNaN(f) || math.IsInf(f, 0) {
			if !errors.Is(err, ErrNumber) {
				t.Fatalf("%v is taken", f)
			}
			return
		}
		if back, ok := v.Float(); err != nil || !ok || back != f {
			t.Fatalf("%v comes back as %v (%q), %v", f, back, v.Token(), err)
		}
	})
	for _, f := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if _, err := FloatValue(f); !errors.Is(err, ErrNumber) {
			t.Errorf("%v is taken", f)
		}
	}
}

// The last digit is what the number moves by when that digit is raised by one.
func TestLastDigitIsTheStepOfTheLastPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 9_999_998).Draw(t, "digits")
		places := rapid.IntRange(0, 6).Draw(t, "places")
		token := strconv.FormatFloat(float64(n)/math.Pow(10, float64(places)), 'f', places, 64)
		v := number(t, token)
		if got := v.LastDigit(); math.Abs(got-math.Pow(10, -float64(places))) > 1e-15 {
			t.Fatalf("%q: %v", token, got)
		}
	})
}

// A token is taken exactly when encoding/json, an independent reader of RFC 8259, takes it as a
// finite number of at most 40 characters without space around it.
func FuzzNumberValue(f *testing.F) {
	for _, seed := range []string{"2.40", "-17", "1e3", "01", "-", "1.", ".1", "1e999", "0e99999999999999999999", "NaN", " 1", "1e+", "true"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, token string) {
		v, err := NumberValue(token)
		var want float64
		isNumber := json.Unmarshal([]byte(token), &want) == nil && token != "null" &&
			strings.TrimSpace(token) == token && len(token) <= 40
		if isNumber != (err == nil) {
			t.Fatalf("%q: %v, but an independent reader says number = %v", token, err, isNumber)
		}
		if err != nil {
			return
		}
		got, ok := v.Float()
		if !ok || got != want || v.Token() != token {
			t.Fatalf("%q is %v, %v; want %v", token, got, ok, want)
		}
		if d := v.LastDigit(); math.IsNaN(d) || math.IsInf(d, 0) || d < 0 {
			t.Fatalf("last digit of %q is %v", token, d)
		}
	})
}
