package store

import (
	"bytes"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"yokebook/measure"
	"yokebook/measure/store/disk/disktest"
)

const otherID measure.ID = "019ab3f0-0000-7000-8000-00000000000e"

// patient is a build whose file is damaged again and again, with its snapshot or without, and a
// neighbour in the same store that must not notice.
type patient struct {
	t         *testing.T
	st        *Store
	want      *measure.Build
	whole     []byte // the file as it was written
	neighbour map[string]string
}

func newPatient(t *testing.T, want *measure.Build, secured bool) *patient {
	t.Helper()
	st, err := OpenOn(disktest.Quick{}, fastDir(t), clock())
	if err != nil {
		t.Fatal(err)
	}
	other := sample(2)
	other.ID = otherID
	for _, b := range []*measure.Build{want, other} {
		f, err := st.Create(b)
		if err != nil {
			t.Fatal(err)
		}
		if secured || b == other {
			if err := f.Secure(b); err != nil {
				t.Fatal(err)
			}
		}
		closeFile(t, f)
	}
	p := &patient{t: t, st: st, want: want, whole: readFile(t, st.path(buildID)), neighbour: filesOf(t, st, otherID)}
	t.Cleanup(p.neighbourIsUntouched)
	return p
}

// fastDir is a folder in memory where this machine has one: these tests write much, and whether it
// lasts is not what they ask.
func fastDir(t *testing.T) string {
	t.Helper()
	dir, err := os.MkdirTemp("/dev/shm", "yokebook-store-")
	if err != nil {
		return t.TempDir()
	}
	t.Cleanup(func() { _ = os.RemoveAll(dir) })
	return dir
}

// damage puts other bytes in the place of the file; what earlier damage left behind is removed.
func (p *patient) damage(data []byte) {
	p.t.Helper()
	if err := os.RemoveAll(p.st.asideDir(buildID)); err != nil {
		p.t.Fatal(err)
	}
	if err := os.WriteFile(p.st.path(buildID), data, 0o644); err != nil {
		p.t.Fatal(err)
	}
}

func (p *patient) neighbourIsUntouched() {
	if now := filesOf(p.t, p.st, otherID); !reflect.DeepEqual(now, p.neighbour) {
		p.t.Error("damage to one build changed files of another")
	}
	if v, err := p.st.Verify(otherID); err != nil || v.State() != IsWhole {
		p.t.Errorf("the neighbour is %s, %v", v.State(), err)
	}
}

// filesOf reads every file of a build but its lock.
func filesOf(t *testing.T, st *Store, id measure.ID) map[string]string {
	t.Helper()
	out := map[string]string{}
	err := filepath.WalkDir(st.Dir(), func(path string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() && strings.Contains(path, string(id)) && !strings.HasSuffix(path, ".lock") {
			out[path] = string(readFile(t, path))
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func readFile(t *testing.T, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// judge compares what is served with what was kept: nothing made up, nothing altered, and nothing
// missing but what may be.
func (p *patient) judge(when string, got *measure.Build, report Report, mayMiss int) {
	p.t.Helper()
	want := map[measure.ID]measure.Reading{}
	for _, r := range p.want.Readings {
		want[r.ID] = r
	}
	for _, r := range got.Readings {
		if !reflect.DeepEqual(r, want[r.ID]) {
			silently(p.t, when, fmt.Sprintf("reading %s is served altered", r.ID))
		}
		delete(want, r.ID)
	}
	if len(got.Strikes)+len(got.Skips)+len(got.Heads) > len(p.want.Strikes)+len(p.want.Skips)+len(p.want.Heads) || got.Title != p.want.Title {
		silently(p.t, when, "a record that nobody kept")
	}
	if len(want) > mayMiss {
		for id := range want {
			lost(p.t, when, id, report)
			break
		}
	}
}

// opened opens and closes the build and checks that it is whole from then on and that the damaged
// bytes are kept.
func (p *patient) opened(when string, damaged []byte) (*measure.Build, Report) {
	p.t.Helper()
	f, b, report, err := p.st.OpenBuild(buildID)
	if err != nil {
		p.t.Fatalf("%s: %v", when, err)
	}
	closeFile(p.t, f)
	if report.KeptAside != "" {
		if kept := readFile(p.t, filepath.Join(p.st.Dir(), report.KeptAside)); !bytes.Equal(kept, damaged) {
			p.t.Fatalf("%s: what was kept aside is not the damaged file", when)
		}
		if past, err := p.st.Past(buildID); err != nil || len(past) != 1 || !reflect.DeepEqual(past[0], report) {
			p.t.Fatalf("%s: the report is not kept: %v, %v", when, past, err)
		}
	} else if now := readFile(p.t, p.st.path(buildID)); !bytes.Equal(now, damaged) {
		p.t.Fatalf("%s: the file was changed and nothing kept aside", when)
	}
	again, second, err := p.st.Peek(buildID)
	if err != nil || second.State() != IsWhole || !bytes.Equal(written(p.t, again), written(p.t, b)) {
		p.t.Fatalf("%s: after opening, %s, %v", when, second, err)
	}
	return b, report
}

// forty is a build of so many readings without long notes: its file can be gone through bit by bit.
func forty() *measure.Build {
	b := sample(40)
	for i := range b.Readings {
		b.Readings[i].Note = ""
	}
	return b
}

// every lists the places of a file that a test damages: all of them in a soak, else so many at random.
func every(places, short int, random *rand.Rand) []int {
	if soaking {
		short = places
	}
	return random.Perm(places)[:min(short, places)]
}

// The file is cut at every byte. With a snapshot nothing is missing, wherever it was cut; without one
// everything before the cut is there.
func TestFileCutAtEveryByte(t *testing.T) {
	for _, secured := range []bool{true, false} {
		t.Run(fmt.Sprint("with a snapshot ", secured), func(t *testing.T) {
			p := newPatient(t, sample(3), secured)
			if soaking {
				p = newPatient(t, forty(), secured)
			}
			const every = 29 // an open is slower than a look
			for n := range p.whole {
				p.damage(p.whole[:n])
				when := fmt.Sprint("cut at byte ", n)
				got, report, err := p.st.Peek(buildID)
				before := readingsIn(p.whole[:n])
				if err != nil {
					if secured || before > 0 {
						t.Fatalf("%s: %v", when, err)
					}
					continue // not even the layout was there
				}
				mayMiss := len(p.want.Readings) - before
				if secured {
					mayMiss = 0
				}
				p.judge(when, got, report, mayMiss)
				if n%every == 0 {
					opened, report := p.opened(when, p.whole[:n])
					p.judge(when+", opened", opened, report, mayMiss)
				}
				count(&tally.cuts, 1)
			}
		})
	}
}

// readingsIn counts the readings that stand whole in the bytes, apart from the code under test.
func readingsIn(data []byte) int {
	n := 0
	for _, command := range bytes.SplitAfter(data, []byte("}\r\n")) {
		if bytes.Contains(command, []byte("\r\nreading/")) && bytes.HasSuffix(command, []byte("}\r\n")) {
			n++
		}
	}
	return n
}

// One bit of the file is flipped: in a soak every single one. It is always noticed. With a snapshot nothing is missing;
// without one at most the one record, and then the report says so.
func TestFlippedBitIsAlwaysNoticed(t *testing.T) {
	const seed = 20260303
	random := rand.New(rand.NewPCG(seed, seed))
	for _, secured := range []bool{true, false} {
		t.Run(fmt.Sprint("with a snapshot ", secured), func(t *testing.T) {
			p := newPatient(t, forty(), secured)
			for round, place := range every(8*len(p.whole), 600, random) {
				damaged := bytes.Clone(p.whole)
				damaged[place/8] ^= 1 << (place % 8)
				p.damage(damaged)
				when := fmt.Sprintf("byte %d, bit %d", place/8, place%8)
				p.flipped(when, damaged, secured, round%rounds(20, 100) == 0)
				count(&tally.flips, 1)
			}
		})
	}
}

func (p *patient) flipped(when string, damaged []byte, secured, open bool) {
	p.t.Helper()
	got, report, err := p.st.Peek(buildID)
	if err != nil {
		p.t.Fatalf("%s: %v", when, err)
	}
	if report.State() == IsWhole {
		silently(p.t, when, "the file is said to be whole")
	}
	mayMiss := 0
	if report.State() == IsSetAside && !secured {
		mayMiss = 1
	}
	p.judge(when, got, report, mayMiss)
	if open {
		opened, again := p.opened(when, damaged)
		p.judge(when+", opened", opened, again, mayMiss)
	}
}

// Whole stretches are lost: zeros, other bytes, or nothing where they were. With a snapshot nothing is
// missing, and nothing is ever served that was not kept.
func TestLostStretchesAreMadeGoodFromTheSnapshot(t *testing.T) {
	const seed = 20260304
	random := rand.New(rand.NewPCG(seed, seed))
	p := newPatient(t, sample(5), true)
	for round := range rounds(120, 3000) {
		from := random.IntN(len(p.whole))
		to := from + random.IntN(len(p.whole)-from+1)
		middle := make([]byte, to-from)
		switch random.IntN(3) {
		case 0:
			for i := range middle {
				middle[i] = byte(random.IntN(256))
			}
		case 1:
			middle = nil
		}
		damaged := bytes.Join([][]byte{p.whole[:from], middle, p.whole[to:]}, nil)
		if bytes.Equal(damaged, p.whole) {
			continue
		}
		p.damage(damaged)
		when := fmt.Sprintf("round %d, bytes %d to %d (seed %d)", round, from, to, seed)
		got, report, err := p.st.Peek(buildID)
		if err != nil {
			t.Fatalf("%s: %v", when, err)
		}
		if report.State() == IsWhole {
			silently(t, when, "the file is said to be whole")
		}
		p.judge(when, got, report, 0)
		opened, report := p.opened(when, damaged)
		p.judge(when+", opened", opened, report, 0)
	}
}
