package logbook

import (
	"yokebook/checks"
	"yokebook/measure"
)

// Doubt is something to ask back before an entry is kept, as a message of app/words. An entry with
// doubts may still be kept: the person has seen the vehicle.
type Doubt = checks.Message

// The keys of doubts and their arguments.
const (
	// DoubtImplausible: point, number, low, high, unit. The number is along the part.
	DoubtImplausible = "doubt.implausible"
	// DoubtContradiction: ride, load. Hanging wheels carry nothing, standing ones something.
	DoubtContradiction = "doubt.contradiction"
	// DoubtSameSetup: setup, the state it was used in, the state of the entry. A vehicle that now
	// stands another way was moved, so its slopes belong to a new setup.
	DoubtSameSetup = "doubt.same_setup"
)

// Doubts lists what to ask back before keeping an entry; none for an entry that Keep would refuse.
func (b *Book) Doubts(e Entry) []Doubt {
	r, err := b.reading(e, b.build.ID, "") // any id will do: it is not kept
	if err != nil {
		return nil
	}
	var out []Doubt
	p, _ := measure.PointOf(r.Point)
	if number, ok := r.Number(); ok {
		if p.Quantity == measure.Angle {
			number = r.Along(number)
		}
		if !p.Plausible(number) {
			out = append(out, Doubt{Key: DoubtImplausible, Args: []any{p.Key, number, p.Low, p.High, string(p.Quantity.Base())}})
		}
	}
	if r.State().Contradiction() {
		out = append(out, Doubt{Key: DoubtContradiction, Args: []any{string(r.Ride), string(r.Load)}})
	}
	if was, ok := b.otherStateOf(r); ok {
		out = append(out, Doubt{Key: DoubtSameSetup, Args: []any{r.Setup, was.String(), r.State().String()}})
	}
	return out
}

// otherStateOf returns the newest other state in which the setup of a reading was used on the vehicle.
func (b *Book) otherStateOf(r measure.Reading) (measure.State, bool) {
	if r.Ride == measure.Bench {
		return measure.State{}, false
	}
	other, ok := newest(b.build, func(o measure.Reading) bool {
		return o.Setup == r.Setup && o.Ride != measure.Bench && o.State() != r.State() && o.ID != r.Replaces
	})
	return other.State(), ok
}
