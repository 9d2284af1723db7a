package logbook

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store"
)

// newFile makes a build file with one reading.
func newFile(t *testing.T) (path string) {
	t.Helper()
	path = filepath.Join(t.TempDir(), "build.json")
	b, err := NewFile(path, "invented: file test", measure.NewLayout(), newWorld().sources(deviceA))
	if err != nil {
		t.Fatal(err)
	}
	keep(t, b, slope(t, "gearbox.slope", "2.40"))
	sameBytes(t, "the file", readFile(t, path), bytesOf(t, b))
	closeBook(t, b)
	return path
}

// openAs opens a build file as another program would: with its own ids.
func openAs(t *testing.T, path string, first int, device measure.ID) *Book {
	t.Helper()
	w := newWorld()
	w.n = first
	b, err := OpenFile(path, w.sources(device))
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func readFile(t *testing.T, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func TestFileBookSavesEachRecordAndReopens(t *testing.T) {
	path := newFile(t)
	b := openAs(t, path, 1000, deviceA)
	if b.Seal() != document.Whole {
		t.Errorf("seal %v; want Whole", b.Seal())
	}
	c := keep(t, b, slope(t, "shaft.slope", "17"))
	if got := said(c.Findings); got != "mean/shaft.slope out 17; " {
		t.Errorf("changed %q", got)
	}
	again := openAs(t, path, 2000, deviceA)
	sameBytes(t, "reopened", bytesOf(t, again), bytesOf(t, b))
	entries, err := os.ReadDir(filepath.Dir(path))
	if err != nil || len(entries) != 1 {
		t.Errorf("beside the file: %v, %v; want nothing", entries, err)
	}
}

func TestNewFileIsWrittenWithItsFirstReading(t *testing.T) {
	path := filepath.Join(t.TempDir(), "build.json")
	b, err := NewFile(path, "invented", measure.NewLayout(), newWorld().sources(deviceA))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := b.Keep(slope(t, "gearbox.slope", "94")); err == nil {
		t.Fatal("an impossible slope was taken")
	}
	if _, err := os.Stat(path); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("a refused reading left a file: %v", err)
	}
	if err := b.Save(); err != nil {
		t.Fatal(err)
	}
	if _, err := NewFile(path, "invented", measure.NewLayout(), newWorld().sources(deviceA)); err == nil {
		t.Error("a new build was started over a file that is there")
	}
}

func TestFileThatCantBeWrittenIsSaidSo(t *testing.T) {
	path := filepath.Join(t.TempDir(), "no such folder", "build.json")
	b, err := NewFile(path, "invented", measure.NewLayout(), newWorld().sources(deviceA))
	if err != nil {
		t.Fatal(err)
	}
	_, err = b.Keep(slope(t, "gearbox.slope", "2"))
	if line := fmt.Sprint(err); !errors.Is(err, store.ErrWrite) || strings.Contains(line, "\n") || strings.Count(line, "no such folder") != 1 {
		t.Errorf("%q; want ErrWrite in one line that names the file once", line)
	}
	if len(b.Build().Readings) != 0 {
		t.Error("a reading that is not on the disk is shown")
	}
}

func TestUnsealedFileIsSaidAndKeepsItsUnknownMembers(t *testing.T) {
	path := filepath.Join(t.TempDir(), "by hand.json")
	const file = `{"format":"yokebook-build/1","id":"019ab3f0-0000-7000-8000-0000000000aa","title":"invented: by hand",
"layout":{"shafts":1,"slip":"shaft","axle":"leaf","front_joint":"single","rear_joint":"single"},
"instruments":[],"readings":[],"strikes":[],"later":9007199254740993}`
	if err := os.WriteFile(path, []byte(file), 0o644); err != nil {
		t.Fatal(err)
	}
	b := openAs(t, path, 1000, deviceA)
	if b.Seal() != document.Unsealed {
		t.Errorf("seal %v; want Unsealed", b.Seal())
	}
	keep(t, b, slope(t, "gearbox.slope", "2"))
	if b.Seal() != document.Whole || !strings.Contains(string(readFile(t, path)), `"later":9007199254740993`) {
		t.Errorf("seal %v, file %s; want Whole with the unknown member", b.Seal(), readFile(t, path))
	}
}

func TestWhatAnotherProgramWroteIsMergedNotOverwritten(t *testing.T) {
	path := newFile(t)
	a, b := openAs(t, path, 1000, deviceA), openAs(t, path, 2000, deviceB)
	keep(t, a, slope(t, "shaft.slope", "17"))
	keep(t, b, slope(t, "pinion.slope", "3"))
	if len(b.Build().Readings) != 3 {
		t.Errorf("%d readings; want all three", len(b.Build().Readings))
	}
	sameBytes(t, "the file", readFile(t, path), bytesOf(t, b))

	if err := os.WriteFile(path, []byte("{"), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := b.Keep(slope(t, "pinion.slope", "3")); err == nil || strings.Contains(err.Error(), "\n") {
		t.Errorf("saving over a file that was damaged meanwhile: %v; want one line", err)
	}
	if got := string(readFile(t, path)); got != "{" {
		t.Errorf("the file was touched: %s", got)
	}
}

func TestManyProgramsOnOneFileLoseNothing(t *testing.T) {
	const programs, each = 4, 10
	path := newFile(t)
	var work sync.WaitGroup
	wrong := make(chan error, programs*each)
	for p := range programs {
		work.Add(1)
		go func() {
			defer work.Done()
			for i := range each {
				w := newWorld()
				w.n = 1000 * (1 + p*each + i)
				b, err := OpenFile(path, w.sources(deviceA))
				if err == nil {
					_, err = b.Keep(slope(t, "gearbox.slope", fmt.Sprint(i)))
				}
				wrong <- err
			}
		}()
	}
	work.Wait()
	close(wrong)
	for err := range wrong {
		if err != nil {
			t.Fatal(err)
		}
	}
	if got := len(openAs(t, path, 1, deviceA).Build().Readings); got != 1+programs*each {
		t.Errorf("%d readings; want %d", got, 1+programs*each)
	}
}

func TestLinkIsFollowedAndStaysALink(t *testing.T) {
	path := newFile(t)
	link := filepath.Join(t.TempDir(), "link.json")
	if err := os.Symlink(path, link); err != nil {
		t.Fatal(err)
	}
	b := openAs(t, link, 1000, deviceA)
	keep(t, b, slope(t, "shaft.slope", "17"))
	if info, err := os.Lstat(link); err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Errorf("the link was replaced by a file: %v", err)
	}
	sameBytes(t, "the file behind the link", readFile(t, path), bytesOf(t, b))
	if _, err := NewFile(link, "invented", measure.NewLayout(), newWorld().sources(deviceA)); err == nil {
		t.Error("a new build was started over a link")
	}
}

func TestWhatIsNoPlainFileIsRefused(t *testing.T) {
	dir := t.TempDir()
	loop := filepath.Join(dir, "loop.json")
	if err := os.Symlink(loop, loop); err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct {
		name, path string
		want       error // nil: any
	}{
		{"a folder", dir, ErrNotPlain},
		{"a device without end", "/dev/zero", ErrNotPlain},
		{"a link to itself", loop, nil},
		{"missing", filepath.Join(dir, "no.json"), os.ErrNotExist},
	} {
		_, err := OpenFile(row.path, newWorld().sources(deviceA))
		if err == nil || row.want != nil && !errors.Is(err, row.want) {
			t.Errorf("%s: %v; want %v", row.name, err, row.want)
		}
		if line := fmt.Sprint(err); strings.Contains(line, "\n") || strings.Count(line, row.path) != 1 {
			t.Errorf("%s: %q; want one line that names it once", row.name, line)
		}
	}
}
