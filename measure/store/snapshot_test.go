package store

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"yokebook/measure/store/disk/disktest"
)

// Which of a row of snapshots stay. Worked out by hand; the scheme is that of grandfather, father and
// son (common practice, no source).
func TestGenerations(t *testing.T) {
	monday := time.Date(2026, 3, 2, 8, 0, 0, 0, time.UTC)
	for _, row := range []struct {
		name string
		at   func(number int) time.Time // of snapshot 1, 2, 3 …
		n    int
		want string // the numbers that stay, newest first
	}{
		{"few", func(n int) time.Time { return monday }, 5, "5 4 3 2 1"},
		{"many within an hour", func(n int) time.Time { return monday.Add(time.Duration(n) * time.Minute) }, 40, "40 39 38 37 36"},
		{"one a day for forty days", func(n int) time.Time { return monday.AddDate(0, 0, n-1) }, 40,
			"40 39 38 37 36 35 34 28 21"}, // number 1 is a Monday: 35, 28, 21 end weeks; 40 stands for its own
		{"two a day for nine days", func(n int) time.Time { return monday.Add(time.Duration(n-1) * 12 * time.Hour) }, 18,
			"18 17 16 15 14 12 10 8 6"},
		{"a clock ten years ahead for one day", func(n int) time.Time {
			if n <= 3 {
				return monday.AddDate(10, 0, 0)
			}
			return monday.Add(time.Duration(n) * time.Minute)
		}, 10, "10 9 8 7 6 3"},
	} {
		var all []snapshot
		for n := row.n; n >= 1; n-- {
			all = append(all, snapshot{number: n, at: row.at(n)})
		}
		gone := map[int]bool{}
		for _, s := range surplus(all) {
			gone[s.number] = true
		}
		var stay []string
		for _, s := range all {
			if !gone[s.number] {
				stay = append(stay, fmt.Sprint(s.number))
			}
		}
		if got := strings.Join(stay, " "); got != row.want {
			t.Errorf("%s: %s stay, want %s", row.name, got, row.want)
		}
	}
}

// securedTimes makes a build with n readings and a snapshot after each.
func securedTimes(t *testing.T, n int) *Store {
	t.Helper()
	st, err := OpenOn(disktest.Quick{}, fastDir(t), clock())
	if err != nil {
		t.Fatal(err)
	}
	f, err := st.Create(sample(0))
	if err != nil {
		t.Fatal(err)
	}
	for i := range n {
		if err := f.Keep(OfReading(reading(i))); err != nil {
			t.Fatal(err)
		}
		for range 2 { // the second finds nothing to do
			if err := f.Secure(sample(i + 1)); err != nil {
				t.Fatal(err)
			}
		}
	}
	closeFile(t, f)
	return st
}

func TestSnapshotsAreThinnedOutAndTheNewestHoldsAll(t *testing.T) {
	st := securedTimes(t, 12)
	snaps, err := st.snapshots(buildID)
	if err != nil || len(snaps) != keepLast || snaps[0].number != 12 {
		t.Fatalf("%v, %v; want the last %d of 12", snaps, err, keepLast)
	}
	b, _, err := st.readSnapshot(buildID, snaps[0])
	if err != nil || !bytes.Equal(written(t, b), written(t, sample(12))) {
		t.Errorf("the newest is not the build: %v", err)
	}
	if names, _, err := st.asideNames(buildID); err != nil || len(names) > 0 {
		t.Errorf("set aside: %v, %v; want nothing: every snapshot removed was part of the newest", names, err)
	}
}

// A snapshot that is damaged, or has what the build has not, is not thinned out but set aside.
func TestThinningThrowsNothingAway(t *testing.T) {
	for _, row := range []struct {
		name   string
		change func([]byte) []byte
	}{
		{"damaged", func(data []byte) []byte { return append(data[:40:40], "x"...) }},
		{"of a build with more readings", func([]byte) []byte { return written(t, sample(30)) }},
	} {
		t.Run(row.name, func(t *testing.T) {
			st := securedTimes(t, 5)
			snaps, err := st.snapshots(buildID)
			if err != nil {
				t.Fatal(err)
			}
			oldest := filepath.Join(st.snapshotDir(buildID), snaps[4].name)
			changed := row.change(readFile(t, oldest))
			if err := os.WriteFile(oldest, changed, 0o644); err != nil {
				t.Fatal(err)
			}
			if err := st.secure(sample(6)); err != nil {
				t.Fatal(err)
			}
			names, _, err := st.asideNames(buildID)
			if err != nil || len(names) != 1 || !bytes.Equal(readFile(t, filepath.Join(st.asideDir(buildID), names[0])), changed) {
				t.Errorf("set aside: %v, %v; want the snapshot as it was", names, err)
			}
		})
	}
}

func TestBuildWhoseFileIsGoneComesBackFromItsSnapshots(t *testing.T) {
	p := newPatient(t, sample(3), true)
	if err := os.Remove(p.st.path(buildID)); err != nil {
		t.Fatal(err)
	}
	if ids, err := p.st.IDs(); err != nil || len(ids) != 2 {
		t.Errorf("builds %v, %v; want both", ids, err)
	}
	if all, err := p.st.Stamps(); err != nil || len(all) != 2 || all[slices.IndexFunc(all, func(s Stamped) bool { return s.ID == buildID })].Stamp != (Stamp{}) {
		t.Errorf("stamps %v, %v; want both builds, and none for the one without a file", all, err)
	}
	if v, err := p.st.Verify(buildID); err != nil || v.State() != Recovered || !v.Now.Has(Missing) {
		t.Errorf("verify: %s, %v", v.Now, err)
	}
	if _, err := p.st.Create(sample(0)); err == nil {
		t.Error("a build was made in the place of one that can be brought back")
	}
	f, b, report, err := p.st.OpenBuild(buildID)
	if err != nil || report.Restored != 3 {
		t.Fatalf("%s, %v; want 3 readings restored", report, err)
	}
	closeFile(t, f)
	p.judge("gone", b, report, 0)
	if v, err := p.st.Verify(buildID); err != nil || v.State() != IsWhole {
		t.Errorf("afterwards: %s, %v", v.Now, err)
	}
}

// The newest snapshot is damaged and the file too: the one before it is used. A damaged snapshot of a
// whole file is told and set aside, and the build is what it was.
func TestDamagedSnapshotIsPassedOver(t *testing.T) {
	for _, fileToo := range []bool{true, false} {
		st := securedTimes(t, 6)
		snaps, err := st.snapshots(buildID)
		if err != nil {
			t.Fatal(err)
		}
		newest := filepath.Join(st.snapshotDir(buildID), snaps[0].name)
		if err := os.WriteFile(newest, bytes.Replace(readFile(t, newest), []byte("gearbox"), []byte("Gearbox"), 1), 0o644); err != nil {
			t.Fatal(err)
		}
		want := 6
		if fileToo {
			want = 5 // the sixth was in the damaged places only
			if err := os.Truncate(st.path(buildID), 700); err != nil {
				t.Fatal(err)
			}
		}
		if v, err := st.Verify(buildID); err != nil || v.State() == IsWhole || !v.Now.Has(Snapshot) {
			t.Errorf("verify: %s, %v; want the snapshot named", v.Now, err)
		}
		f, b, report, err := st.OpenBuild(buildID)
		if err != nil || len(b.Readings) != want || !report.Has(Snapshot) {
			t.Fatalf("%s, %v; want %d readings", report, err, want)
		}
		closeFile(t, f)
		if v, err := st.Verify(buildID); err != nil || v.State() != IsWhole {
			t.Errorf("afterwards: %s, %v", v.Now, err)
		}
	}
}

// What was lost in an earlier repair is named until it is there again.
func TestLossIsToldUntilTheRecordIsBack(t *testing.T) {
	p := newPatient(t, sample(3), false)
	damaged := bytes.Replace(p.whole, []byte(`"value":1.1`), []byte(`"value":7.1`), 1)
	p.damage(damaged)
	_, report := p.opened("a damaged value", damaged)
	v, err := p.st.Verify(buildID)
	if err != nil || v.State() != IsSetAside || v.Now.State() != IsWhole || len(v.Past) != 1 || len(report.Lost) != 1 {
		t.Fatalf("%+v, %v; want a whole file and a loss that is told", v, err)
	}
	f, _, _, err := p.st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	if err := f.Keep(OfReading(reading(1))); err != nil { // as an import would
		t.Fatal(err)
	}
	v, err = p.st.Verify(buildID) // while it is open
	if err != nil || v.State() != IsWhole || v.Held == "" {
		t.Errorf("%+v, %v; want it whole, and said who has it open", v, err)
	}
	closeFile(t, f)
}

// A file that is mostly old plain members is written anew when it is opened, with the same records.
func TestOldPlainMembersAreCompactedAway(t *testing.T) {
	p := newPatient(t, sample(3), false)
	long := bytes.Clone(p.whole)
	for i := 0; len(long) < 2*compactFrom; i++ {
		b := sample(0)
		b.Title = fmt.Sprint("invented: an older title ", i)
		plain, err := OfPlain(b)
		if err != nil {
			t.Fatal(err)
		}
		long = appendFrame(long, plain.Key, plain.sealed())
	}
	plain, err := OfPlain(sample(3))
	if err != nil {
		t.Fatal(err)
	}
	long = appendFrame(long, plain.Key, plain.sealed())
	p.damage(long)
	for at := 0; ; at++ { // each call of the compaction fails once; 0: none
		failing := &disktest.Failing{FS: disktest.Quick{}, At: at}
		st, err := OpenOn(failing, p.st.Dir(), clock())
		if err != nil {
			continue
		}
		f, b, report, err := st.OpenBuild(buildID)
		if err == nil {
			p.judge(fmt.Sprint("call ", at), b, report, 0)
			_ = f.Close()
		}
		if _, report, err := p.st.Peek(buildID); err != nil || report.State() != IsWhole {
			t.Fatalf("call %d (%s): %s, %v", at, failing.What(), report, err)
		}
		if size := len(readFile(t, p.st.path(buildID))); at == 0 && size > len(p.whole)+100 {
			t.Errorf("%d bytes, want about %d", size, len(p.whole))
		}
		if at > 0 && failing.What() == "" {
			return
		}
		p.damage(long)
	}
}
