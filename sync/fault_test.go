package sync

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/sync/place"
	"yokebook/sync/place/placetest"
)

// A file cut at any length, or with any byte changed, is refused in one line and tried again; nothing
// of it is taken, and the pass does its work with the others.
func TestDamagedFilesAreLeftAloneAndTriedAgain(t *testing.T) {
	s, a, b := pair(t)
	a.keep(1, 1, "2.4")
	a.must()
	name := place.FileName(buildID(1), a.id)
	good := s.files[name].data
	b.keep(2, 2, "2.5")
	b.must()
	delete(b.drawer.builds, buildID(1))
	check := func(what string, data []byte) {
		t.Helper()
		s.drop(name, data)
		delete(s.files, place.FileName(buildID(1), b.id))
		r, err := b.pass()
		if err != nil || len(r.Faults) != 1 || r.Faults[0].About != name || strings.Contains(r.Faults[0].Line, "\n") {
			t.Fatalf("%s: %v, %+v; want one fault in one line", what, err, r.Faults)
		}
		if b.drawer.builds[buildID(1)] != nil || !bytes.Equal(s.files[name].data, data) {
			t.Fatalf("%s: was taken or changed", what)
		}
	}
	for n := 1; n < len(good)-1; n++ {
		check(fmt.Sprintf("cut to %d bytes", n), good[:n])
	}
	for n := range good[:len(good)-1] {
		bad := bytes.Clone(good)
		bad[n] ^= 1
		if bytes.Contains(bad, []byte(`"format":"yokebook-build/1"`)) { // else it is no build any more, and no fault
			check(fmt.Sprintf("byte %d changed", n), bad)
		}
	}
	s.drop(name, good)
	b.must()
	if b.drawer.builds[buildID(1)] == nil {
		t.Error("the whole file was not taken")
	}
	t.Logf("one file cut at %d lengths and changed in %d bytes: each refused in one line, none taken", len(good)-2, len(good)-1)
}

func TestFileThatIsStillArrivingIsToldApart(t *testing.T) {
	for _, row := range []struct {
		name string
		age  time.Duration
		want Kind
	}{
		{"just written", time.Second, Arriving},
		{"dated in the future a little", -time.Second, Arriving},
		{"written a minute ago", time.Minute, Refused},
		{"dated next year", -365 * 24 * time.Hour, Refused},
	} {
		s, a, b := pair(t)
		a.keep(1, 1, "2.4")
		data := bytesOf(t, a.drawer.builds[buildID(1)])
		s.drop("x.json", data[:100])
		b.now = start.Add(row.age)
		r, err := b.pass()
		if err != nil || len(r.Faults) != 1 || r.Faults[0].Kind != row.want {
			t.Errorf("%s: %v %+v; want %s", row.name, err, r.Faults, row.want)
		}
	}
}

func TestOtherFilesAreNoFault(t *testing.T) {
	s, a, _ := pair(t)
	s.drop("package.json", []byte(`{"name":"something else"}`))
	a.must()
	a.now = start.Add(time.Minute)
	a.must()
	if r := a.must(); r.Read != 0 || r.Skipped != 1 {
		t.Errorf("a file that is no build was read %d times again", r.Read)
	}
}

// shut is a place that can be read and not written.
type shut struct {
	*shed
	err error
}

func (s shut) Put(context.Context, string, []byte) error { return s.err }

func TestFullOrReadOnlyPlaceGivesOneLineAndLosesNothing(t *testing.T) {
	for _, why := range []error{place.ErrFull, place.ErrReadOnly} {
		s, a, b := pair(t)
		for n := range 3 {
			a.keep(n, n, "2.4")
		}
		a.must()
		b.place = shut{s, why}
		for n := range 3 {
			b.keep(n, 10+n, "2.5")
		}
		r, err := b.pass()
		if err != nil || len(r.Faults) != 1 || !errors.Is(r.Faults[0].Err, why) {
			t.Fatalf("%v: %v, faults %+v; want one", why, err, r.Faults)
		}
		for n, x := range r.Builds {
			if x.Here != 2 || x.There != 1 || x.Synced || x.Came.Readings != 1 || x.Went.Total() != 0 {
				t.Errorf("%v: build %d: %+v; want 2 here, 1 there, 1 came, not synced", why, n, x)
			}
		}
		b.place = s
		for _, x := range b.must().Builds {
			if x.Here != 2 || x.There != 2 || !x.Synced {
				t.Errorf("once it takes files again: %+v", x)
			}
		}
	}
}

// Files that each are good and together are more than a build file holds must not lock a build up.
func TestFilesThatGrowTooLargeTogetherAreNotTaken(t *testing.T) {
	s, a, _ := pair(t)
	a.keep(1, 1, "2.4")
	mine := a.drawer.builds[buildID(1)]
	for n := range 3 {
		big := *mine
		big.Readings = nil
		for k := range 60 {
			x := slope(id(2+n, k), deviceID(9), "2.4", start)
			x.Note = strings.Repeat("n", 60_000)
			big.Readings = append(big.Readings, x)
		}
		document.Arrange(&big)
		s.drop(fmt.Sprintf("big%d.json", n), bytesOf(t, &big))
	}
	r, err := a.pass()
	if err != nil || len(r.Faults) != 1 || r.Faults[0].Kind != Refused {
		t.Fatalf("%v, %+v; want one refusal", err, r.Faults)
	}
	if len(r.Builds) != 1 || r.Builds[0].Synced || r.Builds[0].Here != 1 {
		t.Errorf("said %+v; want 1 here, not synced", r.Builds)
	}
	own, _, err := document.Read(s.files[place.FileName(buildID(1), a.id)].data)
	if err != nil || len(own.Readings) != 1 {
		t.Errorf("our own reading is not in the place: %v", err)
	}
}

// The pass ends without a claim at every call that fails, and the next one finishes the work.
func TestFailureAtAnyCall(t *testing.T) {
	scene := func() (*shed, *desk) {
		s, a, b := pair(t)
		a.keep(1, 1, "2.4")
		a.keep(2, 2, "2.4")
		a.must()
		b.keep(1, 3, "2.5")
		b.keep(3, 4, "2.5")
		return s, b
	}
	s, b := scene()
	sure := &placetest.Failing{Place: s}
	b.place = sure
	b.must()
	for _, mode := range placetest.Modes {
		for at := 1; at <= sure.Calls; at++ {
			s, b := scene()
			b.place = &placetest.Failing{Place: s, At: at, Mode: mode}
			r, err := b.pass()
			if err == nil && !r.OK() {
				t.Errorf("call %d, mode %d: %+v", at, mode, r.Faults)
			}
			for _, x := range r.Builds {
				if x.Synced && !holdsAll(t, s, b.drawer.builds[x.ID]) {
					t.Errorf("call %d, mode %d: build %s is said to be synced and is not there", at, mode, x.ID)
				}
			}
			b.place = s
			for _, x := range b.must().Builds {
				if !x.Synced || !holdsAll(t, s, b.drawer.builds[x.ID]) {
					t.Errorf("call %d, mode %d: after the next pass: %+v", at, mode, x)
				}
			}
			if n := len(b.drawer.builds[buildID(1)].Readings); n != 2 {
				t.Errorf("call %d, mode %d: %d readings, want 2", at, mode, n)
			}
		}
	}
	if sure.Calls != 1+2+3*4 {
		t.Errorf("the pass took %d calls; want a listing, 2 files, and 3 replacements of 4", sure.Calls)
	}
}

// holdsAll reports that the files of a place hold every record of a build.
func holdsAll(t *testing.T, s *shed, b *measure.Build) bool {
	t.Helper()
	all := []*measure.Build{b}
	for name, f := range s.files {
		if !place.Wanted(name, 1) {
			continue
		}
		if x, _, err := document.Read(f.data); err == nil && x.ID == b.ID {
			all = append(all, x)
		}
	}
	_, report, err := merge.Builds(all...)
	return err == nil && report.Sources[0].Only.Total() == 0 && len(all) > 1
}
