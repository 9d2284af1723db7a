// Package shelve is the state of the list of builds: all of them, newest work first, or those that
// have the words that one searches for. It knows no toolkit.
package shelve

import (
	"reflect"
	"slices"
	"strings"

	"yokebook/app/logbook"
)

// Model is the list of builds.
type Model struct {
	all    []logbook.Listing
	lower  []string // the title of each, in small letters
	query  string
	shown  []int // places in all
	loaded bool
}

// Loaded reports that Set was called.
func (m *Model) Loaded() bool { return m.loaded }

// Set gives the builds anew. What one searches for stays.
func (m *Model) Set(list []logbook.Listing) {
	m.all = slices.Clone(list)
	slices.SortStableFunc(m.all, func(a, b logbook.Listing) int {
		if c := b.LastWork.Compare(a.LastWork); c != 0 {
			return c
		}
		return strings.Compare(string(b.ID), string(a.ID))
	})
	m.lower = make([]string, len(m.all))
	for i, l := range m.all {
		m.lower[i] = strings.ToLower(l.Title)
	}
	m.loaded = true
	m.find()
}

// Find shows the builds whose titles have every word of query, in any order and in small or capital
// letters. No word shows all.
func (m *Model) Find(query string) {
	if m.query != query {
		m.query = query
		m.find()
	}
}

func (m *Model) find() {
	words := strings.Fields(strings.ToLower(m.query))
	m.shown = m.shown[:0]
	for i, title := range m.lower {
		if !slices.ContainsFunc(words, func(w string) bool { return !strings.Contains(title, w) }) {
			m.shown = append(m.shown, i)
		}
	}
}

// Count is how many builds are shown, All how many there are.
func (m *Model) Count() int { return len(m.shown) }

// All is how many builds there are.
func (m *Model) All() int { return len(m.all) }

// At is a build that is shown, by its place; an empty one beyond the last.
func (m *Model) At(i int) logbook.Listing {
	if i < 0 || i >= len(m.shown) {
		return logbook.Listing{}
	}
	return m.all[m.shown[i]]
}

// Shown are so many builds from a place on, as a list shows them.
func (m *Model) Shown(from, n int) []logbook.Listing {
	var out []logbook.Listing
	for i := from; i < min(from+n, len(m.shown)); i++ {
		out = append(out, m.At(i))
	}
	return out
}

// Same reports that from a place on the builds are those of a list, with nothing new about them.
func (m *Model) Same(from int, list []logbook.Listing) bool {
	return reflect.DeepEqual(m.Shown(from, len(list)), list)
}

// Pending reports that builds have changed since they were looked at.
func (m *Model) Pending() bool {
	return slices.ContainsFunc(m.all, func(l logbook.Listing) bool { return l.Pending })
}
