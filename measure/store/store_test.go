package store

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/tidwall/buntdb"

	"yokebook/measure"
	"yokebook/measure/document"
)

// newStore makes a store with one build in it, closed.
func newStore(t *testing.T, b *measure.Build) *Store {
	t.Helper()
	st, err := Open(t.TempDir(), clock())
	if err != nil {
		t.Fatal(err)
	}
	f, err := st.Create(b)
	if err != nil {
		t.Fatal(err)
	}
	closeFile(t, f)
	return st
}

func closeFile(t *testing.T, f *File) {
	t.Helper()
	if err := f.Close(); err != nil {
		t.Fatal(err)
	}
}

func written(t *testing.T, b *measure.Build) []byte {
	t.Helper()
	data, err := document.Write(b)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func TestKeptRecordsAreThereAfterReopening(t *testing.T) {
	want := sample(3)
	st := newStore(t, want)
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	want.Readings = append(want.Readings, reading(3))
	want.Strikes = []measure.Strike{{ID: "019ab3f2-0000-7000-8000-000000000001", Reading: reading(1).ID, Reason: "on the weld"}}
	want.Skips = []measure.Skip{{ID: "019ab3f2-0000-7000-8000-000000000002", Point: "pinion.slope", Ride: measure.Droop, Load: measure.NoLoad, Reason: "no room"}}
	for _, r := range []Record{OfReading(want.Readings[3]), OfStrike(want.Strikes[0]), OfSkip(want.Skips[0])} {
		if err := f.Keep(r); err != nil {
			t.Fatal(err)
		}
	}
	closeFile(t, f)

	f, got, report, err := st.OpenBuild(buildID)
	if err != nil || report.State() != IsWhole {
		t.Fatalf("reopen: %v, %s", err, report)
	}
	defer f.Close()
	if g, w := written(t, got), written(t, want); !bytes.Equal(g, w) {
		t.Errorf("after reopening:\n%s\nwant:\n%s", g, w)
	}
	peeked, _, err := st.Peek(buildID)
	if err != nil {
		t.Fatalf("peek while open: %v", err)
	}
	if g, w := written(t, peeked), written(t, want); !bytes.Equal(g, w) {
		t.Errorf("peek:\n%s\nwant:\n%s", g, w)
	}
}

// A creation that was killed half way has left a file that is no build; the next try takes its place.
func TestHalfACreationIsNoBuild(t *testing.T) {
	st, err := Open(t.TempDir(), clock())
	if err != nil {
		t.Fatal(err)
	}
	half := sample(2)
	half.Readings[1].Note = "left behind"
	if _, err := st.stage(half, nil); err != nil {
		t.Fatal(err)
	}
	if ids, err := st.IDs(); err != nil || len(ids) != 0 {
		t.Errorf("builds %v, %v; want none", ids, err)
	}
	f, err := st.Create(sample(1))
	if err != nil {
		t.Fatal(err)
	}
	closeFile(t, f)
	b, report, err := st.Peek(buildID)
	if err != nil || report.State() != IsWhole || len(b.Readings) != 1 {
		t.Errorf("%d readings, %s, %v; want the one of the new build", len(b.Readings), report, err)
	}
}

func TestKeepingARecordTwiceKeepsItOnce(t *testing.T) {
	st := newStore(t, sample(2))
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	other := reading(1)
	other.Note = "same id, other content"
	for _, r := range []measure.Reading{reading(1), other, other} {
		if err := f.Keep(OfReading(r)); err != nil {
			t.Fatal(err)
		}
	}
	closeFile(t, f)
	b, _, err := st.Peek(buildID)
	if err != nil {
		t.Fatal(err)
	}
	if len(b.Readings) != 3 {
		t.Errorf("%d readings; want 3: two of one id with different content, and the other one", len(b.Readings))
	}
}

func TestEveryWriteIsSyncedAndTheAnswerLookedAt(t *testing.T) {
	st := newStore(t, sample(0))
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	var config buntdb.Config
	if err := f.db.ReadConfig(&config); err != nil {
		t.Fatal(err)
	}
	if config.SyncPolicy != buntdb.Always || !config.AutoShrinkDisabled {
		t.Errorf("sync policy %v, compaction off %v; want Always, true", config.SyncPolicy, config.AutoShrinkDisabled)
	}
	if err := f.disk.Close(); err != nil { // from here on its sync fails
		t.Fatal(err)
	}
	for range 2 {
		if err := f.Keep(OfReading(reading(0))); !errors.Is(err, ErrWrite) {
			t.Errorf("Keep on a disk that does not sync: %v; want ErrWrite", err)
		}
	}
	_ = f.Close()
}

func TestStrangeNamesNeverBecomePaths(t *testing.T) {
	st := newStore(t, sample(0))
	for _, id := range []measure.ID{"", "..", "../../etc/passwd", "019AB3F0-0000-7000-8000-000000000000", measure.ID(strings.Repeat("a", 36))} {
		if _, _, _, err := st.OpenBuild(id); !errors.Is(err, measure.ErrID) {
			t.Errorf("OpenBuild(%q): %v; want ErrID", id, err)
		}
		if _, _, err := st.Peek(id); !errors.Is(err, measure.ErrID) {
			t.Errorf("Peek(%q): %v; want ErrID", id, err)
		}
	}
	if err := os.WriteFile(filepath.Join(st.buildsDir(), "notes.txt"), nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(st.path(buildID), filepath.Join(st.buildsDir(), "019ab3f0-0000-7000-8000-00000000000f.db")); err != nil {
		t.Fatal(err)
	}
	ids, err := st.IDs()
	if err != nil || len(ids) != 1 || ids[0] != buildID {
		t.Errorf("IDs: %v, %v; want the one build", ids, err)
	}
	stamp, err := st.StampOf(buildID)
	if all, stampsErr := st.Stamps(); err != nil || stampsErr != nil || len(all) != 1 || all[0] != (Stamped{buildID, stamp}) || stamp == (Stamp{}) {
		t.Errorf("Stamps: %v, %v; want what StampOf says, %v", all, stampsErr, stamp)
	}
	if _, err := st.Create(sample(0)); !errors.Is(err, ErrExists) {
		t.Errorf("Create again: %v; want ErrExists", err)
	}
}
