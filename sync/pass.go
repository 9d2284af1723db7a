package sync

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"strings"
	"sync"
	"time"

	"yokebook/measure"
	"yokebook/sync/place"
)

// Pass is one device and one place.
type Pass struct {
	Place  place.Place
	Builds Builds
	Device measure.ID
	Now    func() time.Time
	// Wait waits before another try of a write that was read back differently; nil: don't wait.
	Wait func(ctx context.Context, d time.Duration) error
	// All reads everything again, whatever is remembered.
	All bool
	// Progress is told before each file that is looked at and each build that is worked on; may be nil.
	Progress func(Step)
}

// Step is how far a pass has come.
type Step struct {
	Phase    string // "files" or "builds"
	Done, Of int
}

// run is a pass at work.
type run struct {
	Pass
	memory *Memory
	report Report
	now    time.Time               // by this device
	there  time.Time               // by the clock that dates the files
	listed []place.File            // what the place holds, sorted by name
	noted  []noted                 // the files that hold builds, sorted by name
	ours   []own                   // this device's own files, by build; those of builds that are done are cut off
	met    int                     // names of the listing that were remembered
	files  map[measure.ID][]string // the files of each build, once they were asked for
	held   map[measure.ID]string   // stamps of what this device has
	pages  map[string]page         // files that were read in this pass, as far as there is room
	room   int                     // bytes left for pages
	shut   error                   // why the place takes no files; set once
}

// Run does one pass and brings the memory up to date. The report is good as far as it goes when Run
// errs: then the place could not be reached, this device's builds could not be listed, or the work was
// called off. Save the memory in either case, after what Take took is on the disk, which it is.
func (p Pass) Run(ctx context.Context, m *Memory) (Report, error) {
	if m.Device != p.Device {
		*m = *NewMemory()
		m.Device = p.Device
	}
	r := &run{Pass: p, memory: m, report: Report{Place: p.Place.Name()}, now: p.Now(), room: roomForPages,
		pages: map[string]page{}}
	err := r.work(ctx)
	return r.report, err
}

func (r *run) work(ctx context.Context) error {
	listing, held, err := r.lists(ctx)
	if err != nil {
		return err
	}
	r.held = make(map[measure.ID]string, len(held))
	for _, h := range held {
		r.held[h.ID] = h.Stamp
	}
	r.forgetBuilds()
	if r.there = listing.Now; r.there.IsZero() {
		r.there = r.now
	}
	r.listed = listing.Files
	r.noted = make([]noted, 0, len(listing.Files))
	r.ours = make([]own, 0, len(listing.Files))
	before := len(r.memory.Files)
	for i, f := range listing.Files {
		r.tell("files", i, len(listing.Files))
		twice := i > 0 && f.Name == listing.Files[i-1].Name
		if err := r.look(ctx, f, twice); err != nil {
			return err
		}
	}
	r.forgetFiles(before)
	ids := r.ids(held)
	r.report.Builds = make([]Row, 0, len(ids))
	for i, id := range ids {
		r.tell("builds", i, len(ids))
		if err := ctx.Err(); err != nil {
			return fmt.Errorf("%s: %w", r.report.Place, err)
		}
		if err := r.build(ctx, id); err != nil {
			return err
		}
	}
	return nil
}

// lists lists what the place and what this device holds beside each other: each waits for a disk or a
// network of its own.
func (r *run) lists(ctx context.Context) (listing place.Listing, held []Held, err error) {
	var here error
	var both sync.WaitGroup
	both.Go(func() { held, here = r.Builds.Held() })
	listing, err = r.Place.List(ctx)
	both.Wait()
	if err == nil {
		err = here
	}
	return listing, held, err
}

// ids lists the builds that are here or there, sorted.
func (r *run) ids(held []Held) []measure.ID {
	out := make([]measure.ID, 0, len(held))
	for _, h := range held {
		out = append(out, h.ID)
	}
	for _, n := range r.noted {
		if _, here := r.held[n.build]; !here {
			out = append(out, n.build)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// forgetBuilds drops what is remembered of builds that this device does not have.
func (r *run) forgetBuilds() {
	met := 0
	for id := range r.held {
		if _, ok := r.memory.Builds[id]; ok {
			met++
		}
	}
	if met == len(r.memory.Builds) {
		return
	}
	maps.DeleteFunc(r.memory.Builds, func(id measure.ID, _ row) bool {
		_, here := r.held[id]
		return !here
	})
}

// forgetFiles drops what is remembered of files that are gone; so many were remembered before the look.
func (r *run) forgetFiles(before int) {
	if r.met == before {
		return
	}
	maps.DeleteFunc(r.memory.Files, func(name string, _ seen) bool { return !r.isListed(name) })
}

// isListed reports a name that the place lists.
func (r *run) isListed(name string) bool {
	_, there := slices.BinarySearchFunc(r.listed, name, func(f place.File, name string) int { return strings.Compare(f.Name, name) })
	return there
}

func (r *run) tell(phase string, done, of int) {
	if r.Progress != nil {
		r.Progress(Step{Phase: phase, Done: done, Of: of})
	}
}

// fault notes what did not work and goes on.
func (r *run) fault(kind Kind, about string, err error) {
	r.report.Faults = append(r.report.Faults, Fault{Kind: kind, About: about, Line: err.Error(), Err: err})
}
