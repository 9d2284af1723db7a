package logbook

import (
	"fmt"
	"slices"
	"strings"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/route"
	"yokebook/measure/store"
)

// Keep validates an entry, writes it as a reading and returns when it is on the disk, with what it
// changed. It errs with one line when the entry can't be true (what is wrong, what to do) or when
// the disk did not take it; then nothing has changed.
func (b *Book) Keep(e Entry) (Change, error) {
	r, err := b.reading(e, b.src.NewID(), b.src.at())
	if err != nil {
		return Change{}, err
	}
	next := *b.build
	next.Readings = insert(b.build.Readings, r, func(r measure.Reading) measure.ID { return r.ID })
	c, err := b.commit(&next, store.OfReading(r))
	if err != nil {
		return Change{}, err
	}
	c.Reading = r.ID
	c.Next, c.More = route.Next(b.stops, r.Point, r.State())
	return c, nil
}

// Last returns the reading that UndoLast takes back: the newest of this device that still counts.
// False: there is none.
func (b *Book) Last() (measure.Reading, bool) {
	return newest(b.build, func(r measure.Reading) bool { return r.Device == b.src.Device })
}

// UndoLast is Undo for the newest reading of this device that still counts. It errs when there is
// nothing to undo.
func (b *Book) UndoLast(reason string) (Change, error) {
	last, ok := b.Last()
	if !ok {
		return Change{}, fmt.Errorf("there is no reading of this device to take back")
	}
	return b.Undo(last.ID, reason)
}

// Undo strikes a reading. Where that was a correction, what it corrected is kept again as a new
// reading, because a strike is final.
func (b *Book) Undo(reading measure.ID, reason string) (Change, error) {
	last, _, _ := b.find(reading)
	before := b.result.Findings
	c, err := b.Strike(reading, reason)
	if err != nil || last.Replaces == "" {
		return c, err
	}
	corrected, standing, ok := b.find(last.Replaces)
	if !ok || standing != measure.Replaced {
		return c, nil
	}
	again, err := b.Keep(EntryOf(corrected))
	if err != nil {
		return c, err
	}
	all := compare(before, b.result.Findings)
	all.Reading, all.Next, all.More = last.ID, again.Next, again.More
	return all, nil
}

// Skip leaves a stop of the route out, with the reason. A later reading there outranks it. Tag tells
// obstacles apart.
func (b *Book) Skip(point string, state measure.State, tag, reason string) (Change, error) {
	return b.skip(measure.Skip{Point: point, Ride: state.Ride, Load: state.Load, Tag: tag, Reason: strings.TrimSpace(reason)})
}

// Unskip takes back that a stop was left out: it is asked for again. Without a skip there it changes
// nothing.
func (b *Book) Unskip(point string, state measure.State, tag string) (Change, error) {
	var c Change
	for _, s := range route.Skips(b.build) {
		if s.Point != point || s.State() != state || s.Tag != tag {
			continue
		}
		var err error
		if c, err = b.skip(measure.Skip{Point: point, Ride: state.Ride, Load: state.Load, Tag: tag, Back: s.ID}); err != nil {
			return Change{}, err
		}
	}
	return c, nil
}

// skip keeps a record about a stop that is left out or asked for again.
func (b *Book) skip(s measure.Skip) (Change, error) {
	s.ID, s.At, s.Device = b.src.NewID(), b.src.at(), b.src.Device
	if err := s.Validate(); err != nil {
		return Change{}, err
	}
	next := *b.build
	next.Skips = insert(b.build.Skips, s, func(s measure.Skip) measure.ID { return s.ID })
	c, err := b.commit(&next, store.OfSkip(s))
	if err != nil {
		return Change{}, err
	}
	c.Next, c.More = route.Next(b.stops, s.Point, s.State())
	return c, nil
}

// reading makes the record of an entry and checks it.
func (b *Book) reading(e Entry, id measure.ID, at string) (measure.Reading, error) {
	e = b.fill(e)
	r := measure.Reading{
		ID: id, Point: e.Point, Value: e.Value, Entered: e.Entered, Unit: e.Unit, Basis: e.Basis,
		Ride: e.State.Ride, Load: e.State.Load, Height: e.Height, Setup: e.Setup,
		Instrument: e.Instrument, Way: e.Way, Lay: e.Lay, Tag: e.Tag, Note: e.Note, By: e.By,
		At: at, Device: b.src.Device, Replaces: e.Replaces,
	}
	if err := r.Validate(b.build.KnownInstruments()); err != nil {
		return measure.Reading{}, err
	}
	if e.Replaces == "" {
		return r, nil
	}
	old, _, ok := b.find(e.Replaces)
	if !ok {
		return measure.Reading{}, fmt.Errorf("replaces: %s is not a reading of this build", e.Replaces)
	}
	if old.Point != r.Point {
		return measure.Reading{}, fmt.Errorf("replaces: %s is a reading of %s, not of %s", old.ID, old.Point, r.Point)
	}
	return r, nil
}

// find returns a reading by id and what became of it.
func (b *Book) find(id measure.ID) (measure.Reading, measure.Standing, bool) {
	for i, r := range b.build.Readings {
		if r.ID == id {
			return r, b.build.Standings(document.Hash)[i], true
		}
	}
	return measure.Reading{}, 0, false
}

// backAt returns the stop itself when it is to be taken again, else the next one.
func (b *Book) backAt(point string, state measure.State) (route.Stop, bool) {
	for _, s := range b.stops {
		if s.Point.Key == point && s.State == state && !s.Done() {
			return s, true
		}
	}
	return route.Next(b.stops, point, state)
}

// EntryOf makes the entry that would keep a reading again.
func EntryOf(r measure.Reading) Entry {
	return Entry{Point: r.Point, Value: r.Value, Entered: r.Entered, Unit: r.Unit, Basis: r.Basis, State: r.State(),
		Height: r.Height, Setup: r.Setup, Instrument: r.Instrument, Way: r.Way, Lay: r.Lay, Tag: r.Tag, Note: r.Note, By: r.By}
}

// insert returns a new list, sorted by id, with v in it.
func insert[T any](list []T, v T, id func(T) measure.ID) []T {
	out := append(slices.Clone(list), v)
	slices.SortStableFunc(out, func(a, b T) int { return strings.Compare(string(id(a)), string(id(b))) })
	return out
}
