package measure

import (
	"fmt"
	"math"
	"time"
)

// Basis says where a value comes from.
type Basis string

// The bases of a reading.
const (
	Measured  Basis = "measured"
	Stated    Basis = "stated"    // from a plate, a book, the owner
	Estimated Basis = "estimated" // a person's guess
)

// Reading is one value that was read, stated or estimated. It never changes.
type Reading struct {
	ID         ID
	Point      string
	Value      Value  // as entered, in Unit
	Entered    string // what was typed where that differs from Value, such as 2°30'
	Unit       Unit
	Basis      Basis
	Ride       Ride
	Load       Load
	Height     Value // mm, hub centre to arch edge, read at the same time; may be absent
	Setup      int   // from 1; 0 where it is absent, on the bench only
	Instrument string
	Way        int    // 0 not said; 1 or 2: which end of the finder faced forward
	Lay        string // "", "along" the part or on its "face", 90° off
	Tag        string // tells several readings of one point apart, such as two obstacles
	Note       string
	By         string // who, where that says more than the device: "builder"
	At         string // RFC 3339, as the device said; shown, never used for order
	Device     ID
	Replaces   ID
	Unknown    Fields
}

// State returns ride and load.
func (r Reading) State() State { return State{Ride: r.Ride, Load: r.Load} }

// Number returns the value in the base unit of the point's quantity (deg, mm, kg …) as displayed
// by the tool, and false for a text or for a unit that does not fit.
func (r Reading) Number() (float64, bool) {
	f, ok := r.Value.Float()
	if !ok {
		return 0, false
	}
	p, ok := PointOf(r.Point)
	if !ok {
		return 0, false
	}
	out, err := Convert(f, r.Unit, p.Quantity.Base())
	return out, err == nil
}

// Along turns what the finder showed into the slope of the part: a finder laid on the part's face
// stands 90° off, and the sign still says which end of the part is high.
func (r Reading) Along(shown float64) float64 {
	if r.Lay != "face" {
		return shown
	}
	return math.Copysign(90-math.Abs(shown), shown)
}

// Validate says which member is wrong and what to do. Instruments are those of the build.
func (r Reading) Validate(instruments []Instrument) error {
	if _, err := ParseID(string(r.ID)); err != nil {
		return fmt.Errorf("id: %w", err)
	}
	p, ok := PointOf(r.Point)
	if !ok {
		return fmt.Errorf("point: %.60q is not a point; `yokebook points` lists them", r.Point)
	}
	if err := checkUnit(r.Unit, p.Quantity); err != nil {
		return fmt.Errorf("unit: %s: %w", p.Key, err)
	}
	if err := p.Possible(r); err != nil {
		return fmt.Errorf("value: %w", err)
	}
	switch r.Basis {
	case Measured, Stated, Estimated:
	default:
		return fmt.Errorf("basis: %.20q is not known; use measured, stated or estimated", r.Basis)
	}
	if err := r.State().validate(); err != nil {
		return fmt.Errorf("ride: %w", err)
	}
	if h, ok := r.Height.Float(); !r.Height.IsZero() && (!ok || h < 0) {
		return fmt.Errorf("height: must be a number of mm, not below 0")
	}
	if r.Setup < 1 && !(r.Setup == 0 && r.Ride == Bench) {
		return fmt.Errorf("setup: must be 1 or more")
	}
	if r.Instrument != "" {
		if err := fits(instruments, r.Instrument, p); err != nil {
			return fmt.Errorf("instrument: %w", err)
		}
	}
	if r.Way < 0 || r.Way > 2 {
		return fmt.Errorf("way: %d is not known; use 1 or 2", r.Way)
	}
	if r.Lay != "" && r.Lay != "along" && r.Lay != "face" {
		return fmt.Errorf("lay: %.20q is not known; use along or face", r.Lay)
	}
	if r.At != "" {
		if _, err := time.Parse(time.RFC3339Nano, r.At); err != nil {
			return fmt.Errorf("at: %.40q is not a time such as 2026-03-02T10:15:00Z", r.At)
		}
	}
	for _, id := range []struct {
		name string
		id   ID
	}{{"device", r.Device}, {"replaces", r.Replaces}} {
		if id.id != "" {
			if _, err := ParseID(string(id.id)); err != nil {
				return fmt.Errorf("%s: %w", id.name, err)
			}
		}
	}
	return nil
}
