package store

import (
	"bytes"
	"errors"
	"fmt"
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
	st, err := Open(t.TempDir())
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

	f, got, aside, err := st.OpenBuild(buildID)
	if err != nil || len(aside) > 0 {
		t.Fatalf("reopen: %v, set aside %v", err, aside)
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
	st, err := Open(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	half := sample(2)
	half.Readings[1].Note = "left behind"
	f, err := openFile(buildID, st.path(buildID)+".new", nil)
	if err != nil {
		t.Fatal(err)
	}
	if err := f.fill(half); err != nil {
		t.Fatal(err)
	}
	closeFile(t, f)
	if ids, err := st.IDs(); err != nil || len(ids) != 0 {
		t.Errorf("builds %v, %v; want none", ids, err)
	}
	f, err = st.Create(sample(1))
	if err != nil {
		t.Fatal(err)
	}
	closeFile(t, f)
	b, aside, err := st.Peek(buildID)
	if err != nil || len(aside) > 0 || len(b.Readings) != 1 {
		t.Errorf("%d readings, set aside %v, %v; want the one of the new build", len(b.Readings), aside, err)
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

// Each byte of a record's stored value is damaged in turn. That record must be set aside by name,
// all others must load, and opening must leave the damaged bytes in the file as they are.
func TestDamagedValueIsSetAsideAndTheRestLoads(t *testing.T) {
	st := newStore(t, sample(4))
	path := st.path(buildID)
	whole, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	bad := OfReading(reading(2))
	at := bytes.Index(whole, []byte(bad.sealed()))
	if at < 0 {
		t.Fatal("the record is not in the file")
	}
	for i := range len(bad.sealed()) {
		damaged := bytes.Clone(whole)
		damaged[at+i] ^= 1 << (i % 8)
		if err := os.WriteFile(path, damaged, 0o644); err != nil {
			t.Fatal(err)
		}
		f, b, aside, err := st.OpenBuild(buildID)
		if err != nil {
			t.Fatalf("byte %d: %v", i, err)
		}
		if len(aside) != 1 || aside[0].Key != bad.Key || !strings.Contains(aside[0].String(), "set aside") {
			t.Fatalf("byte %d: set aside %v; want %s", i, aside, bad.Key)
		}
		var ids []measure.ID
		for _, r := range b.Readings {
			ids = append(ids, r.ID)
		}
		if want := []measure.ID{reading(0).ID, reading(1).ID, reading(3).ID}; fmt.Sprint(ids) != fmt.Sprint(want) {
			t.Fatalf("byte %d: readings %v; want %v", i, ids, want)
		}
		closeFile(t, f)
		if now, err := os.ReadFile(path); err != nil || !bytes.Equal(now, damaged) {
			t.Fatalf("byte %d: opening changed the file", i)
		}
	}
}

// One bad copy of the plain members is made good by the other. Without both nothing says the
// layout, unless heads do; a guessed layout could make a finding clear that is not.
func TestPlainMembersSurviveTheLossOfOneCopy(t *testing.T) {
	layout := func(member, value string) measure.Head {
		return measure.Head{ID: measure.NameID(buildID, member), Field: "layout." + member, Value: []byte(value), Clock: measure.Clock{MS: 1}}
	}
	inHeads := sample(1)
	inHeads.Heads = []measure.Head{layout("axle", `"leaf"`), layout("front_joint", `"single"`), layout("rear_joint", `"single"`),
		layout("shafts", "1"), layout("slip", `"shaft"`)}
	document.Arrange(inHeads)
	for _, row := range []struct {
		name  string
		build *measure.Build
		lost  []string
		want  error
	}{
		{"none lost", sample(1), nil, nil},
		{"the first", sample(1), []string{"plain"}, nil},
		{"the copy", sample(1), []string{plainCopy}, nil},
		{"both", sample(1), []string{"plain", plainCopy}, ErrDamaged},
		{"both, but heads say the layout", inHeads, []string{"plain", plainCopy}, nil},
	} {
		t.Run(row.name, func(t *testing.T) {
			st := newStore(t, row.build)
			data, err := os.ReadFile(st.path(buildID))
			if err != nil {
				t.Fatal(err)
			}
			plain, err := OfPlain(row.build)
			if err != nil {
				t.Fatal(err)
			}
			for _, key := range row.lost {
				value := Record{Key: key, body: plain.body}.sealed()
				data = bytes.Replace(data, []byte(value), []byte("x"+value[1:]), 1)
			}
			if err := os.WriteFile(st.path(buildID), data, 0o644); err != nil {
				t.Fatal(err)
			}
			b, aside, err := st.Peek(buildID)
			if !errors.Is(err, row.want) {
				t.Fatalf("%v; want %v", err, row.want)
			}
			if err == nil && (len(aside) != len(row.lost) || b.Layout.Axle != "leaf" || len(b.Readings) != 1) {
				t.Errorf("set aside %v, axle %q, %d readings", aside, b.Layout.Axle, len(b.Readings))
			}
		})
	}
}

// The file is cut inside its last record, at every byte, as a kill would leave it. All records
// before it are there, for a look as for an open.
func TestCutInsideTheLastRecordLeavesTheOthers(t *testing.T) {
	st := newStore(t, sample(3))
	path := st.path(buildID)
	whole, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	last := OfReading(reading(2))
	for n := bytes.LastIndex(whole, []byte("*3\r\n")); n < len(whole); n++ {
		if err := os.WriteFile(path, whole[:n], 0o644); err != nil {
			t.Fatal(err)
		}
		peeked, _, err := st.Peek(buildID)
		if err != nil || len(peeked.Readings) != 2 {
			t.Fatalf("peek, cut at byte %d: %v; want 2 readings", n, err)
		}
		f, b, aside, err := st.OpenBuild(buildID)
		if err != nil || len(b.Readings) != 2 || len(aside) > 0 {
			t.Fatalf("open, cut at byte %d: %v, set aside %v; want 2 readings", n, err, aside)
		}
		if err := f.Keep(last); err != nil {
			t.Fatal(err)
		}
		closeFile(t, f)
		if again, err := os.ReadFile(path); err != nil || !bytes.Equal(again, whole) {
			t.Fatalf("cut at byte %d and kept again: the file is not as it was before", n)
		}
	}
}

// A value under another record's key has a whole record in it and is still wrong.
func TestValueUnderAnotherKeyIsSetAside(t *testing.T) {
	st := newStore(t, sample(2))
	one, two := OfReading(reading(0)), OfReading(reading(1))
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	err = f.db.Update(func(tx *buntdb.Tx) error {
		_, _, err := tx.Set(one.Key, two.sealed(), nil)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	closeFile(t, f)
	b, aside, err := st.Peek(buildID)
	if err != nil {
		t.Fatal(err)
	}
	if len(aside) != 1 || aside[0].Key != one.Key || len(b.Readings) != 1 {
		t.Errorf("set aside %v, %d readings; want %s aside and 1 reading", aside, len(b.Readings), one.Key)
	}
}

func TestFileThatIsNoStoreIsRefusedAndLeftAlone(t *testing.T) {
	for _, row := range []struct{ name, content string }{
		{"another format", "*1\r\n$4\r\nquit\r\n"},
		{"text", "not a store\n"},
		{"a length that makes the library panic", "*3\r\n$3\r\nset\r\n$9223372036854775807\r\nk\r\n"},
	} {
		t.Run(row.name, func(t *testing.T) {
			st := newStore(t, sample(0))
			if err := os.WriteFile(st.path(buildID), []byte(row.content), 0o644); err != nil {
				t.Fatal(err)
			}
			_, _, _, err := st.OpenBuild(buildID)
			if !errors.Is(err, ErrDamaged) || strings.Contains(fmt.Sprint(err), "\n") {
				t.Errorf("open: %v; want ErrDamaged in one line", err)
			}
			if _, _, err := st.Peek(buildID); !errors.Is(err, ErrDamaged) {
				t.Errorf("peek: %v; want ErrDamaged", err)
			}
			if now, err := os.ReadFile(st.path(buildID)); err != nil || string(now) != row.content {
				t.Errorf("the file was changed: %q, %v", now, err)
			}
			l, err := takeLock(st.lockPath(buildID))
			if err != nil {
				t.Fatalf("the lock was not freed: %v", err)
			}
			if err := l.release(); err != nil {
				t.Error(err)
			}
		})
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
	if _, err := st.Create(sample(0)); !errors.Is(err, ErrExists) {
		t.Errorf("Create again: %v; want ErrExists", err)
	}
}
