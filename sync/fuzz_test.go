package sync

import (
	"bytes"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/sync/place"
)

// Whatever lies in a place under whatever name: a pass ends without an error of its own, leaves what
// others wrote as it is, loses nothing of this device's, writes only files that are whole, and a second
// pass finds nothing more to do.
func FuzzPassOverHostileFiles(f *testing.F) {
	var seeds [][]byte
	for _, pattern := range []string{"bad/*.json", "builds/*.json", "merge/*/*.json"} {
		paths, err := filepath.Glob(filepath.Join("..", "testdata", filepath.FromSlash(pattern)))
		if err != nil || len(paths) == 0 {
			f.Fatalf("no seeds in %s: %v", pattern, err)
		}
		for _, path := range paths {
			data, err := os.ReadFile(path)
			if err != nil {
				f.Fatal(err)
			}
			if len(data) < 64<<10 {
				seeds = append(seeds, data)
			}
		}
	}
	d := newDrawer()
	d.change(buildID(1), func(b *measure.Build) { b.Readings = append(b.Readings, slope(id(1, 1), deviceID(2), "2.4", start)) })
	mine := bytesOf(f, d.builds[buildID(1)])
	for i, data := range seeds {
		f.Add(data, seeds[(i+1)%len(seeds)], "x (1).json")
		f.Add(data, mine, place.FileName(buildID(1), deviceID(1)))
	}
	f.Fuzz(func(t *testing.T, a, b []byte, name string) {
		s, dev, _ := pair(&testing.T{})
		dev.t = t
		dev.keep(1, 1, "2.4")
		s.drop("one.json", a)
		s.drop(name, b)
		before := maps.Clone(s.files)
		r, err := dev.pass()
		if err != nil {
			t.Fatal(err)
		}
		for _, n := range slices.Sorted(maps.Keys(s.files)) {
			build, by, ours := place.Owner(strings.ToLower(n)) // a place may show our own name in capitals
			switch {
			case ours && by == dev.id:
				x, seal, err := document.Read(s.files[n].data)
				if _, was := before[n]; was && bytes.Equal(s.files[n].data, before[n].data) {
					continue
				}
				if err != nil || seal != document.Whole || x.ID != build {
					t.Fatalf("wrote %s: %v", n, err)
				}
			case !bytes.Equal(s.files[n].data, before[n].data):
				t.Fatalf("touched %s", n)
			}
		}
		for n := range before {
			if _, there := s.files[n]; !there {
				t.Fatalf("took %s away", n)
			}
		}
		if !hashes(dev.drawer.builds[buildID(1)])[document.Hash(slope(id(1, 1), dev.id, "2.4", dev.now))] {
			t.Fatal("our own reading is lost")
		}
		for _, x := range r.Builds {
			if x.Synced && !holdsAll(t, s, dev.drawer.builds[x.ID]) {
				t.Fatalf("%s is called synced and is not", x.ID)
			}
		}
		if r, err = dev.pass(); err != nil || r.Written != 0 {
			t.Fatalf("a second pass wrote %d files, %v", r.Written, err)
		}
	})
}
