package screen

import (
	"context"

	"fyne.io/fyne/v2"
)

// visit is a page with a model of its own that lies over the Take screen or the list of builds:
// settings, places, drawings. Visits lie on each other; back leaves the topmost.
type visit interface {
	page(s *Screen) page
	back(s *Screen) bool // goes back inside the visit; false where that leaves it
}

// visit opens a visit over what is shown.
func (s *Screen) visit(v visit) { s.visits = append(s.visits, v) }

// top is the topmost visit; nil where there is none.
func (s *Screen) top() visit {
	if len(s.visits) == 0 {
		return nil
	}
	return s.visits[len(s.visits)-1]
}

// leaveVisit goes back in the topmost visit, or leaves it.
func (s *Screen) leaveVisit() {
	v := s.top()
	if v == nil || v.back(s) {
		return
	}
	if d, ok := v.(drafted); ok {
		if s.drafts == nil {
			s.drafts = map[string]visit{}
		}
		s.drafts[d.draft()] = v
	}
	s.drop(v)
}

// drafted is a visit on which one types. When it is left by going back it is laid aside under what it
// is about, so that what was typed is there when it is opened again.
type drafted interface {
	visit
	draft() string
}

// revive opens a visit as it was left, else as it is given.
func (s *Screen) revive(fresh drafted) {
	if was, ok := s.drafts[fresh.draft()]; ok {
		delete(s.drafts, fresh.draft())
		s.visit(was)
		return
	}
	s.visit(fresh)
}

// drop closes a visit and what lies over it.
func (s *Screen) drop(v visit) {
	for i, have := range s.visits {
		if have == v {
			s.visits = s.visits[:i]
			return
		}
	}
}

// marks are the marks of the visits, the lowest first.
func (s *Screen) marks() []string {
	var out []string
	for _, v := range s.visits {
		if m, ok := v.(marked); ok {
			out = append(out, m.mark())
		}
	}
	return out
}

// revisit opens visits by their marks.
func (s *Screen) revisit(marks []string) {
	for _, mark := range marks {
		if v := s.visitOf(mark); v != nil {
			s.visit(v)
		}
	}
}

// job is work that goes on off the toolkit's goroutine for the page that owns it.
type job struct {
	owner  any
	cancel context.CancelFunc
}

// owner tells the page that is shown from others: the topmost visit, else the page of the model.
func (s *Screen) owner() any {
	switch {
	case s.top() != nil:
		return s.top()
	case s.take != nil:
		return s.take.Page()
	}
	return nil
}

// work runs a task off the toolkit's goroutine for the page that is shown. What it returns is run on
// the toolkit's goroutine, and the page shown again, unless the page was left meanwhile: leaving it
// ends ctx. A page has one task at a time; a new one ends the one before.
func (s *Screen) work(task func(ctx context.Context) (finish func())) { s.begin(task, s.show) }

// beside is work whose finish changes the page that is shown by itself.
func (s *Screen) beside(task func(ctx context.Context) (finish func())) { s.begin(task, func() {}) }

// begin runs a task, its finish, and what follows.
func (s *Screen) begin(task func(ctx context.Context) (finish func()), then func()) {
	s.stopWork()
	ctx, cancel := context.WithCancel(context.Background())
	mine := &job{owner: s.owner(), cancel: cancel}
	s.job = mine
	s.apart(func() {
		finish := task(ctx)
		s.post(func() {
			if s.job != mine {
				return
			}
			s.stopWork()
			if finish != nil {
				finish()
			}
			then()
		})
	})
}

// working reports that the task of the page that is shown goes on.
func (s *Screen) working() bool { return s.job != nil }

// stopWork ends the task that goes on, if any.
func (s *Screen) stopWork() {
	if s.job != nil {
		s.job.cancel()
		s.job = nil
	}
}

// apart runs f beside the toolkit's goroutine; tests run it at once.
func (s *Screen) apart(f func()) {
	if s.inline {
		f()
		return
	}
	go f()
}

// post runs f on the toolkit's goroutine, from any other.
func (s *Screen) post(f func()) {
	if s.inline {
		f()
		return
	}
	fyne.Do(f)
}
