package logbook

import (
	"os"
	"path/filepath"
	"reflect"
	"testing"

	"yokebook/measure"
)

// somewhere fills every member of a place.
func somewhere(typed string) Place {
	return Place{Build: "019ab3f0-0000-7000-8000-000000000001", Open: true, Point: "gearbox.slope", State: "ride/kerb", Typed: typed,
		Stands: "ride/kerb", Setup: 2, Height: "612", HeightAsked: true, HeightTyped: "61",
		Corrects: "019ab3f0-0000-7000-8000-000000000002", Right: "2.", Reverses: "finder",
		First: "019ab3f0-0000-7000-8000-000000000003",
		Units: map[string]string{"length": "in"}, Tools: map[string]string{"angle": "finder"},
		Laid: map[string]Laying{"finder": {"along.fore", 2}}, Warned: []string{"caution.under|2|ride/kerb"}}
}

func TestAPlaceIsTheSameAfterReopening(t *testing.T) {
	dir := t.TempDir()
	s := openShelf(t, dir, newWorld())
	if got := s.Place(); !reflect.DeepEqual(got, Place{}) {
		t.Errorf("a new folder has the place %+v", got)
	}
	for _, typed := range []string{"1", "17", "17"} {
		if err := s.SavePlace(somewhere(typed)); err != nil {
			t.Fatal(err)
		}
	}
	if got := openShelf(t, dir, newWorld()).Place(); !reflect.DeepEqual(got, somewhere("17")) {
		t.Errorf("place %+v", got)
	}
}

// A place that is cut anywhere is none; so is one of another format. The next save mends it.
func TestADamagedPlaceIsNone(t *testing.T) {
	s := openShelf(t, t.TempDir(), newWorld())
	if err := s.SavePlace(somewhere("17")); err != nil {
		t.Fatal(err)
	}
	whole, err := os.ReadFile(s.placePath())
	if err != nil {
		t.Fatal(err)
	}
	damaged := [][]byte{[]byte(`{"format":"yokebook-place/2","place":{"build":"x"}}`)}
	for n := range whole {
		damaged = append(damaged, whole[:n])
	}
	for _, data := range damaged {
		if err := os.WriteFile(s.placePath(), data, 0o644); err != nil {
			t.Fatal(err)
		}
		if got := s.Place(); !reflect.DeepEqual(got, Place{}) {
			t.Fatalf("%d bytes are the place %+v", len(data), got)
		}
	}
	if err := s.SavePlace(somewhere("18")); err != nil {
		t.Fatal(err)
	}
	if got := s.Place(); got.Typed != "18" {
		t.Errorf("typed %q", got.Typed)
	}
}

// A program that is killed between the two steps of a save leaves the earlier place.
func TestAHalfSavedPlaceLeavesTheEarlierOne(t *testing.T) {
	s := openShelf(t, t.TempDir(), newWorld())
	if err := s.SavePlace(somewhere("17")); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(s.placePath()+".tmp", []byte(`{"format":"yoke`), 0o644); err != nil {
		t.Fatal(err)
	}
	if got := s.Place(); got.Typed != "17" {
		t.Errorf("typed %q", got.Typed)
	}
}

func TestAPlaceThatCannotBeSavedIsSaid(t *testing.T) {
	s := openShelf(t, t.TempDir(), newWorld())
	if err := os.Mkdir(filepath.Join(s.store.Dir(), "place.json.tmp"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := s.SavePlace(Place{Build: measure.ID("x")}); err == nil {
		t.Error("nothing is said")
	}
}
