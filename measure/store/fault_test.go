package store

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"reflect"
	"testing"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store/disk"
	"yokebook/measure/store/disk/disktest"
)

// day is a working day on one build: it is made, readings are kept, snapshots written, the file is
// damaged and mended, snapshots thin out. acknowledged holds what was said to be kept.
type day struct {
	t            *testing.T
	st           *Store
	made         bool
	acknowledged []measure.Reading
}

// live goes through the day as far as the disk lets it. A call that fails ends what it was part of,
// and the day goes on as a person would: by opening the build again.
func (d *day) live() {
	n := 0
	if f, err := d.st.Create(sample(0)); err == nil {
		d.made = true
		n = d.work(f, sample(0), n, 2)
	}
	for step := range 3 {
		if step == 1 {
			d.damage()
		}
		f, b, _, err := d.st.OpenBuild(buildID)
		if err != nil {
			continue
		}
		d.made = true
		n = d.work(f, b, n, 2)
	}
	_, _, _ = d.st.Peek(buildID)
	_, _ = d.st.Index(func(b *measure.Build) Row { return Row{Title: b.Title} })
}

// work keeps some readings, each followed by a snapshot, and closes.
func (d *day) work(f *File, b *measure.Build, n, readings int) int {
	for range readings {
		r := reading(n)
		n++
		if f.Keep(OfReading(r)) == nil {
			d.acknowledged = append(d.acknowledged, r)
			next := *b
			next.Readings = append(append([]measure.Reading(nil), b.Readings...), r)
			document.Arrange(&next)
			b = &next
		}
		_ = f.Secure(b)
	}
	_ = f.Close()
	return n
}

// damage leaves zeros at the end of the file, as a loss of power does; no record is touched.
func (d *day) damage() {
	f, err := os.OpenFile(d.st.path(buildID), os.O_WRONLY|os.O_APPEND, 0)
	if err != nil {
		return // it was not made
	}
	_, err = f.Write(make([]byte, 100))
	if closeErr := f.Close(); err != nil || closeErr != nil {
		d.t.Fatal(err, closeErr)
	}
}

// evening looks at the store on a disk that works: everything that was acknowledged is there.
func (d *day) evening(when string) {
	d.t.Helper()
	st, err := OpenOn(disktest.Quick{}, d.st.Dir(), clock())
	if err != nil {
		d.t.Fatalf("%s: %v", when, err)
	}
	f, b, report, err := st.OpenBuild(buildID)
	if errors.Is(err, ErrNoBuild) && !d.made && len(d.acknowledged) == 0 {
		return
	}
	if err != nil {
		d.t.Fatalf("%s: %v", when, err)
	}
	closeFile(d.t, f)
	got := map[measure.ID]measure.Reading{}
	for i, r := range b.Readings {
		got[r.ID] = r
		if i > 0 && b.Readings[i-1].ID == r.ID {
			silently(d.t, when, "two records under one id")
		}
	}
	for _, r := range d.acknowledged {
		if !reflect.DeepEqual(got[r.ID], r) {
			lost(d.t, when, r.ID, report)
		}
	}
	if report.State() == IsSetAside {
		d.t.Errorf("%s: %s", when, report)
	}
	if _, report, err := st.Peek(buildID); err != nil || report.State() != IsWhole {
		d.t.Errorf("%s: afterwards %s, %v", when, report, err)
	}
}

// Each call to the disk fails in turn: once, or from then on for want of room. Nothing that was said
// to be kept is lost, and the neighbour does not notice.
func TestEachCallToTheDiskFails(t *testing.T) {
	for _, mode := range []disktest.Mode{disktest.Once, disktest.Full} {
		t.Run(fmt.Sprint("mode ", mode), func(t *testing.T) {
			p := newPatient(t, sample(0), false)
			every := 1
			if mode == disktest.Full {
				every = rounds(9, 1)
			}
			for at := 1; ; at += every {
				removeAll(t, p.st, buildID)
				failing := &disktest.Failing{FS: disktest.Quick{}, At: at, Then: mode}
				st, err := OpenOn(failing, p.st.Dir(), clock())
				if err != nil {
					continue // the very first call
				}
				d := &day{t: t, st: st}
				d.live()
				if failing.What() == "" {
					if at < 200 || len(d.acknowledged) != 8 {
						t.Fatalf("only %d calls in a day, %d readings: the test proves nothing", at, len(d.acknowledged))
					}
					return
				}
				count(&tally.faults, 1)
				d.evening(fmt.Sprintf("call %d (%s)", at, failing.What()))
				if t.Failed() {
					return
				}
			}
		})
	}
}

// removeAll takes a build out of the store, for the next round.
func removeAll(t *testing.T, st *Store, id measure.ID) {
	t.Helper()
	for _, path := range []string{st.path(id), st.path(id) + ".new", st.snapshotDir(id), st.asideDir(id)} {
		if err := os.RemoveAll(path); err != nil {
			t.Fatal(err)
		}
	}
}

// The power goes at each call to the disk. What was not synced is gone, or is there in part, or zeros
// stand in its place, in the folders as in the files. What was said to be kept is there.
func TestPowerIsLostAtEachCall(t *testing.T) {
	const seed = 20260305
	random := rand.New(rand.NewPCG(seed, seed))
	every := rounds(7, 1)
	for round := range rounds(1, 3) {
		for at := 1 + round; ; at += every {
			dir := fastDir(t)
			volatile := disktest.NewVolatile(dir)
			failing := &disktest.Failing{FS: volatile, At: at, Then: disktest.Dead}
			st, err := OpenOn(failing, dir, clock())
			if err != nil {
				continue
			}
			d := &day{t: t, st: st}
			d.live()
			if err := volatile.LosePower(random.IntN); err != nil {
				t.Fatal(err)
			}
			count(&tally.powerLosses, 1)
			d.evening(fmt.Sprintf("power lost at call %d (%s), seed %d", at, failing.What(), seed))
			if t.Failed() || failing.What() == "" {
				break
			}
		}
	}
}

// The n-th call fails while a single file is put in place: the path holds the old bytes or the new
// ones, and a new file is whole or not there.
func TestFileIsReplacedWholeOrNotAtAll(t *testing.T) {
	const old, data = "the old bytes", "the new bytes, which are longer"
	for name, put := range map[string]func(disk.FS, string, []byte) error{"Replace": disk.Replace, "Create": disk.Create} {
		for at := 1; ; at++ {
			path := fastDir(t) + "/a.json"
			if name == "Replace" {
				if err := os.WriteFile(path, []byte(old), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			failing := &disktest.Failing{FS: disktest.Quick{}, At: at}
			err := put(failing, path, []byte(data))
			now, readErr := os.ReadFile(path)
			there := readErr == nil && (string(now) == data || name == "Replace" && string(now) == old)
			absent := os.IsNotExist(readErr) && name == "Create"
			if !there && !absent || err == nil && string(now) != data {
				t.Errorf("%s, call %d (%s): %v, and the path holds %q, %v", name, at, failing.What(), err, now, readErr)
			}
			if failing.What() == "" {
				break
			}
		}
	}
}
