package share

import (
	"context"

	"yokebook/app/places"
)

// Task is work for beside the window's goroutine. What it returns is run on that goroutine and says
// what did not work.
type Task func(ctx context.Context) (finish func() error)

// Copies are the files of builds in a place under names that are not ours, all of whose records are
// here and there: they may be tidied away. There are none before a pass in which all went well.
func (s *Sharing) Copies(address string) []string {
	p := s.passes[address]
	if p == nil || p.Running || p.Err != nil || !p.Report.OK() {
		return nil
	}
	return p.Report.Copies
}

// Tidied is how many copies were tidied away and can be put back.
func (s *Sharing) Tidied(address string) int { return len(s.tidied[address]) }

// Tidy takes the copies out of a place; each is kept on this device first.
func (s *Sharing) Tidy(address string) Task {
	names := s.Copies(address)
	return func(ctx context.Context) func() error {
		done, err := s.Places.Tidy(ctx, s.Device(), address, names)
		return func() error {
			s.tidied[address] = append(s.tidied[address], done...)
			if p := s.passes[address]; p != nil {
				p.Report.Copies = without(p.Report.Copies, done)
			}
			return err
		}
	}
}

// PutBack brings the copies back.
func (s *Sharing) PutBack(address string) Task {
	all := s.tidied[address]
	return func(ctx context.Context) func() error {
		err := s.Places.PutBack(ctx, s.Device(), address, all)
		return func() error {
			if err == nil {
				delete(s.tidied, address)
			}
			return err
		}
	}
}

func without(names []string, done []places.Aside) []string {
	var left []string
	for _, name := range names {
		gone := false
		for _, a := range done {
			gone = gone || a.Name == name
		}
		if !gone {
			left = append(left, name)
		}
	}
	return left
}
