package shelve

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
)

func builds(titles ...string) *Model {
	m := &Model{}
	var list []logbook.Listing
	for i, title := range titles {
		list = append(list, logbook.Listing{ID: measure.ID(fmt.Sprint(i)), Title: title, LastWork: time.Unix(int64(i), 0)})
	}
	m.Set(list)
	return m
}

func shown(m *Model) string {
	var out []string
	for i := range m.Count() {
		out = append(out, m.At(i).Title)
	}
	return strings.Join(out, ", ")
}

func TestNewestWorkComesFirst(t *testing.T) {
	m := builds("oldest", "middle", "newest")
	if got := shown(m); got != "newest, middle, oldest" {
		t.Errorf("shown: %s", got)
	}
	m.Set([]logbook.Listing{{ID: "a", Title: "a"}, {ID: "b", Title: "b"}}) // nothing is known of their work
	if got := shown(m); got != "b, a" {
		t.Errorf("without times: %s", got)
	}
}

func TestFindTakesEveryWordInAnyOrderAndCase(t *testing.T) {
	m := builds("Estate, inline six", "Pickup, Inline four", "ÜBERLAND wagon")
	for query, want := range map[string]string{
		"":             "ÜBERLAND wagon, Pickup, Inline four, Estate, inline six",
		"  ":           "ÜBERLAND wagon, Pickup, Inline four, Estate, inline six",
		"inline":       "Pickup, Inline four, Estate, inline six",
		"SIX est":      "Estate, inline six",
		"überl":        "ÜBERLAND wagon",
		"inline eight": "",
	} {
		if m.Find(query); shown(m) != want {
			t.Errorf("%q shows %q, want %q", query, shown(m), want)
		}
	}
	m.Find("inline")
	m.Set([]logbook.Listing{{Title: "inline eight"}, {Title: "flat four"}})
	if shown(m) != "inline eight" || m.All() != 2 {
		t.Errorf("after new builds %q of %d", shown(m), m.All())
	}
}

func TestBeyondTheLastThereIsNone(t *testing.T) {
	m := builds("one")
	if m.At(1).Title != "" || m.At(-1).Title != "" {
		t.Error("a build beyond the last")
	}
}

// A letter typed into the search of 10,000 builds looks at titles only.
func BenchmarkFindInTenThousand(b *testing.B) {
	var titles []string
	for i := range 10_000 {
		titles = append(titles, fmt.Sprintf("Invented build number %d", i))
	}
	m := builds(titles...)
	for i := 0; b.Loop(); i++ {
		m.Find([]string{"number 99", "number 9"}[i%2])
	}
}
