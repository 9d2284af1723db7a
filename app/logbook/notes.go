package logbook

import (
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/store"
)

// Note is one line about how a build is kept, as a message of app/words.
type Note = checks.Message

// The keys of notes and their arguments. A place is a file below the store's folder.
const (
	// NoteUnfinished: place. The last entry was cut off, as when the program ends while it writes.
	NoteUnfinished = "store.unfinished"
	// NoteRecovered: records from the file, of these behind a damaged place, records from snapshots, place.
	NoteRecovered = "store.recovered"
	// NoteRestored: records from snapshots, name of the newest. The file itself was gone.
	NoteRestored = "store.restored"
	// NoteLost: how many records, place, the first of them.
	NoteLost = "store.lost"
	// NoteNameless: how many damaged places, place.
	NoteNameless = "store.nameless"
	// NoteSnapshot: name. A snapshot is damaged; the build is not.
	NoteSnapshot = "store.snapshot"
	// NoteUnknown: how many records. They were written by a newer version and are kept.
	NoteUnknown = "store.unknown"
	// NoteUnsecured: why. The second copy of the build could not be written.
	NoteUnsecured = "store.unsecured"
)

// NoteKeys lists every key, so that a test can demand a sentence for each.
var NoteKeys = []string{NoteUnfinished, NoteRecovered, NoteRestored, NoteLost, NoteNameless, NoteSnapshot, NoteUnknown, NoteUnsecured}

// NotesOf says a report: what was recovered from where, and what could not be. None when the build
// is whole.
func NotesOf(r store.Report) []Note {
	var out []Note
	say := func(key string, args ...any) { out = append(out, Note{Key: key, Args: args}) }
	place := r.KeptAside
	if place == "" {
		place = "builds/" + string(r.Build) + ".db"
	}
	switch {
	case r.Has(store.Missing):
		say(NoteRestored, r.Restored, r.Snapshot)
	case r.Has(store.Damaged, store.Zeros, store.Other, store.Short), r.Restored > 0:
		say(NoteRecovered, r.InFile, r.Behind, r.Restored, place)
	case r.Has(store.Unfinished):
		say(NoteUnfinished, place)
	}
	if len(r.Lost) > 0 {
		say(NoteLost, len(r.Lost), place, r.Lost[0])
	}
	if r.Nameless > 0 {
		say(NoteNameless, r.Nameless, place)
	}
	for _, f := range r.Faults {
		if f.Kind == store.Snapshot {
			say(NoteSnapshot, f.File)
		}
	}
	if len(r.Unknown) > 0 {
		say(NoteUnknown, len(r.Unknown))
	}
	return out
}

// Notes says what was recovered when the book was opened, and whether its second copy is behind. None
// when there is nothing to tell; a build file has none.
func (b *Book) Notes() []Note {
	out := NotesOf(b.found)
	if k, ok := b.keeper.(*shelved); ok {
		if k.await(); k.unsecured != nil {
			out = append(out, Note{Key: NoteUnsecured, Args: []any{k.unsecured.Error()}})
		}
	}
	return out
}

// Secure writes the second copy of a build on the shelf where records were kept since the last one,
// and returns when it is on the disk. It takes a few milliseconds: call it when the person has seen
// that the reading was kept, not before. Every eighth record it is begun without it, and meanwhile
// nobody waits; Close always writes it. It errs with store.ErrWrite; the build itself is kept. A build
// file has no second copy.
func (b *Book) Secure() error {
	if k, ok := b.keeper.(*shelved); ok && !b.closed {
		return k.secure()
	}
	return nil
}

// Verification says how a build of the shelf was read back.
type Verification struct {
	ID     measure.ID
	Title  string
	State  store.State
	Report store.Report // as it is now
	Notes  []Note       // what the report says; why a build can't be read stands in Damaged
	Past   []Past       // earlier repairs whose files are still kept aside
	// Held names who has the build open; it was then read as it stood.
	Held    string
	Damaged string
}

// Past is an earlier repair.
type Past struct {
	At    string
	State store.State // with what has come back since
	Notes []Note
}

// Verify reads back everything of every build on the shelf, snapshots too, and changes nothing.
func (s *Shelf) Verify() ([]Verification, error) {
	ids, err := s.store.IDs()
	if err != nil {
		return nil, err
	}
	out := make([]Verification, len(ids))
	for i, id := range ids {
		v, err := s.store.Verify(id)
		out[i] = Verification{ID: id, Title: v.Title, State: v.State(), Report: v.Now, Notes: NotesOf(v.Now), Held: v.Held}
		if err != nil {
			out[i].State, out[i].Damaged = store.IsSetAside, err.Error()
		}
		for _, r := range v.Past {
			out[i].Past = append(out[i].Past, Past{At: r.At, State: r.State(), Notes: NotesOf(r)})
		}
	}
	return out, nil
}
