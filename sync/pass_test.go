package sync

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/sync/place"
	"yokebook/sync/place/placetest"
)

// two devices and one place.
func pair(t *testing.T) (s *shed, a, b *desk) {
	s = newShed(func() time.Time { return start })
	return s, newDesk(t, 1, s), newDesk(t, 2, s)
}

func TestTwoDevicesEndAlikeAndSaySo(t *testing.T) {
	_, a, b := pair(t)
	a.keep(1, 1, "2.4")
	a.keep(1, 2, "2.5")
	b.keep(1, 3, "3.1")
	b.keep(2, 4, "1.0")

	r := a.must()
	if len(r.Builds) != 1 || r.Written != 1 {
		t.Fatalf("first pass of a: %+v", r)
	}
	if x := r.Builds[0]; x.Here != 2 || x.There != 2 || !x.Synced || x.Went.Readings != 2 || x.Came.Total() != 0 || x.LastDevice != a.id {
		t.Errorf("a said %+v; want 2 readings here and there, 2 went", x)
	}
	r = b.must()
	if len(r.Builds) != 2 || r.Written != 2 {
		t.Fatalf("first pass of b: %+v", r)
	}
	if x := r.Builds[0]; x.Here != 3 || x.There != 3 || x.Came.Readings != 2 || x.Went.Readings != 1 || !x.Synced {
		t.Errorf("b said %+v; want 3 readings, 2 came, 1 went", x)
	}
	a.must()
	for n := 1; n <= 2; n++ {
		x, y := bytesOf(t, a.drawer.builds[buildID(n)]), bytesOf(t, b.drawer.builds[buildID(n)])
		if !bytes.Equal(x, y) {
			t.Errorf("build %d differs:\n%s\n%s", n, x, y)
		}
	}
}

func TestOnlyOurOwnFileIsWritten(t *testing.T) {
	s, a, b := pair(t)
	a.keep(1, 1, "2.4")
	a.must()
	theirs := s.files[place.FileName(buildID(1), a.id)]
	s.drop("build (1).json", theirs.data)
	b.keep(1, 2, "2.5")
	b.must()
	if len(s.files) != 3 || !bytes.Equal(s.files[place.FileName(buildID(1), a.id)].data, theirs.data) {
		t.Errorf("the place holds %d files; want a's as it was, the copy, and b's", len(s.files))
	}
}

// A pass over many builds of which one changed reads and writes only that one.
func TestPassReadsAndWritesOnlyWhatChanged(t *testing.T) {
	s, a, b := pair(t)
	for n := range 50 {
		a.keep(n, n, "2.4")
	}
	a.must()
	s.clock = func() time.Time { return start.Add(time.Hour) }
	a.now, b.now = start.Add(time.Hour), start.Add(time.Hour)
	b.must()
	a.must() // takes b's files in
	a.now, b.now = start.Add(2*time.Hour), start.Add(2*time.Hour)
	a.must() // learns that b's files are old
	b.must() // learns the stamps of its own files

	gets, puts, reads := s.gets, s.puts, a.drawer.reads
	r := a.must()
	if s.gets != gets || s.puts != puts || a.drawer.reads != reads || r.Skipped != 100 || len(r.Builds) != 50 || !r.Builds[49].Synced {
		t.Errorf("a pass without news read %d files, wrote %d, read %d builds, skipped %d", s.gets-gets, s.puts-puts, a.drawer.reads-reads, r.Skipped)
	}
	a.keep(7, 1007, "2.6")
	s.clock = func() time.Time { return a.now }
	r = a.must()
	if r.Read != 2 || r.Written != 1 || a.drawer.reads != reads+1 {
		t.Errorf("one build changed: %d files read (want its 2), %d written, %d builds read", r.Read, r.Written, a.drawer.reads-reads)
	}
	r = b.must()
	if r.Read != 2 || r.Written != 1 {
		t.Errorf("the other device read %d files and wrote %d; want 2 and 1", r.Read, r.Written)
	}
}

func TestEverythingIsReadAgainAfterADayAndOnRequest(t *testing.T) {
	for _, row := range []struct {
		name string
		when func(d *desk)
		want int
	}{
		{"an hour later", func(d *desk) { d.now = d.now.Add(time.Hour) }, 0},
		{"a day later", func(d *desk) { d.now = d.now.Add(24 * time.Hour) }, 2},
		{"a clock that was set back", func(d *desk) { d.now = d.now.Add(-time.Hour) }, 2},
		{"on request", func(d *desk) { d.all = true }, 2},
	} {
		s, a, b := pair(t)
		a.keep(1, 1, "2.4")
		a.must()
		b.now = start.Add(time.Minute)
		s.clock = func() time.Time { return start.Add(time.Second) }
		b.must()
		b.must()
		row.when(b)
		if r := b.must(); r.Read != row.want {
			t.Errorf("%s: %d files read, want %d", row.name, r.Read, row.want)
		}
	}
}

// FAT dates files in steps of 2 s: a rewrite of the same size within one step has the same stamp.
func TestRewriteOfSameSizeAndTimeIsSeen(t *testing.T) {
	s, a, b := pair(t)
	s.step = 2 * time.Second
	a.keep(1, 1, "2.4")
	a.must()
	b.must()
	name := place.FileName(buildID(1), a.id)
	changed := bytesOf(t, func() *measure.Build {
		a.drawer.change(buildID(1), func(x *measure.Build) { x.Readings[0] = slope(id(1, 2), a.id, "2.4", a.now) })
		return a.drawer.builds[buildID(1)]
	}())
	if len(changed) != len(s.files[name].data) {
		t.Fatal("the files differ in size: this test proves nothing")
	}
	before := s.files[name].modified
	s.drop(name, changed)
	if !s.files[name].modified.Equal(before) {
		t.Fatal("the files differ in time: this test proves nothing")
	}
	b.must()
	if got := len(b.drawer.builds[buildID(1)].Readings); got != 2 {
		t.Errorf("%d readings; want the old and the new one", got)
	}
}

func TestCopiesAreMoreInputAndLeftInPlace(t *testing.T) {
	for _, name := range []string{
		"x (1).json", "Kopie von x.json", "x.sync-conflict-20260302-101500-ABCDEFG.json", "x.Conflict.json",
		"x (someone's conflicted copy 2026-03-02).json", "X-SHEDPC.JSON", "from the phone/x.json", "x.json_conflict-1",
	} {
		s, a, b := pair(t)
		a.keep(1, 1, "2.4")
		b.keep(1, 2, "2.5")
		s.drop(name, bytesOf(t, b.drawer.builds[buildID(1)]))
		r := a.must()
		if len(a.drawer.builds[buildID(1)].Readings) != 2 || len(r.Copies) != 1 || r.Copies[0] != name || s.files[name].data == nil {
			t.Errorf("%s: %d readings, copies %q", name, len(a.drawer.builds[buildID(1)].Readings), r.Copies)
		}
	}
}

// A device that was set back to an old backup gets back what it had written, also when its memory of
// the place is newer than its builds.
func TestRestoredDeviceLosesNothing(t *testing.T) {
	for _, forgets := range []bool{false, true} {
		s, a, _ := pair(t)
		a.keep(1, 1, "2.4")
		a.must()
		backup := a.drawer.builds[buildID(1)]
		a.keep(1, 2, "2.5")
		a.must()
		s.clock = func() time.Time { return start.Add(time.Hour) }
		a.now = start.Add(time.Hour)
		a.must()
		a.drawer.restore(backup)
		if forgets {
			a.memory = NewMemory()
		}
		a.keep(1, 3, "2.6")
		a.must()
		b := newDesk(t, 2, s)
		b.must()
		if got := len(b.drawer.builds[buildID(1)].Readings); got != 3 {
			t.Errorf("memory lost %v: %d readings in the place, want 3", forgets, got)
		}
		if got := len(a.drawer.builds[buildID(1)].Readings); got != 3 {
			t.Errorf("memory lost %v: %d readings on the device, want 3", forgets, got)
		}
	}
}

func TestNewerFormatIsCarriedAndOnlyInOurOwnFile(t *testing.T) {
	s, a, _ := pair(t)
	newer := []byte(`{"format":"yokebook-build/2","id":"` + string(buildID(1)) + `","title":"invented","layout":{"shafts":1,"slip":"shaft",` +
		`"axle":"leaf","front_joint":"single","rear_joint":"single"},"readings":[{"id":"` + string(id(1, 1)) + `","point":"gearbox.yaw","huge":9007199254740993}]}`)
	s.drop("theirs.json", newer)
	a.must()
	own := s.files[place.FileName(buildID(1), a.id)].data
	if !bytes.Contains(own, []byte(`"format":"yokebook-build/2"`)) || !bytes.Contains(own, []byte("9007199254740993")) {
		t.Errorf("our file lost what it could not understand: %s", own)
	}
	if !bytes.Equal(s.files["theirs.json"].data, newer) {
		t.Error("their file was changed")
	}
}

// A place that does not tell letters apart by case may show our own file in capitals.
func TestOwnFileInCapitalsIsOurOwn(t *testing.T) {
	s, a, _ := pair(t)
	a.keep(1, 1, "2.4")
	a.must()
	name := place.FileName(buildID(1), a.id)
	s.files[strings.ToUpper(name)] = s.files[name]
	delete(s.files, name)
	if r := a.must(); r.Written != 0 || !r.Builds[0].Synced || len(s.files) != 1 {
		t.Errorf("written %d, %+v", r.Written, r.Builds)
	}
}

// What a pass saw and had no time to take in is taken in by the next one, also when nothing changes
// in between.
func TestPassThatEndedEarlyIsMadeUpFor(t *testing.T) {
	for at := 1; at <= 12; at++ {
		s, a, b := pair(t)
		for n := range 3 {
			a.keep(n, n, "2.4")
		}
		a.must()
		b.must()
		for n := range 3 {
			a.keep(n, 10+n, "2.5")
		}
		a.must()
		b.now = start.Add(time.Minute) // old enough for every stamp to be trusted
		b.place = &placetest.Failing{Place: s, At: at, Mode: placetest.Dead}
		_, _ = b.pass() // where it ends is the point
		b.place = s
		b.must()
		for n := range 3 {
			if got := len(b.drawer.builds[buildID(n)].Readings); got != 2 {
				t.Errorf("ended at call %d: build %d has %d readings, want 2", at, n, got)
			}
		}
	}
}
