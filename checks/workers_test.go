package checks_test

import (
	"os"
	"path/filepath"
	"reflect"
	"runtime"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// demoBuilds reads the builds of testdata.
func demoBuilds(t *testing.T) []*measure.Build {
	t.Helper()
	files, err := filepath.Glob("../testdata/builds/*.json")
	if err != nil || len(files) == 0 {
		t.Fatalf("no builds: %v", err)
	}
	var list []*measure.Build
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		b, _, err := document.Read(data)
		if err != nil {
			t.Fatal(err)
		}
		list = append(list, b)
	}
	return list
}

// Draws are shared out among as many workers as there are processors; what is found is the same with
// one as with more, to the last bit. Under the race detector it also tells of a formula that writes
// to anything but its own.
func TestFindingsDoNotDependOnWorkers(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	for _, b := range demoBuilds(t) {
		runtime.GOMAXPROCS(1)
		alone := checks.Run(b, nil).Findings
		runtime.GOMAXPROCS(7) // no power of two: the shares are unequal
		if shared := checks.Run(b, nil).Findings; !reflect.DeepEqual(alone, shared) {
			t.Errorf("%s: seven workers find what one does not", b.Title)
		}
	}
}
