package measure

import (
	"fmt"
	"math/big"
	"regexp"
	"strings"
)

// degMin: sign, degrees with their mark, minutes with theirs. A blank between degrees and minutes
// needs the minute mark, or 2 5 could be meant for 2.5.
var degMin = regexp.MustCompile(`^([-+]?)(?:(\d{1,3})(?: *(?:°|deg|d) *(\d{1,2}(?:[.,]\d{1,4})?) *(?:'|min|m)?| +(\d{1,2}(?:[.,]\d{1,4})?) *(?:'|min|m))|(\d{1,4}(?:[.,]\d{1,4})?) *')$`)

func minutesOf(m []string) (entry, error) {
	whole := m[2] != ""
	minutes := strings.Replace(m[3]+m[4]+m[5], ",", ".", 1)
	sixtieths, ok := new(big.Rat).SetString(minutes)
	if !ok || whole && sixtieths.Cmp(big.NewRat(60, 1)) >= 0 {
		return entry{}, fmt.Errorf("%w: a degree has 60 minutes; type them as 0 to 59 or use decimals", ErrEntry)
	}
	deg := new(big.Rat).Quo(sixtieths, big.NewRat(60, 1))
	if whole {
		d, _ := new(big.Rat).SetString(m[2])
		deg.Add(deg, d)
	}
	step := Value{token: minutes}.LastDigit() / 60
	return entry{value: ratValue(m[1], deg), stepOne: step}, nil
}

// fraction: sign, whole inches, numerator, denominator, unit.
var fraction = regexp.MustCompile(`^([-+]?)(?:(\d{1,4})(?: +| *- *))?(\d{1,4}) */ *(\d{1,3}) *([^\d/]*)$`)

func fractionOf(m []string) (entry, error) {
	if u, ok := UnitOf(m[5]); m[5] != "" && (!ok || u.Unit != "in") {
		return entry{}, fmt.Errorf("%w: only an inch is read in fractions; use decimals", ErrEntry)
	}
	part, ok := new(big.Rat).SetString(m[3] + "/" + m[4])
	if !ok || !strings.Contains(" 2 4 8 16 32 64 128 ", " "+m[4]+" ") {
		return entry{}, fmt.Errorf("%w: use halves, 4ths, 8ths, 16ths, 32nds, 64ths or 128ths of an inch", ErrEntry)
	}
	if m[2] != "" {
		if part.Cmp(big.NewRat(1, 1)) >= 0 {
			return entry{}, fmt.Errorf("%w: the fraction behind whole inches must be below 1", ErrEntry)
		}
		w, _ := new(big.Rat).SetString(m[2])
		part.Add(part, w)
	}
	den, _ := new(big.Rat).SetString("1/" + m[4])
	step, _ := den.Float64()
	return entry{value: ratValue(m[1], part), unit: "in", stepOne: step}, nil
}

// ratValue writes r in at most seven decimals: exact for 128ths, a ten-millionth of a degree for
// minutes. Zeros at the end are left out.
func ratValue(sign string, r *big.Rat) Value {
	token := strings.TrimRight(r.FloatString(7), "0")
	token = strings.TrimRight(token, ".")
	if sign == "-" {
		token = "-" + token
	}
	return Value{token: token}
}

// decimal: sign, whole digits, decimals, exponent, and what stands behind the number.
var decimal = regexp.MustCompile(`^([-+]?)(\d*)(?:[.,](\d*))?([eE][-+]?\d{1,3})? *(.*)$`)

func decimalOf(text string, q Quantity, unit Unit) (entry, error) {
	m := decimal.FindStringSubmatch(text)
	if m == nil || m[2] == "" && m[3] == "" {
		return entry{}, fmt.Errorf("%.40q %w; type %s", text, ErrEntry, example(q))
	}
	rest := m[5]
	if q == Ratio && rest == ":1" {
		rest = ""
	}
	if rest != "" {
		u, ok := UnitOf(rest)
		if !ok && strings.ContainsRune(".,0123456789", rune(rest[0])) {
			return entry{}, fmt.Errorf("%.40q %w: use one decimal mark, no gaps and no marks for thousands; type %s", text, ErrEntry, example(q))
		}
		if !ok && strings.ContainsAny(rest, "0123456789") {
			return entry{}, fmt.Errorf("%.40q %w; type %s", text, ErrEntry, example(q))
		}
		if !ok {
			u.Unit = Unit(rest)
		}
		if err := checkUnit(u.Unit, q); err != nil {
			return entry{}, fmt.Errorf("%.40q: %w", text, err)
		}
		unit = u.Unit
	}
	token := strings.TrimLeft(m[2], "0")
	if token == "" {
		token = "0"
	}
	if m[1] == "-" {
		token = "-" + token
	}
	if m[3] != "" {
		token += "." + m[3]
	}
	v, err := NumberValue(token + m[4])
	if err != nil {
		return entry{}, err
	}
	return entry{value: v, unit: unit, stepOne: v.LastDigit()}, nil
}
