package measure

import (
	"fmt"
	"math"
	"strings"
)

// Quantity is a kind of number. Only units of one quantity convert into each other.
type Quantity string

// The quantities. Their base units are those of Units with factor 1.
const (
	Angle     Quantity = "angle"
	Length    Quantity = "length"
	Count     Quantity = "count"
	Mass      Quantity = "mass"
	Force     Quantity = "force"
	Torque    Quantity = "torque"
	Turning   Quantity = "turning speed"
	RoadSpeed Quantity = "road speed"
	Stiffness Quantity = "spring rate"
	Stress    Quantity = "stress"
	Hardness  Quantity = "hardness"
	Ratio     Quantity = "ratio"
	Factor    Quantity = "factor"
	Answer    Quantity = "answer" // 1 yes, 0 no, or a small code that the point explains
	Text      Quantity = "text"   // a tyre code, a bolt grade
)

// Unit is a unit string as written in files.
type Unit string

// UnitInfo is one row of the table of units: how many base units one of it is, and what else a
// person may type for it.
type UnitInfo struct {
	Unit     Unit
	Quantity Quantity
	ToBase   float64
	Typed    []string
}

// Units is the one table of units. Factors: BIPM SI Brochure, 9th ed.; NIST SP 811 (2008) appendix B;
// the inch, pound and g_n are exact by definition.
var Units = []UnitInfo{
	{"deg", Angle, 1, []string{"°", "degree", "degrees"}},
	{"mm", Length, 1, nil},
	{"in", Length, 25.4, []string{"\"", "inch", "inches"}},
	{"count", Count, 1, nil},
	{"kg", Mass, 1, nil},
	{"lb", Mass, 0.45359237, []string{"lbs"}},
	{"N", Force, 1, nil},
	{"kN", Force, 1000, nil},
	{"lbf", Force, 4.4482216152605, nil},
	{"N·m", Torque, 1, []string{"Nm", "N*m", "N.m"}},
	{"lbf·ft", Torque, 1.3558179483314004, []string{"lbf*ft", "lbf.ft", "lbfft", "ft·lbf"}},
	{"rev/min", Turning, 1, []string{"rpm", "1/min"}},
	{"km/h", RoadSpeed, 1, []string{"kmh", "kph"}},
	{"mph", RoadSpeed, 1.609344, nil},
	{"N/mm", Stiffness, 1, nil},
	{"lbf/in", Stiffness, 4.4482216152605 / 25.4, nil},
	{"MPa", Stress, 1, []string{"N/mm²"}},
	{"HRC", Hardness, 1, nil},
}

// UnitOf finds a unit by its file string or by what a person may type for it.
func UnitOf(text string) (UnitInfo, bool) {
	for _, u := range Units {
		if string(u.Unit) == text {
			return u, true
		}
	}
	for _, u := range Units {
		for _, t := range append(u.Typed, string(u.Unit)) {
			if strings.EqualFold(t, text) {
				return u, true
			}
		}
	}
	return UnitInfo{}, false
}

// Base returns the unit that values of q are computed in: "" for ratios, factors, answers, texts.
func (q Quantity) Base() Unit {
	for _, u := range Units {
		if u.Quantity == q && u.ToBase == 1 {
			return u.Unit
		}
	}
	return ""
}

// Bare reports a quantity that is written without a unit.
func (q Quantity) Bare() bool { return q.Base() == "" }

// named writes the quantity with its article: "an angle".
func (q Quantity) named() string {
	if q != "" && strings.ContainsRune("aeiou", rune(q[0])) {
		return "an " + string(q)
	}
	return "a " + string(q)
}

// checkUnit says in one phrase why unit can't be a unit of q.
func checkUnit(unit Unit, q Quantity) error {
	if q.Bare() {
		if unit != "" {
			return fmt.Errorf("unit %.20q: %s is written without a unit; use \"\"", unit, q.named())
		}
		return nil
	}
	for _, u := range Units {
		if u.Unit == unit {
			if u.Quantity == q {
				return nil
			}
			return fmt.Errorf("unit %q is for %s, but this is %s; use %s", unit, u.Quantity.named(), q.named(), q.Base())
		}
	}
	return fmt.Errorf("unit %.20q is not known; use %s", unit, q.Base())
}

// Convert turns a number in unit from into unit to. It errs when they are not of one quantity.
func Convert(number float64, from, to Unit) (float64, error) {
	if from == to {
		return number, nil
	}
	a, okA := UnitOf(string(from))
	b, okB := UnitOf(string(to))
	if !okA || !okB || a.Quantity != b.Quantity {
		return 0, fmt.Errorf("%q does not convert to %q", from, to)
	}
	out := float64(number*a.ToBase) / b.ToBase
	if math.IsInf(out, 0) || math.IsNaN(out) {
		return 0, fmt.Errorf("%g %s is too large to convert", number, from)
	}
	return out, nil
}
