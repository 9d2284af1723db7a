package measure

import (
	"fmt"
	"math/rand"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// byNote is a content hash good enough for tests: the note stands for the whole content.
func byNote(r Reading) string { return "sha256:" + r.Note }

// records makes readings from "id", "id>replaced" or "id#content", with one digit each.
func records(forms ...string) []Reading {
	var all []Reading
	for _, f := range forms {
		r := Reading{ID: testID(int(f[0] - '0')), Point: "shaft.slope"}
		for rest := f[1:]; rest != ""; rest = rest[2:] {
			switch rest[0] {
			case '>':
				r.Replaces = testID(int(rest[1] - '0'))
			case '#':
				r.Note = rest[1:2]
			}
		}
		all = append(all, r)
	}
	return all
}

func TestWhichReadingsCount(t *testing.T) {
	strike := func(n int, content string) Strike {
		if content != "" {
			content = "sha256:" + content
		}
		return Strike{ID: testID(90 + n), Reading: testID(n), Content: content}
	}
	for _, tt := range []struct {
		name     string
		readings []Reading
		strikes  []Strike
		want     []Standing
	}{
		{"a plain reading counts", records("1"), nil, []Standing{Current}},
		{"a correction takes the place of a reading", records("1", "2>1"), nil, []Standing{Replaced, Current}},
		{"a correction of a correction leaves the last", records("1", "2>1", "3>2"), nil, []Standing{Replaced, Replaced, Current}},
		{"two corrections of one reading both count", records("1", "2>1", "3>1"), nil, []Standing{Replaced, Current, Current}},
		{"a correction of what is not here counts", records("2>1"), nil, []Standing{Current}},
		{"a struck reading does not", records("1", "2"), []Strike{strike(1, "")}, []Standing{Struck, Current}},
		{"striking twice is striking", records("1"), []Strike{strike(1, ""), strike(1, "")}, []Standing{Struck}},
		{"a strike of what is not here changes nothing", records("1"), []Strike{strike(2, "")}, []Standing{Current}},
		{"a struck correction still stands in the way: nothing comes back by itself", records("1", "2>1"),
			[]Strike{strike(2, "")}, []Standing{Replaced, Struck}},
		{"a struck reading stays struck when corrected", records("1", "2>1"), []Strike{strike(1, "")}, []Standing{Struck, Current}},
		{"two records of one id are both out", records("1#a", "1#b", "2"), nil, []Standing{Disputed, Disputed, Current}},
		{"striking one by content frees the other", records("1#a", "1#b"), []Strike{strike(1, "a")}, []Standing{Struck, Current}},
		{"striking by a content that neither has frees nobody", records("1#a", "1#b"), []Strike{strike(1, "c")}, []Standing{Disputed, Disputed}},
		{"striking one of three is not enough", records("1#a", "1#b", "1#c"), []Strike{strike(1, "a")}, []Standing{Struck, Disputed, Disputed}},
		{"striking the id strikes every record of it", records("1#a", "1#b"), []Strike{strike(1, "")}, []Standing{Struck, Struck}},
		{"content must match on a single record too", records("1#a"), []Strike{strike(1, "b")}, []Standing{Current}},
		{"disputed corrections replace nothing", records("1", "2#a>1", "2#b>1"), nil, []Standing{Current, Disputed, Disputed}},
		{"a correction replaces both records of an id", records("1#a", "1#b", "2>1"), []Strike{strike(1, "a")}, []Standing{Struck, Replaced, Current}},
		{"a disputed reading stays so when corrected", records("1#a", "1#b", "2>1"), nil, []Standing{Disputed, Disputed, Current}},
		{"a reading that replaces itself is a ring", records("1>1"), nil, []Standing{Disputed}},
		{"a ring of two", records("1>2", "2>1", "3"), nil, []Standing{Disputed, Disputed, Current}},
		{"a ring of three", records("1>2", "2>3", "3>1"), nil, []Standing{Disputed, Disputed, Disputed}},
		{"what leads into a ring is no part of it", records("1>2", "2>1", "3>1", "4>3"), nil, []Standing{Disputed, Disputed, Replaced, Current}},
		{"what a ring's member was made of stays out too", records("1", "2>1"), nil, []Standing{Replaced, Current}},
		{"a struck member of a ring stays struck", records("1>2", "2>1"), []Strike{strike(1, "")}, []Standing{Struck, Disputed}},
		{"a ring through disputed records is none", records("1>2", "2#a>1", "2#b>1"), nil, []Standing{Current, Disputed, Disputed}},
	} {
		b := &Build{Readings: tt.readings, Strikes: tt.strikes}
		if got := b.Standings(byNote); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}

// What counts must not depend on the order in which records arrived.
func TestOrderOfRecordsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := drawRecords(t)
		want := standingOf(b)
		seed := rapid.Int64().Draw(t, "shuffle")
		rng := rand.New(rand.NewSource(seed))
		rng.Shuffle(len(b.Readings), func(i, j int) { b.Readings[i], b.Readings[j] = b.Readings[j], b.Readings[i] })
		rng.Shuffle(len(b.Strikes), func(i, j int) { b.Strikes[i], b.Strikes[j] = b.Strikes[j], b.Strikes[i] })
		for key, s := range standingOf(b) {
			if want[key] != s {
				t.Fatalf("%s stands as %v in one order and as %v in another", key, want[key], s)
			}
		}
	})
}

func TestNothingThatIsReplacedOrStruckCounts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := drawRecords(t)
		counting := b.CurrentReadings(byNote)
		ids := map[ID]int{}
		for i, r := range counting {
			ids[r.ID]++
			if i > 0 && counting[i-1].ID > r.ID {
				t.Fatal("current readings are not sorted by id")
			}
		}
		for id, n := range ids {
			if n > 1 {
				t.Fatalf("%d records of id %s count", n, id)
			}
		}
		for _, r := range counting {
			for _, s := range b.Strikes {
				if s.Reading == r.ID && (s.Content == "" || s.Content == byNote(r)) {
					t.Fatalf("%s counts, though struck", r.ID)
				}
			}
			for _, newer := range counting {
				if newer.Replaces == r.ID {
					t.Fatalf("%s counts, though %s, which counts, replaces it", r.ID, newer.ID)
				}
			}
		}
	})
}

// drawRecords makes a tangle: few ids, so that they clash, replace each other and run in rings.
func drawRecords(t *rapid.T) *Build {
	b := &Build{}
	for i, n := 0, rapid.IntRange(0, 9).Draw(t, "readings"); i < n; i++ {
		r := Reading{ID: testID(rapid.IntRange(1, 6).Draw(t, "id")), Note: itoa(i)}
		if to := rapid.IntRange(0, 6).Draw(t, "replaces"); to > 0 {
			r.Replaces = testID(to)
		}
		b.Readings = append(b.Readings, r)
	}
	for i, n := 0, rapid.IntRange(0, 3).Draw(t, "strikes"); i < n; i++ {
		s := Strike{Reading: testID(rapid.IntRange(1, 6).Draw(t, "strikes id"))}
		if c := rapid.IntRange(0, 9).Draw(t, "content"); c < 9 {
			s.Content = "sha256:" + itoa(c)
		}
		b.Strikes = append(b.Strikes, s)
	}
	return b
}

func standingOf(b *Build) map[string]Standing {
	of := map[string]Standing{}
	for i, s := range b.Standings(byNote) {
		of[fmt.Sprintf("%s#%s", b.Readings[i].ID, b.Readings[i].Note)] = s
	}
	return of
}

// A file from elsewhere may hold one long chain of corrections; finding what counts stays linear.
func TestALongChainOfCorrectionsLeavesItsLast(t *testing.T) {
	const n = 100_000
	b := &Build{}
	for i := range n {
		r := Reading{ID: testID(i + 1)}
		if i > 0 {
			r.Replaces = testID(i)
		}
		b.Readings = append(b.Readings, r)
	}
	counting := b.CurrentReadings(byNote)
	if len(counting) != 1 || counting[0].ID != testID(n) {
		t.Errorf("%d readings count, want the last alone", len(counting))
	}
}
