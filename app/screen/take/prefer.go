package take

import (
	"errors"
	"math"
	"strings"

	"yokebook/measure"
)

// Prefer says in which unit numbers of a quantity are typed from now on, where nothing else was said
// at a stop; "" stands for the quantity's own unit and "dm" for degrees and minutes. Where it says
// something new about a quantity, that counts.
func (m *Model) Prefer(of func(measure.Quantity) measure.Unit) {
	for _, u := range measure.Units {
		if m.prefer != nil && m.prefer(u.Quantity) != of(u.Quantity) {
			delete(m.units, u.Quantity)
		}
	}
	m.prefer = of
}

// minutes is what Prefer calls degrees and minutes.
const minutes = "dm"

// preferred is the unit of a quantity that Prefer named; "" where it named none.
func (m *Model) preferred(q measure.Quantity) measure.Unit {
	if m.prefer == nil {
		return ""
	}
	return m.prefer(q)
}

// Minutes reports that the number at hand is typed in degrees and minutes: the key of the decimal sign
// ends the degrees.
func (m *Model) Minutes() bool {
	return m.page != Height && m.stop.Point.Quantity == measure.Angle && m.preferred(measure.Angle) == minutes
}

// ErrMinutes says that more minutes were typed than a degree has.
var ErrMinutes = errors.New("a degree has 60 minutes; type 0 to 59 behind the degrees")

// value is the number that was typed at the stop, and the text that stands for it where its digits
// are worked out. It errs with ErrNothingTyped, or ErrMinutes.
func (m *Model) value(negative bool) (measure.Value, string, error) {
	if !m.Minutes() || m.typed.Empty() {
		v, ok := m.typed.Value(negative)
		if !ok {
			return v, "", ErrNothingTyped
		}
		return v, "", nil
	}
	text := m.typed.Minutes()
	if negative && !m.typed.zero() {
		text = "-" + text
	}
	v, typed, _, err := measure.ParseEntry(text, measure.Angle, "deg")
	if err != nil {
		return measure.Value{}, "", ErrMinutes
	}
	return v, strings.TrimPrefix(typed, "-"), nil
}

// entered is the text that stands for the number at hand; "" where its digits say the same.
func (m *Model) entered() string {
	if m.Minutes() {
		if _, text, err := m.value(false); err == nil {
			return text
		}
	}
	return ""
}

// heightUnit is the unit that the height of the hub is typed in; it is kept in mm.
func (m *Model) heightUnit() measure.Unit {
	if u := m.preferred(measure.Length); u != "" {
		return u
	}
	return measure.Length.Base()
}

// heightTyped is the height that was typed, in mm; absent where none was.
func (m *Model) heightTyped() measure.Value {
	v, _ := m.height.Value(false)
	unit := m.heightUnit()
	typed, ok := v.Float()
	if !ok || unit == measure.Length.Base() {
		return v
	}
	mm, err := measure.Convert(typed, unit, measure.Length.Base())
	if err != nil {
		return measure.Value{}
	}
	out, err := measure.FloatValue(math.Round(mm*10) / 10)
	if err != nil {
		return measure.Value{}
	}
	return out
}

// Minutes is what was typed as degrees and minutes: 2°30' for 2.30, 2°5' for 2.5.
func (t Typed) Minutes() string {
	degrees, minutes, _ := strings.Cut(t.text, ".")
	if minutes == "" {
		minutes = "0"
	}
	return degrees + "°" + minutes + "'"
}
