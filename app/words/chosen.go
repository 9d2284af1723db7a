package words

import (
	"math"
	"strconv"

	"yokebook/measure"
)

// Chosen are the units that a person wants numbers shown in, quantity by quantity. An empty member
// shows them as they come.
type Chosen struct {
	Length, Mass, Torque measure.Unit
	Minutes              bool // angles in degrees and minutes
}

// WithChosen returns the same language showing its numbers in chosen units. Where WithUnits asked for
// another system, that counts.
func (l *Language) WithChosen(c Chosen) *Language {
	with := *l
	with.chosen = c
	return &with
}

// Minutes is the unit of an angle that is shown in degrees and minutes. Files hold degrees.
const Minutes measure.Unit = "dm"

// Of is the unit that numbers of a quantity are shown and typed in; empty for one that is not chosen.
func (c Chosen) Of(q measure.Quantity) measure.Unit {
	switch {
	case q == measure.Length:
		return c.Length
	case q == measure.Mass:
		return c.Mass
	case q == measure.Torque:
		return c.Torque
	case q == measure.Angle && c.Minutes:
		return Minutes
	}
	return ""
}

// instead is the chosen unit for a number in a unit, and how many of that make one of it.
func (c Chosen) instead(unit string) (other string, size float64, ok bool) {
	u, known := measure.UnitOf(unit)
	to := c.Of(u.Quantity)
	switch {
	case !known || string(u.Unit) != unit || to == "" || to == u.Unit:
		return "", 0, false
	case to == Minutes:
		return string(Minutes), 1, true
	}
	info, known := measure.UnitOf(string(to))
	return string(to), info.ToBase / u.ToBase, known
}

// digits writes a number without its unit: cut to its doubt, or in degrees and minutes.
func (l *Language) digits(value, doubt float64, unit string) string {
	if unit != string(Minutes) || math.IsNaN(value) || math.Abs(value) > 1e6 {
		return l.bare(value, doubt)
	}
	whole := int(math.Round(math.Abs(value) * 60))
	sign := ""
	if value < 0 && whole > 0 {
		sign = "−"
	}
	minutes := strconv.Itoa(whole % 60)
	if len(minutes) < 2 {
		minutes = "0" + minutes
	}
	return sign + strconv.Itoa(whole/60) + "°" + minutes + "′"
}

// inChosen writes a reading in the chosen unit with what was entered behind it; false where that is
// one and the same.
func (l *Language) inChosen(r measure.Reading) (string, bool) {
	value, ok := r.Value.Float()
	to, size, other := l.chosen.instead(string(r.Unit))
	if !ok || !other || to == string(Minutes) && r.Entered != "" {
		return "", false
	}
	entered := *l
	entered.chosen = Chosen{}
	return l.Say("reading.entered", l.digits(value/size, 4*r.Value.LastDigit()/size, to)+l.unitAfter(to), entered.Entered(r)), true
}
