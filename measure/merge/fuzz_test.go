package merge

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"yokebook/measure"
	"yokebook/measure/document"
)

// Whatever two files that the reader accepts hold: merged either way round, or with one of them again,
// they give the same bytes, which the reader accepts. Where they can't be merged they can't be merged
// the other way round either.
func FuzzBuilds(f *testing.F) {
	paths, err := filepath.Glob(filepath.Join("..", "..", "testdata", "merge", "*", "*.json"))
	if err != nil || len(paths) == 0 {
		f.Fatalf("no seeds: %v", err)
	}
	var last []byte
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(data, data)
		f.Add(data, last)
		last = data
	}
	f.Fuzz(func(t *testing.T, x, y []byte) {
		a, _, err := document.Read(x)
		if err != nil {
			return
		}
		b, _, err := document.Read(y)
		if err != nil {
			return
		}
		ab, ok := bytesOf(t, a, b)
		ba, alsoOK := bytesOf(t, b, a)
		if ok != alsoOK || !bytes.Equal(ab, ba) {
			t.Fatalf("the order of files decides: %v, %v\n%s\n%s", ok, alsoOK, ab, ba)
		}
		if !ok {
			return
		}
		all, seal, err := document.Read(ab)
		if err != nil || seal != document.Whole {
			t.Fatalf("merged, but not read: %v, seal %v\n%s", err, seal, ab)
		}
		if again, ok := bytesOf(t, all, a); !ok || !bytes.Equal(again, ab) {
			t.Fatalf("merging a file again changes it:\n%s\n%s", ab, again)
		}
	})
}

// bytesOf is the file of a union; false where there is none.
func bytesOf(t *testing.T, builds ...*measure.Build) ([]byte, bool) {
	t.Helper()
	all, _, err := Builds(builds...)
	if err != nil {
		return nil, false
	}
	data, err := document.Write(all)
	return data, err == nil
}
