package logbook

import (
	"slices"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
)

// Standing says how the vehicle stands: state, setup and height of the newest reading that counts
// and was taken on the vehicle. Before the first one it is the state of the next stop, setup 1.
func (b *Book) Standing() (state measure.State, setup int, height measure.Value) {
	last, ok := newest(b.build, func(r measure.Reading) bool { return r.Ride != measure.Bench })
	if ok {
		return last.State(), last.Setup, last.Height
	}
	if next, ok := b.Next(); ok {
		return next.State, 1, measure.Value{}
	}
	return measure.OffBench, 1, measure.Value{}
}

// NextSetup is the number for a vehicle that has just been moved, jacked or let down: one more than
// any reading has, struck ones too.
func (b *Book) NextSetup() int {
	most := 0
	for _, r := range b.build.Readings {
		most = max(most, r.Setup)
	}
	return most + 1
}

// fill completes an entry: Basis from the point; State "bench" for what is stated or is only read on
// the bench, else how the vehicle stands; Setup that of the standing, or a new one when the state
// is another than the vehicle's last.
func (b *Book) fill(e Entry) Entry {
	p, _ := measure.PointOf(e.Point)
	if e.Basis == "" {
		e.Basis = p.Basis
	}
	if e.Basis == "" {
		e.Basis = measure.Measured
	}
	state, setup, _ := b.Standing()
	if e.State == (measure.State{}) {
		e.State = state
		if e.Basis == measure.Stated || len(p.Wanted) == 1 && p.Wanted[0] == measure.OffBench {
			e.State = measure.OffBench
		}
	}
	if e.Setup == 0 {
		e.Setup = setup
		if e.State != state && e.State.Ride != measure.Bench && b.usedOnVehicle(setup) {
			e.Setup = b.NextSetup()
		}
	}
	return e
}

// usedOnVehicle reports a setup in which something was read on the vehicle.
func (b *Book) usedOnVehicle(setup int) bool {
	return slices.ContainsFunc(b.build.Readings, func(r measure.Reading) bool {
		return r.Setup == setup && r.Ride != measure.Bench
	})
}

// newest returns the reading that counts and was taken last by what its device said; of one second
// the one with the greater id. It serves convenience only: nothing is decided by it.
func newest(b *measure.Build, want func(measure.Reading) bool) (measure.Reading, bool) {
	var best measure.Reading
	var bestAt time.Time
	found := false
	for _, r := range b.CurrentReadings(document.Hash) {
		if !want(r) {
			continue
		}
		at, err := time.Parse(time.RFC3339Nano, r.At)
		if err != nil {
			at = time.Time{}
		}
		if !found || !at.Before(bestAt) {
			best, bestAt, found = r, at, true
		}
	}
	return best, found
}
