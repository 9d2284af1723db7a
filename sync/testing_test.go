package sync

import (
	"context"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/sync/place"
)

var start = time.Date(2026, 3, 2, 10, 0, 0, 0, time.UTC)

func buildID(n int) measure.ID  { return id(0xb, n) }
func deviceID(n int) measure.ID { return id(0xd, n) }

func id(kind, n int) measure.ID {
	return measure.ID(fmt.Sprintf("019ab3f%x-0000-7000-8000-%012x", kind, n))
}

// drawer is where a device of these tests keeps its builds.
type drawer struct {
	builds map[measure.ID]*measure.Build
	stamps map[measure.ID]int
	reads  int
}

func newDrawer() *drawer {
	return &drawer{builds: map[measure.ID]*measure.Build{}, stamps: map[measure.ID]int{}}
}

func (d *drawer) stamp(id measure.ID) string { return strconv.Itoa(d.stamps[id]) }

func (d *drawer) Held() ([]Held, error) {
	var out []Held
	for id := range d.builds {
		out = append(out, Held{ID: id, Stamp: d.stamp(id)})
	}
	return out, nil
}

func (d *drawer) Read(id measure.ID) (*measure.Build, string, error) {
	d.reads++
	b, ok := d.builds[id]
	if !ok {
		return nil, "", ErrNotHeld
	}
	return b, d.stamp(id), nil
}

func (d *drawer) Take(b *measure.Build) (*measure.Build, string, error) {
	all := []*measure.Build{b}
	if have, ok := d.builds[b.ID]; ok {
		all = append(all, have)
	}
	union, _, err := merge.Builds(all...)
	if err != nil {
		return nil, "", err
	}
	d.builds[b.ID] = union
	d.stamps[b.ID]++
	return union, d.stamp(b.ID), nil
}

// restore puts an old version of a build back.
func (d *drawer) restore(old *measure.Build) {
	d.builds[old.ID] = old
	d.stamps[old.ID]++
}

// change makes the next version of a build, as a book does: what is there is never changed in place.
func (d *drawer) change(id measure.ID, with func(b *measure.Build)) {
	next := &measure.Build{ID: id, Layout: measure.NewLayout(), Title: "invented: sync"}
	if have, ok := d.builds[id]; ok {
		c := *have
		next = &c
		next.Readings, next.Strikes, next.Heads = slices.Clone(have.Readings), slices.Clone(have.Strikes), slices.Clone(have.Heads)
	}
	with(next)
	document.Arrange(next)
	if err := document.Derive(next); err != nil {
		panic(err)
	}
	d.builds[id] = next
	d.stamps[id]++
}

func slope(id, by measure.ID, value string, at time.Time) measure.Reading {
	v, err := measure.NumberValue(value)
	if err != nil {
		panic(err)
	}
	return measure.Reading{ID: id, Point: "gearbox.slope", Value: v, Unit: "deg", Basis: measure.Measured,
		Ride: measure.AtRide, Load: measure.Kerb, Setup: 1, At: at.UTC().Format(time.RFC3339), Device: by}
}

// shed is a place in memory. Its clock dates files in steps.
type shed struct {
	files map[string]shedFile
	clock func() time.Time
	step  time.Duration // of file times; 0: exact
	tells bool          // says its own time with each listing
	gets  int
	puts  int
}

type shedFile struct {
	data     []byte
	modified time.Time
}

func newShed(clock func() time.Time) *shed { return &shed{files: map[string]shedFile{}, clock: clock} }

func (s *shed) Name() string { return "the shed" }

func (s *shed) List(ctx context.Context) (place.Listing, error) {
	var out place.Listing
	if s.tells {
		out.Now = s.clock()
	}
	for _, name := range slices.Sorted(maps.Keys(s.files)) {
		f := s.files[name]
		if place.Wanted(name, int64(len(f.data))) {
			out.Files = append(out.Files, place.File{Name: name, Size: int64(len(f.data)), Modified: f.modified, Stamp: f.modified.String()})
		}
	}
	return out, ctx.Err()
}

func (s *shed) Get(_ context.Context, name string) ([]byte, error) {
	s.gets++
	f, ok := s.files[name]
	if !ok {
		return nil, fmt.Errorf("%s %w", name, place.ErrNone)
	}
	return f.data, nil
}

func (s *shed) Put(_ context.Context, name string, data []byte) error {
	s.puts++
	s.drop(name, data)
	return nil
}

// drop lays a file there, by whatever way.
func (s *shed) drop(name string, data []byte) {
	at := s.clock()
	if s.step > 0 {
		at = at.Truncate(s.step)
	}
	s.files[name] = shedFile{slices.Clone(data), at}
}

func (s *shed) Move(_ context.Context, from, to string) error {
	f, ok := s.files[from]
	if !ok {
		return fmt.Errorf("%s %w", from, place.ErrNone)
	}
	delete(s.files, from)
	s.files[to] = f
	return nil
}

func (s *shed) Delete(_ context.Context, name string) error {
	delete(s.files, name)
	return nil
}

// desk is one device with its builds, its memory and one place.
type desk struct {
	t      *testing.T
	id     measure.ID
	drawer *drawer
	memory *Memory
	place  place.Place
	now    time.Time
	all    bool
}

func newDesk(t *testing.T, n int, p place.Place) *desk {
	return &desk{t: t, id: deviceID(n), drawer: newDrawer(), memory: NewMemory(), place: p, now: start}
}

func (d *desk) pass() (Report, error) {
	p := Pass{Place: d.place, Builds: d.drawer, Device: d.id, Now: func() time.Time { return d.now }, All: d.all}
	return p.Run(context.Background(), d.memory)
}

// must does a pass that has to end without a fault.
func (d *desk) must() Report {
	d.t.Helper()
	r, err := d.pass()
	if err != nil || !r.OK() {
		d.t.Fatalf("pass: %v, faults %+v", err, r.Faults)
	}
	return r
}

// keep keeps a reading.
func (d *desk) keep(build, reading int, value string) {
	d.drawer.change(buildID(build), func(b *measure.Build) {
		b.Readings = append(b.Readings, slope(id(1, reading), d.id, value, d.now))
	})
}

func bytesOf(t testing.TB, b *measure.Build) []byte {
	t.Helper()
	data, err := document.Write(b)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

var errDead = errors.New("the program ended here")
