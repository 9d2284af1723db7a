package placetest

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"yokebook/sync/place"
)

// Fixture is one empty place for one test.
type Fixture struct {
	Place place.Place
	// Dir is the folder that the place keeps its files in, to put things there behind its back; empty for
	// a place that keeps them elsewhere, which can't hold links.
	Dir string
	// Plant puts a file there behind its back, under any name; nil: into Dir.
	Plant func(name string, data []byte) error
}

// two is a name as this program gives it.
const two = "019ab3f0-0000-7000-8000-000000000001.019ab3ee-0000-7000-8000-00000000000a.json"

// Run runs the suite. open makes a new empty place for each test.
func Run(t *testing.T, open func(t *testing.T) Fixture) {
	for _, c := range []struct {
		name string
		test func(*testing.T, Fixture)
	}{
		{"an empty place lists nothing", empty},
		{"what was put is read back and listed", roundTrip},
		{"names that copies have", names},
		{"a file that is replaced changes its size or stamp", replaced},
		{"what is no build is not listed", skipped},
		{"one folder deep is seen, two are not", folders},
		{"a missing file says so", missing},
		{"names that leave the place are refused", outside},
		{"links are not followed", links},
		{"a file that is too large is not taken", large},
		{"work that is called off changes nothing", cancelled},
		{"a failure at any call leaves the old file or the new one", everyCall},
	} {
		t.Run(c.name, func(t *testing.T) { c.test(t, open(t)) })
	}
}

func empty(t *testing.T, f Fixture) {
	if got := list(t, f.Place); len(got) != 0 {
		t.Errorf("listed %v", got)
	}
}

func roundTrip(t *testing.T, f Fixture) {
	data := []byte("{\"title\":\"invented: ünïcode & <signs>\"}\n")
	replace(t, f.Place, two, data)
	if got := get(t, f.Place, two); !bytes.Equal(got, data) {
		t.Errorf("read back %q", got)
	}
	l := list(t, f.Place)
	if len(l) != 1 || l[0].Name != two || l[0].Size != int64(len(data)) || l[0].Stamp == "" {
		t.Errorf("listed %+v; want one file with its size and a stamp", l)
	}
	if err := f.Place.Delete(context.Background(), two); err != nil {
		t.Fatal(err)
	}
	if l := list(t, f.Place); len(l) != 0 {
		t.Errorf("after deleting it, listed %+v", l)
	}
}

// copies are names of the forms that file-sync programs, browsers and people give to copies.
var copies = []string{
	"019ab3f0 (1).json",
	"019ab3f0 (someone's conflicted copy 2026-03-02).json",
	"019ab3f0 (conflicted copy 2026-03-02 101500).json",
	"019ab3f0-SHEDPC.json",
	"019ab3f0.Conflict.json",
	"019ab3f0.json_conflict-20260302-101500",
	"019ab3f0.sync-conflict-20260302-101500-ABCDEFG.json",
	"50% of #7 & more.json",
	"grün+weiß.json",
	"Copy of 019AB3F0.JSON",
}

func names(t *testing.T, f Fixture) {
	want := slices.Clone(copies)
	slices.Sort(want)
	for _, name := range want {
		plant(t, f, name, []byte(name))
	}
	var got []string
	for _, file := range list(t, f.Place) {
		got = append(got, file.Name)
		if data := get(t, f.Place, file.Name); string(data) != file.Name {
			t.Errorf("%s: read %q", file.Name, data)
		}
	}
	if !slices.Equal(got, want) {
		t.Errorf("listed %q\nwant %q", got, want)
	}
}

func replaced(t *testing.T, f Fixture) {
	replace(t, f.Place, two, []byte(`{"a":1}`))
	before := list(t, f.Place)
	replace(t, f.Place, two, []byte(`{"a":1,"b":2}`))
	after := list(t, f.Place)
	if len(before) != 1 || len(after) != 1 || before[0].Size == after[0].Size && before[0].Stamp == after[0].Stamp {
		t.Errorf("listed %+v, then %+v", before, after)
	}
	if got := get(t, f.Place, two); string(got) != `{"a":1,"b":2}` {
		t.Errorf("read %q", got)
	}
}

func skipped(t *testing.T, f Fixture) {
	plant(t, f, "build.json", []byte("{}"))
	for _, name := range []string{
		place.TempName(two), ".hidden.json", "~build.json", "build.json.tmp", "build.json.part", "build.json.crdownload",
		".syncthing.build.json.tmp", "photo.jpg", ".stversions/build.json", "~old/build.json",
	} {
		plant(t, f, name, []byte("{}"))
	}
	plant(t, f, "empty.json", nil)
	if l := list(t, f.Place); len(l) != 1 || l[0].Name != "build.json" {
		t.Errorf("listed %+v", l)
	}
}

func folders(t *testing.T, f Fixture) {
	plant(t, f, "from the phone/build (1).json", []byte("1"))
	plant(t, f, "from the phone/older/build.json", []byte("2"))
	l := list(t, f.Place)
	if len(l) != 1 || l[0].Name != "from the phone/build (1).json" {
		t.Fatalf("listed %+v", l)
	}
	if got := get(t, f.Place, l[0].Name); string(got) != "1" {
		t.Errorf("read %q", got)
	}
}

func missing(t *testing.T, f Fixture) {
	ctx := context.Background()
	if _, err := f.Place.Get(ctx, two); !errors.Is(err, place.ErrNone) {
		t.Errorf("get: %v; want ErrNone", err)
	}
	if err := f.Place.Move(ctx, place.TempName(two), two); err == nil {
		t.Error("moved what is not there")
	}
	if err := f.Place.Delete(ctx, two); err != nil {
		t.Errorf("delete: %v; want none", err)
	}
}

func outside(t *testing.T, f Fixture) {
	ctx := context.Background()
	for _, name := range []string{"", "..", "../x.json", "/x.json", "a/../x.json", "a/b/c.json", "a\x00.json", `a\x.json`, "a//x.json"} {
		_, err := f.Place.Get(ctx, name)
		if err == nil {
			t.Errorf("got %q", name)
		}
		if f.Place.Put(ctx, name, []byte("x")) == nil {
			t.Errorf("put %q", name)
		}
		if f.Place.Move(ctx, two, name) == nil {
			t.Errorf("moved to %q", name)
		}
		if f.Place.Delete(ctx, name) == nil {
			t.Errorf("deleted %q", name)
		}
	}
}

func links(t *testing.T, f Fixture) {
	if f.Dir == "" {
		t.Skip("this place keeps no files in a folder")
	}
	secret := filepath.Join(t.TempDir(), "secret.json")
	if err := os.WriteFile(secret, []byte("secret"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(secret, filepath.Join(f.Dir, place.TempName(two))); err != nil {
		t.Skipf("no links here: %v", err)
	}
	// Whatever the place says to it: what a link leads to is not written, and the file is ours.
	if err := place.Replace(context.Background(), f.Place, two, []byte("ours")); err == nil {
		if got := get(t, f.Place, two); string(got) != "ours" {
			t.Errorf("read %q", got)
		}
	}
	if _, served := f.Place.(*place.WebDAV); served {
		return // what other people's servers do with links is theirs to answer for
	}
	if got, err := os.ReadFile(secret); err != nil || string(got) != "secret" {
		t.Errorf("wrote through a link: %q, %v", got, err)
	}
	if err := os.Symlink(secret, filepath.Join(f.Dir, "link.json")); err != nil {
		t.Fatal(err)
	}
	if _, err := f.Place.Get(context.Background(), "link.json"); err == nil {
		t.Error("read through a link")
	}
	if l := list(t, f.Place); len(l) != 1 {
		t.Errorf("listed %+v", l)
	}
}

func large(t *testing.T, f Fixture) {
	plant(t, f, "large.json", bytes.Repeat([]byte("x"), place.MaxFile+1))
	if _, err := f.Place.Get(context.Background(), "large.json"); !errors.Is(err, place.ErrLarge) {
		t.Errorf("get: %v; want ErrLarge", err)
	}
	most := bytes.Repeat([]byte("y"), place.MaxFile)
	replace(t, f.Place, two, most)
	if err := place.Replace(context.Background(), f.Place, two, append(most, 'y')); !errors.Is(err, place.ErrLarge) {
		t.Errorf("replace: %v; want ErrLarge", err)
	}
}

func cancelled(t *testing.T, f Fixture) {
	replace(t, f.Place, two, []byte("old"))
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if err := place.Replace(ctx, f.Place, two, []byte("new")); !errors.Is(err, context.Canceled) {
		t.Errorf("replace: %v; want that it was called off", err)
	}
	if _, err := f.Place.List(ctx); !errors.Is(err, context.Canceled) {
		t.Errorf("list: %v; want that it was called off", err)
	}
	if got := get(t, f.Place, two); string(got) != "old" {
		t.Errorf("read %q", got)
	}
}

// everyCall replaces a file with each call failing in turn, in each way. The file is old or new, never
// a mixture; an error that is not told means new; and the next try works.
func everyCall(t *testing.T, f Fixture) {
	older := []byte(`{"old":"` + strings.Repeat("o", 3000) + `"}`)
	newer := []byte(`{"new":"` + strings.Repeat("n", 5000) + `"}`)
	sure := &Failing{Place: f.Place}
	replace(t, sure, two, newer)
	for _, mode := range Modes {
		for at := 1; at <= sure.Calls; at++ {
			what := fmt.Sprintf("call %d, mode %d", at, mode)
			replace(t, f.Place, two, older)
			err := place.Replace(context.Background(), &Failing{Place: f.Place, At: at, Mode: mode}, two, newer)
			got := get(t, f.Place, two)
			switch {
			case !bytes.Equal(got, older) && !bytes.Equal(got, newer):
				t.Errorf("%s: %v; the file holds %d bytes of neither", what, err, len(got))
			case err == nil && !bytes.Equal(got, newer):
				t.Errorf("%s: no error, and the file is the old one", what)
			}
			if l := list(t, f.Place); len(l) != 1 {
				t.Errorf("%s: listed %+v", what, l)
			}
		}
	}
	if sure.Calls != 4 {
		t.Errorf("a replacement took %d calls; want put, get, move, get", sure.Calls)
	}
}

func list(t *testing.T, p place.Place) []place.File {
	t.Helper()
	l, err := p.List(context.Background())
	if err != nil {
		t.Fatalf("list: %v", err)
	}
	return l.Files
}

func get(t *testing.T, p place.Place, name string) []byte {
	t.Helper()
	data, err := p.Get(context.Background(), name)
	if err != nil {
		t.Fatalf("get %s: %v", name, err)
	}
	return data
}

func replace(t *testing.T, p place.Place, name string, data []byte) {
	t.Helper()
	if err := place.Replace(context.Background(), p, name, data); err != nil {
		t.Fatalf("replace %s: %v", name, err)
	}
}

// plant puts a file there behind the back of the place.
func plant(t *testing.T, f Fixture, name string, data []byte) {
	t.Helper()
	if f.Plant != nil {
		if err := f.Plant(name, data); err != nil {
			t.Fatalf("plant %s: %v", name, err)
		}
		return
	}
	path := filepath.Join(f.Dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, data, 0o666); err != nil {
		t.Fatal(err)
	}
}
