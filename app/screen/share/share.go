// Package share is the state of the pages of places: what is known of each place, the passes that go
// on beside the window, and the offer of this device's builds to others. It knows no toolkit.
package share

import (
	"context"
	"errors"
	"slices"
	"time"

	"yokebook/app/logbook"
	"yokebook/app/places"
	"yokebook/measure"
	buildsync "yokebook/sync"
)

// Runner is how work goes on beside the window.
type Runner struct {
	Apart   func(f func()) // runs f beside the window's goroutine
	Post    func(f func()) // runs f on the window's goroutine, soon
	Through func(f func()) // runs f on the window's goroutine and returns when it is done
	Now     func() time.Time
	// Changed is called on the window's goroutine when there is something new to show; came holds the
	// builds that records came into.
	Changed func(came []measure.ID)
}

// Pass is the newest pass over a place since the program was started.
type Pass struct {
	Running bool // it goes on
	Waiting bool // it begins when another has ended
	Step    buildsync.Step
	Report  buildsync.Report
	Err     error     // why it did not come to its end; nil: it did
	At      time.Time // when it ended

	all     bool
	stopped bool
	cancel  context.CancelFunc
}

// Sharing shares the builds of this device in the course of one run of the program. Its methods are
// called on the window's goroutine and never wait for a place.
type Sharing struct {
	Places *places.Places
	// Here and OnNetworks are the addresses at which builds are offered.
	Here, OnNetworks string

	shelf *logbook.Shelf
	run   Runner

	passes map[string]*Pass
	queue  []string
	closed bool
	offer  *Offer
	tidied map[string][]places.Aside // what was tidied away, by place
}

// New returns the sharing of a shelf's builds.
func New(ps *places.Places, shelf *logbook.Shelf, run Runner) *Sharing {
	return &Sharing{Places: ps, Here: here, OnNetworks: onNetworks, shelf: shelf, run: run, passes: map[string]*Pass{}, tidied: map[string][]places.Aside{}}
}

// Device is the id of this device.
func (s *Sharing) Device() measure.ID { return s.shelf.Device() }

// Shelf is where the builds are.
func (s *Sharing) Shelf() *logbook.Shelf { return s.shelf }

// Pass is the newest pass over a place in this run of the program; false before the first.
func (s *Sharing) Pass(address string) (Pass, bool) {
	if p := s.passes[address]; p != nil {
		return *p, true
	}
	return Pass{}, false
}

// Busy reports that a pass goes on.
func (s *Sharing) Busy() bool {
	for _, p := range s.passes {
		if p.Running {
			return true
		}
	}
	return false
}

// Sync does a pass over a place, after those that are asked for already. With all everything is read
// again.
func (s *Sharing) Sync(address string, all bool) {
	if p := s.passes[address]; p != nil && (p.Running || p.Waiting) {
		return
	}
	old := s.passes[address]
	p := &Pass{Waiting: true, all: all}
	if old != nil {
		p.Report = old.Report // until there is a newer one
	}
	s.passes[address] = p
	s.queue = append(s.queue, address)
	s.next()
}

// notAgain is how long a place that failed is left alone by passes that nobody asked for.
const notAgain = time.Minute

// ByItself does a pass over each place that syncs by itself, unless it failed a moment ago. That the
// list of places can't be read is said on the page of places.
func (s *Sharing) ByItself() {
	all, err := s.Places.List()
	if err != nil {
		return
	}
	for _, x := range all {
		p := s.passes[x.Address]
		failed := p != nil && p.Err != nil
		if age := s.age(p); x.Auto && (!failed || age < 0 || age >= notAgain) {
			s.Sync(x.Address, false)
		}
	}
}

func (s *Sharing) age(p *Pass) time.Duration {
	if p == nil {
		return 0
	}
	return s.run.Now().Sub(p.At)
}

// Stop ends a pass. What it took in stays.
func (s *Sharing) Stop(address string) {
	p := s.passes[address]
	switch {
	case p == nil:
	case p.Waiting:
		s.queue = slices.DeleteFunc(s.queue, func(a string) bool { return a == address })
		delete(s.passes, address)
	case p.Running:
		p.stopped = true
		p.cancel()
	}
}

// next begins the next pass when none goes on.
func (s *Sharing) next() {
	if s.closed || s.Busy() || len(s.queue) == 0 {
		return
	}
	address := s.queue[0]
	s.queue = s.queue[1:]
	p := s.passes[address]
	ctx, cancel := context.WithCancel(context.Background())
	p.Waiting, p.Running, p.cancel = false, true, cancel
	told := time.Time{}
	o := places.Options{All: p.all, Queue: true, Through: s.run.Through, Progress: func(step buildsync.Step) {
		if now := s.run.Now(); now.Sub(told) >= between || now.Before(told) {
			told = now
			s.run.Post(func() { s.step(p, step) })
		}
	}}
	s.run.Apart(func() {
		report, err := s.Places.Sync(ctx, s.shelf, address, o)
		cancel()
		s.run.Post(func() { s.ended(p, report, err) })
	})
}

// between is how often progress is shown.
const between = 200 * time.Millisecond

func (s *Sharing) step(p *Pass, step buildsync.Step) {
	if p.Running {
		p.Step = step
		s.changed(nil)
	}
}

// ended notes how a pass went and begins the next one.
func (s *Sharing) ended(p *Pass, report buildsync.Report, err error) {
	p.Running, p.Err, p.At = false, err, s.run.Now()
	if err == nil || len(report.Builds) > 0 {
		p.Report = report
	}
	if p.stopped && errors.Is(err, context.Canceled) {
		p.Err = ErrStopped
	}
	var came []measure.ID
	for _, b := range report.Builds {
		if b.Came.Total() > 0 {
			came = append(came, b.ID)
		}
	}
	s.changed(came)
	s.next()
}

// ErrStopped: a person ended the pass.
var ErrStopped = errors.New("stopped; what came in stays, the rest comes the next time")

func (s *Sharing) changed(came []measure.ID) {
	if !s.closed {
		s.run.Changed(came)
	}
}

// Forget takes a place off the list.
func (s *Sharing) Forget(address string) error {
	s.Stop(address)
	delete(s.passes, address)
	delete(s.tidied, address)
	return s.Places.Forget(address)
}

// Standing says how each build stands in a place: after a pass in this run of the program as that left
// it, as far as nothing was kept since; else as it is remembered.
func (s *Sharing) Standing(address string) ([]places.Standing, error) {
	rows, err := s.Places.Standing(s.shelf, address)
	if err != nil {
		return nil, err
	}
	p := s.passes[address]
	if p == nil {
		return rows, nil
	}
	for i, row := range rows {
		for _, b := range p.Report.Builds {
			if b.ID == row.ID {
				rows[i].Came, rows[i].Went, rows[i].Conflicts = b.Came, b.Went, b.Conflicts
				if !row.Known || !row.Synced {
					rows[i].There, rows[i].Known = b.There, true
					rows[i].LastAt, rows[i].LastDevice = b.LastAt, b.LastDevice
				}
			}
		}
	}
	return rows, nil
}

// Close ends everything that goes on and does not wait for it: what was taken in is on the disk.
func (s *Sharing) Close() {
	s.closed = true
	for _, p := range s.passes {
		if p.Running {
			p.cancel()
		}
	}
	s.EndOffer()
}
