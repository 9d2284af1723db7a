package logbook

import (
	"time"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/route"
	"yokebook/measure/store"
)

// summarise makes the row of a build in the list.
func summarise(b *measure.Build, findings []checks.Finding, stops []route.Stop) store.Row {
	worst, counts := Worst(findings)
	row := store.Row{Title: b.Title, Readings: len(b.CurrentReadings(document.Hash)),
		LastWork: lastWork(b), Wanted: route.Wanted(stops), Worst: string(worst), Counts: map[string]int{}}
	for verdict, n := range counts {
		row.Counts[string(verdict)] = n
	}
	return row
}

// lastWork is the latest time that any record of the build carries.
func lastWork(b *measure.Build) time.Time {
	var last time.Time
	see := func(text string) {
		if at, err := time.Parse(time.RFC3339Nano, text); err == nil && at.After(last) {
			last = at.UTC()
		}
	}
	for _, r := range b.Readings {
		see(r.At)
	}
	for _, r := range b.Strikes {
		see(r.At)
	}
	for _, r := range b.Skips {
		see(r.At)
	}
	for _, r := range b.Heads {
		see(r.At)
	}
	return last
}

func listing(row store.Row) Listing {
	l := Listing{ID: row.ID, Title: row.Title, LastWork: row.LastWork, Readings: row.Readings, Wanted: row.Wanted,
		Worst: checks.Verdict(row.Worst), Counts: map[checks.Verdict]int{}, Aside: row.Aside, Notes: NotesOf(row.Report), Damaged: row.Damaged}
	for verdict, n := range row.Counts {
		l.Counts[checks.Verdict(verdict)] = n
	}
	return l
}
