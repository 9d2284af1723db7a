package words

import (
	"math"
	"strconv"
	"strings"

	"yokebook/measure"
)

// Number writes a value with its unit, cut to its doubt: no more digits than the doubt vouches
// for. doubt is in the same unit; 0 or below means not known, and three significant digits are shown.
func (l *Language) Number(value float64, unit string, doubt float64) string {
	return l.inUnits(unit, func(unit string, size float64) string {
		if size != 1 && !(doubt > 0) {
			return l.digits(value/size, shown(value)/size, unit) + l.unitAfter(unit)
		}
		return l.digits(value/size, doubt/size, unit) + l.unitAfter(unit)
	})
}

// WithDoubt writes "3.48 ± 0.08°", both cut to the same place. Without a doubt it is Number.
func (l *Language) WithDoubt(value float64, unit string, doubt float64) string {
	if !(doubt > 0) || math.IsInf(doubt, 0) {
		return l.Number(value, unit, 0)
	}
	return l.inUnits(unit, func(unit string, size float64) string {
		return l.digits(value/size, doubt/size, unit) + " ± " + l.digits(doubt/size, doubt/size, unit) + l.unitAfter(unit)
	})
}

// Between writes "3.40 … 3.55°", cut to the width of the range.
func (l *Language) Between(low, high float64, unit string) string {
	doubt := (high - low) / 2
	return l.inUnits(unit, func(unit string, size float64) string {
		return l.digits(low/size, doubt/size, unit) + " … " + l.digits(high/size, doubt/size, unit) + l.unitAfter(unit)
	})
}

// bare writes the digits alone.
func (l *Language) bare(value, doubt float64) string {
	if math.IsNaN(value) || math.IsInf(value, 0) {
		return "?"
	}
	if !(doubt > 0) || math.IsInf(doubt, 0) {
		return l.decimal(short(value))
	}
	return l.decimal(cut(value, lastPlace(doubt)))
}

// Exact writes a number of a table to its last digit.
func (l *Language) Exact(value float64) string {
	return l.decimal(strconv.FormatFloat(value, 'f', -1, 64))
}

// lastPlace returns the power of ten of the last digit worth showing beside a doubt. The three
// leading digits of the doubt decide: 100 to 354 keep two digits of it, 355 to 949 keep one, and
// 950 to 999 round up to 1000 and keep two.
//
// Source: Particle Data Group, Review of Particle Physics, introduction, on rounding (from memory).
func lastPlace(doubt float64) int {
	text := strconv.FormatFloat(doubt, 'e', 2, 64)
	mantissa, power, _ := strings.Cut(text, "e")
	exponent, _ := strconv.Atoi(power)
	leading, _ := strconv.Atoi(strings.Replace(mantissa, ".", "", 1))
	if leading <= 354 {
		return exponent - 1
	}
	return exponent
}

// cut rounds to a power of ten and writes no digit beyond it.
func cut(value float64, place int) string {
	if place <= 0 {
		return unsignZero(strconv.FormatFloat(value, 'f', min(-place, 12), 64))
	}
	step := math.Pow10(place)
	return unsignZero(strconv.FormatFloat(math.Round(value/step)*step, 'f', 0, 64))
}

// short writes a number of unknown doubt: three significant digits, whole numbers in full.
func short(value float64) string {
	if math.IsNaN(value) || math.IsInf(value, 0) {
		return "?"
	}
	if value == math.Trunc(value) && math.Abs(value) < 1e9 {
		return unsignZero(strconv.FormatFloat(value, 'f', 0, 64))
	}
	size := math.Abs(value)
	decimals := 3
	switch {
	case size >= 100:
		decimals = 0
	case size >= 10:
		decimals = 1
	case size >= 1:
		decimals = 2
	}
	text := strconv.FormatFloat(value, 'f', decimals, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return unsignZero(text)
}

// unsignZero takes the minus sign from a number whose digits are all 0.
func unsignZero(text string) string {
	if strings.HasPrefix(text, "-") && strings.Trim(text, "-0.") == "" {
		return text[1:]
	}
	return text
}

// decimal puts in the language's decimal sign and a true minus.
func (l *Language) decimal(digits string) string {
	if l.Comma {
		digits = strings.Replace(digits, ".", ",", 1)
	}
	return strings.Replace(digits, "-", "−", 1)
}

// percent writes a share of 0 to 1 in whole percent, without rounding to certainty.
func (l *Language) percent(share float64) string {
	switch {
	case math.IsNaN(share):
		return "?"
	case share > 0 && share < 0.005:
		return "< 1 %"
	case share < 1 && share > 0.995:
		return "> 99 %"
	}
	return strconv.FormatFloat(math.Round(share*100), 'f', 0, 64) + " %"
}

// Entered writes a reading as it was entered, with its unit: "2°30'", "2.40°". Where another unit is
// chosen, that stands before it.
func (l *Language) Entered(r measure.Reading) string {
	if text, ok := l.inChosen(r); ok {
		return text
	}
	if r.Entered != "" {
		return r.Entered
	}
	if r.Value.IsText() {
		return r.Value.Token()
	}
	return l.decimal(r.Value.Token()) + l.unitAfter(string(r.Unit))
}
