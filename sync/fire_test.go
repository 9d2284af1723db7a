package sync

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/sync/place"
)

// fire is one run of up to eight devices under everything that can go wrong. One seed is one run.
type fire struct {
	seed   uint64
	rng    *rand.Rand
	now    time.Time // the true one
	shared bool      // one place for all; else each has a folder that a file-sync program carries files between
	skew   time.Duration
	actors []*actor
	made   int
	kept   map[string]measure.ID // hash of each acknowledged reading → its build
	did    fireCount
}

// fireCount says what runs did.
type fireCount struct {
	schedules, passes, crashes, deliveries, kept int
}

func (c *fireCount) add(o fireCount) {
	c.schedules += o.schedules
	c.passes += o.passes
	c.crashes += o.crashes
	c.deliveries += o.deliveries
	c.kept += o.kept
}

// actor is one device.
type actor struct {
	*drawer
	id       measure.ID
	skew     time.Duration
	offline  bool
	folder   *shed
	memory   *Memory
	saved    [][]byte                        // memories as they were saved
	backups  []map[measure.ID]*measure.Build // of its builds
	versions map[string][][]byte             // every version of its own files
}

func newFire(seed uint64) *fire {
	f := &fire{seed: seed, rng: rand.New(rand.NewPCG(seed, 7)), now: start, kept: map[string]measure.ID{}}
	f.shared = f.chance(2)
	f.did.schedules = 1
	if f.chance(3) {
		f.skew = f.anySkew()
	}
	clock := func() time.Time { return f.now.Add(f.skew) }
	var folder *shed
	step, tells := time.Duration(f.rng.IntN(3))*time.Second, f.chance(2)
	devices := 2 + f.rng.IntN(7)
	if f.chance(2) {
		devices = 2 + f.rng.IntN(2)
	}
	for n := range devices {
		if folder == nil || !f.shared {
			folder = newShed(clock)
			folder.step, folder.tells = step, tells
		}
		a := &actor{drawer: newDrawer(), id: deviceID(n), folder: folder, memory: NewMemory(), versions: map[string][][]byte{}}
		if f.chance(2) {
			a.skew = f.anySkew()
		}
		f.actors = append(f.actors, a)
	}
	return f
}

func (f *fire) chance(oneIn int) bool { return f.rng.IntN(oneIn) == 0 }

// anySkew is a few seconds or ten years, either way.
func (f *fire) anySkew() time.Duration {
	d := time.Duration(f.rng.IntN(20)) * time.Second
	if f.chance(2) {
		d = 10 * 365 * 24 * time.Hour
	}
	if f.chance(2) {
		d = -d
	}
	return d
}

func (f *fire) someone() *actor { return f.actors[f.rng.IntN(len(f.actors))] }

// burn lets things happen.
func (f *fire) burn() error {
	for range 15 + f.rng.IntN(30) {
		f.now = f.now.Add(time.Duration(f.rng.IntN(4000)) * time.Millisecond)
		a := f.someone()
		var err error
		switch n := f.rng.IntN(100); {
		case n < 34:
			f.record(a)
		case n < 60:
			err = f.pass(a, f.chance(2))
		case n < 78:
			f.deliver()
		case n < 82:
			a.offline = !a.offline
		case n < 84:
			a.skew = f.anySkew()
		case n < 87:
			f.litter(a)
		case n < 89:
			f.forget(a)
		case n < 92:
			f.tidy(a)
		case n < 98:
			f.restore(a)
		default:
			f.now = f.now.Add(time.Duration(f.rng.IntN(30)) * time.Hour)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// record does what a person does: read, correct, strike, retitle, read again under an id that is taken.
func (f *fire) record(a *actor) {
	build := buildID(f.rng.IntN(2))
	if f.chance(5) {
		a.backups = append(a.backups, maps.Clone(a.builds))
	}
	f.made++
	at := f.now.Add(a.skew)
	a.change(build, func(b *measure.Build) {
		r := slope(id(1, f.made), a.id, fmt.Sprint(f.rng.IntN(20)), at)
		switch n := f.rng.IntN(10); {
		case n < 2 && len(b.Readings) > 0:
			r.Replaces = b.Readings[f.rng.IntN(len(b.Readings))].ID
		case n == 2 && len(b.Readings) > 0:
			r.ID = b.Readings[f.rng.IntN(len(b.Readings))].ID
			r.Note = fmt.Sprint(f.made)
		case n == 3 && len(b.Readings) > 0:
			b.Strikes = append(b.Strikes, measure.Strike{ID: id(3, f.made), Reading: b.Readings[f.rng.IntN(len(b.Readings))].ID, Device: a.id})
			return
		case n == 4:
			title, _ := json.Marshal(fmt.Sprintf("invented %d", f.rng.IntN(100)))
			b.Heads = append(b.Heads, measure.Head{ID: id(2, f.made), Field: "title", Value: title,
				Clock: measure.Clock{MS: max(0, at.UnixMilli())}, Device: a.id})
			return
		}
		b.Readings = append(b.Readings, r)
		f.kept[document.Hash(r)] = build
		f.did.kept++
	})
}

// pass lets a device sync, or crash while it does.
func (f *fire) pass(a *actor, mayDie bool) error {
	if a.offline {
		return nil
	}
	f.did.passes++
	m := &mortal{Place: a.folder, Builds: a.drawer, left: 1 << 30, late: f.chance(2), lies: f.rng.IntN(10)}
	if mayDie {
		m.left = f.rng.IntN(12)
	}
	p := Pass{Place: m, Builds: m, Device: a.id, Now: func() time.Time { return f.now.Add(a.skew) }, All: f.chance(20)}
	report, err := p.Run(context.Background(), a.memory)
	f.remember(a)
	if m.left < 0 {
		f.did.crashes++
		if f.chance(2) { // it died: what it knew and had not saved is gone
			f.forget(a)
			return nil
		}
		err = nil // only the place went away: the program lives, and saves what it knows
	}
	if err != nil {
		return err
	}
	if !f.chance(10) {
		saved, err := a.memory.Bytes()
		if err != nil {
			return err
		}
		a.saved = append(a.saved, saved)
	}
	return f.claims(a, report)
}

// remember keeps the versions of a device's own files, for the file-sync program to bring late.
func (f *fire) remember(a *actor) {
	for n := range 2 {
		name := place.FileName(buildID(n), a.id)
		file, ok := a.folder.files[name]
		if v := a.versions[name]; ok && (len(v) == 0 || !bytes.Equal(v[len(v)-1], file.data)) {
			a.versions[name] = append(v, file.data)
		}
	}
}

// claims checks that a build that is called synced is all in the place.
func (f *fire) claims(a *actor, r Report) error {
	for _, row := range r.Builds {
		if !row.Synced {
			continue
		}
		own, ok := a.folder.files[place.FileName(row.ID, a.id)]
		if !ok {
			return fmt.Errorf("device %s called %s synced without a file", a.id, row.ID)
		}
		there, _, err := document.Read(own.data)
		if err != nil {
			return fmt.Errorf("device %s called %s synced and its file is bad: %w", a.id, row.ID, err)
		}
		have := hashes(there)
		for h := range hashes(a.builds[row.ID]) {
			if !have[h] {
				return fmt.Errorf("device %s called %s synced and a reading is not there", a.id, row.ID)
			}
		}
	}
	return nil
}

func hashes(b *measure.Build) map[string]bool {
	all := map[string]bool{}
	for _, r := range b.Readings {
		all[document.Hash(r)] = true
	}
	return all
}

// forget sets a device's memory back to one that was saved, or to nothing or rubbish.
func (f *fire) forget(a *actor) {
	if len(a.saved) == 0 || f.chance(4) {
		a.memory = ParseMemory([]byte(`{"format":"yokebook-sync/1","files"`))
		return
	}
	a.memory = ParseMemory(a.saved[f.rng.IntN(len(a.saved))])
}

// deliver carries a file from one folder to another, as file-sync programs do: late, twice, in an old
// version, cut off, or as a copy under another name.
func (f *fire) deliver() {
	from, to := f.someone(), f.someone()
	names := slices.Sorted(maps.Keys(from.versions))
	if len(names) == 0 {
		return
	}
	f.did.deliveries++
	name := names[f.rng.IntN(len(names))]
	versions := from.versions[name]
	data := versions[len(versions)-1]
	if f.chance(4) {
		data = versions[f.rng.IntN(len(versions))]
	}
	switch {
	case f.chance(8):
		to.folder.drop(fmt.Sprintf("copy (%d).json", f.rng.IntN(5)), data)
	case f.shared:
	case f.chance(8):
		to.folder.drop(name, data[:f.rng.IntN(len(data))])
	case from != to || f.chance(4): // now and then its own file comes back to a device in an old version
		to.folder.drop(name, data)
	}
}

// litter leaves something in a folder that is no good build.
func (f *fire) litter(a *actor) {
	bad := [][]byte{[]byte("{"), []byte(`{"name":"something else"}`), []byte(`{"format":"yokebook-build/1","id":"../../x"}`), bytes.Repeat([]byte("["), 100)}
	a.folder.drop(fmt.Sprintf("litter%d.json", f.rng.IntN(4)), bad[f.rng.IntN(len(bad))])
}

// restore sets a device back to a backup. What nobody else has is then gone for good, and no longer
// looked for.
func (f *fire) restore(a *actor) {
	if !f.shared || len(a.backups) == 0 {
		return
	}
	for _, old := range a.backups[f.rng.IntN(len(a.backups))] {
		a.drawer.restore(old)
	}
	f.mourn()
}

// tidy takes a file away from a place that is shared, as people do.
func (f *fire) tidy(a *actor) {
	names := slices.Sorted(maps.Keys(a.folder.files))
	if !f.shared || len(names) == 0 {
		return
	}
	delete(a.folder.files, names[f.rng.IntN(len(names))])
	f.mourn()
}

// mourn stops looking for readings that nobody has any more, and no file.
func (f *fire) mourn() {
	left := map[string]bool{}
	for _, x := range f.actors {
		for _, b := range x.builds {
			maps.Copy(left, hashes(b))
		}
		for name, file := range x.folder.files {
			if b, _, err := document.Read(file.data); err == nil && place.Wanted(name, 1) {
				maps.Copy(left, hashes(b))
			}
		}
	}
	maps.DeleteFunc(f.kept, func(h string, _ measure.ID) bool { return !left[h] })
}

// run runs one seed.
func (f *fire) run() error {
	return errors.Join(f.burn(), f.heal())
}
