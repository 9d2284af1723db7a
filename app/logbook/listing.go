package logbook

import (
	"context"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/route"
	"yokebook/measure/store"
)

// Glance returns the builds of the shelf as List does, but looks at none: those that have changed since
// are Pending.
func (s *Shelf) Glance() ([]Listing, error) { return s.listWhile(func() bool { return false }) }

// Freshen looks at pending builds, at most so many, until ctx ends, and returns what List does. It may be called
// beside work on open books.
func (s *Shelf) Freshen(ctx context.Context, most int) ([]Listing, error) {
	return s.listWhile(func() bool {
		most--
		return most >= 0 && ctx.Err() == nil
	})
}

// listWhile lists the builds and looks at a pending one only while goOn says so.
func (s *Shelf) listWhile(goOn func() bool) ([]Listing, error) {
	rows, err := s.store.IndexWhile(goOn, func(b *measure.Build) store.Row {
		return summarise(b, s.src.run(b, nil).Findings, route.StopsBy(b, document.Hash))
	})
	if err != nil {
		return nil, err
	}
	out := make([]Listing, len(rows))
	for i, row := range rows {
		out[i] = listing(row)
		out[i].Open = s.opened(row.ID) != nil
	}
	return out, nil
}

// summarise makes the row of a build in the list.
func summarise(b *measure.Build, findings []checks.Finding, stops []route.Stop) store.Row {
	worst, counts := Worst(findings)
	row := store.Row{Title: b.Title, Readings: len(b.CurrentReadings(document.Hash)),
		LastWork: b.LastRecord(), Wanted: route.Wanted(stops), Worst: string(worst), Counts: map[string]int{}}
	for verdict, n := range counts {
		row.Counts[string(verdict)] = n
	}
	return row
}

func listing(row store.Row) Listing {
	l := Listing{ID: row.ID, Pending: row.Stale, Title: row.Title, LastWork: row.LastWork, Readings: row.Readings, Wanted: row.Wanted,
		Worst: checks.Verdict(row.Worst), Counts: map[checks.Verdict]int{}, Aside: row.Aside, Notes: NotesOf(row.Report), Damaged: row.Damaged}
	for verdict, n := range row.Counts {
		l.Counts[checks.Verdict(verdict)] = n
	}
	return l
}
