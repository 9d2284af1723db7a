package words

import (
	"strconv"
	"strings"

	"yokebook/measure"
)

// Units says in which units numbers are written. The zero Units is Metric.
type Units string

// The choices of units. Angles, counts, ratios and speeds of turning are alike in all.
const (
	Metric   Units = "metric"
	Imperial Units = "imperial"
	BothWays Units = "both" // metric with the other in brackets behind it
)

// AllUnits lists the choices, the default first.
var AllUnits = []Units{Metric, Imperial, BothWays}

// UnitsOf finds a choice of units by its name.
func UnitsOf(name string) (Units, bool) {
	for _, u := range AllUnits {
		if string(u) == name {
			return u, true
		}
	}
	return "", false
}

// WithUnits returns the same language writing its numbers in other units. What a person typed stays as
// it was typed, and so do numbers within texts of the tables.
func (l *Language) WithUnits(u Units) *Language {
	with := *l
	with.units = u
	return &with
}

// imperial names the unit that stands in for a metric one, and how many of the metric make one of it.
// Pounds, inches and the pound-force are exact by definition (NIST SP 811, appendix B); an ounce is a
// sixteenth of a pound, and a kip per square inch a thousand pounds-force per square inch.
var imperial = map[string]struct {
	unit string
	size float64
}{
	"mm":   {"in", 25.4},
	"kg":   {"lb", 0.45359237},
	"N":    {"lbf", 4.4482216152605},
	"N·m":  {"lbf·ft", 1.3558179483314004},
	"N/mm": {"lbf/in", 4.4482216152605 / 25.4},
	"km/h": {"mph", 1.609344},
	"MPa":  {"ksi", 6.894757293168361},
	"g·mm": {"oz·in", 453.59237 / 16 * 25.4},
}

// metricOf finds the metric unit for an imperial one that a person may have entered in.
func metricOf(unit string) (string, float64, bool) {
	u, ok := measure.UnitOf(unit)
	if !ok || u.Quantity.Base() == u.Unit {
		return "", 0, false
	}
	return string(u.Quantity.Base()), u.ToBase, true
}

// otherUnit is what a number in a unit is written in too; false where it stays as it is.
func (l *Language) otherUnit(unit string) (other string, size float64, ok bool) {
	if l.units != Imperial && l.units != BothWays {
		return l.chosen.instead(unit)
	}
	to, ok := imperial[unit]
	return to.unit, to.size, ok
}

// inUnits writes something with its unit by write, in the units of the language: once, or twice with
// the second in brackets. write gets the unit and by what numbers are to be divided.
func (l *Language) inUnits(unit string, write func(unit string, size float64) string) string {
	other, size, ok := l.otherUnit(unit)
	switch {
	case !ok:
		return write(unit, 1)
	case l.units != BothWays:
		return write(other, size)
	}
	return l.Say("units.both", write(unit, 1), write(other, size))
}

// shown is the doubt that the digits of a number without one stand for: half of the last.
func shown(value float64) float64 {
	text := short(value)
	_, decimals, _ := strings.Cut(text, ".")
	place, err := strconv.ParseFloat("0.5e-"+strconv.Itoa(len(decimals)), 64)
	if err != nil {
		return 0
	}
	return place
}

// AsRead writes a reading with as many digits as were read, in the units of the language. Texts and
// what has no unit come back as they were entered.
func (l *Language) AsRead(r measure.Reading) string {
	value, ok := r.Value.Float()
	unit := string(r.Unit)
	if !ok {
		return l.Entered(r)
	}
	if l.units == Metric || l.units == "" {
		return l.Entered(r)
	}
	digit := r.Value.LastDigit()
	if base, size, ok := metricOf(unit); ok { // entered in the other system
		if l.units == Imperial {
			return l.Entered(r)
		}
		return l.Say("units.both", l.bare(value*size, 4*digit*size)+l.unitAfter(base), l.Entered(r))
	}
	return l.inUnits(unit, func(unit string, size float64) string {
		if size == 1 {
			return l.Entered(r)
		}
		return l.bare(value/size, 4*digit/size) + l.unitAfter(unit)
	})
}
