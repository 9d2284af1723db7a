package screen

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"image"
	"image/color"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// patience is how long the real program may take for one step on a busy machine.
const patience = 60 * time.Second

// glass is a real window: the built program on a display of its own, tapped by synthetic presses.
type glass struct {
	t       *testing.T
	bin     string
	home    string
	display string
	memory  string // what the display shows, as a file
	run     *exec.Cmd
	log     bytes.Buffer
	wide    int
	high    int
}

// need skips without a tool on a desk, and fails without it in continuous integration.
func need(t *testing.T, tools ...string) {
	t.Helper()
	for _, tool := range tools {
		if _, err := exec.LookPath(tool); err == nil {
			continue
		}
		if os.Getenv("CI") != "" {
			t.Fatalf("%s is not installed; the real window can't be tested", tool)
		}
		t.Skipf("%s is not installed; the real window is not tested here", tool)
	}
}

// newGlass builds the program, with build tags if any, and starts a display of a size in pixels.
func newGlass(t *testing.T, wide, high int, tags string) *glass {
	t.Helper()
	dir := t.TempDir()
	g := &glass{t: t, bin: filepath.Join(dir, "yokebook"), home: filepath.Join(dir, "home"), memory: filepath.Join(dir, "Xvfb_screen0"),
		wide: wide, high: high}
	build := exec.Command("go", "build", "-tags", tags, "-o", g.bin, "yokebook/app")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("build: %v\n%s", err, out)
	}
	read, write, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	x := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", fmt.Sprintf("%dx%dx24", wide, high), "-fbdir", dir, "-nolisten", "tcp", "-noreset")
	x.ExtraFiles = []*os.File{write}
	if err := x.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		x.Process.Signal(syscall.SIGTERM)
		x.Wait()
	})
	write.Close()
	var number int
	if _, err := fmt.Fscan(read, &number); err != nil {
		t.Fatalf("Xvfb gave no display: %v", err)
	}
	g.display = fmt.Sprintf(":%d", number)
	return g
}

// start starts the program and gives its window the whole display.
func (g *glass) start() {
	g.t.Helper()
	g.run = exec.Command(g.bin)
	g.run.Env = append(os.Environ(), "DISPLAY="+g.display, "FYNE_SCALE=1", "FYNE_THEME=light", "LANG=en_GB.UTF-8",
		"LIBGL_ALWAYS_SOFTWARE=1", "YOKEBOOK_HOME="+g.home, "WAYLAND_DISPLAY=")
	g.run.Stdout, g.run.Stderr = &g.log, &g.log
	if err := g.run.Start(); err != nil {
		g.t.Fatal(err)
	}
	g.until("a window", func() bool { return g.resize(g.wide, g.high) == nil })
}

// resize gives the window a place, a size and the keyboard. It errs while there is no window.
func (g *glass) resize(wide, high int) error {
	out, err := g.xdotool("search", "--onlyvisible", "--name", ".*")
	all := strings.Fields(out) // the last is the youngest, the first the root
	if err != nil || len(all) < 2 {
		return fmt.Errorf("no window: %v %s", err, out)
	}
	id := all[len(all)-1]
	_, err = g.xdotool("windowmove", id, "0", "0", "windowsize", id, fmt.Sprint(wide), fmt.Sprint(high), "windowfocus", id,
		"mousemove", fmt.Sprint(g.wide-1), fmt.Sprint(g.high-1))
	return err
}

// kill ends the program at once, as a phone does.
func (g *glass) kill() {
	g.run.Process.Kill()
	g.run.Wait()
}

func (g *glass) xdotool(args ...string) (string, error) {
	cmd := exec.Command("xdotool", args...)
	cmd.Env = append(os.Environ(), "DISPLAY="+g.display)
	out, err := cmd.CombinedOutput()
	return string(out), err
}

// until waits for something, up to a deadline.
func (g *glass) until(what string, ok func() bool) {
	g.t.Helper()
	tick := time.NewTicker(10 * time.Millisecond)
	defer tick.Stop()
	for end := time.Now().Add(patience); !ok(); {
		if (<-tick.C).After(end) {
			g.t.Fatalf("waited %v for %s; the program says:\n%s", patience, what, g.log.String())
		}
	}
}

// press presses the glass, slowly if asked to.
func (g *glass) press(x, y float32, slow bool) {
	g.t.Helper()
	hold := "0.02"
	if slow {
		hold = "0.6"
	}
	out, err := g.xdotool("mousemove", fmt.Sprint(int(x)), fmt.Sprint(int(y)), "mousedown", "1", "sleep", hold, "mouseup", "1",
		"mousemove", fmt.Sprint(g.wide-1), fmt.Sprint(g.high-1)) // out of the picture
	if err != nil {
		g.t.Fatalf("xdotool: %v\n%s", err, out)
	}
}

// shows reads what is on the display. The file is an X window dump (XWDFile.h, version 7): a header
// of big-endian words, a table of colours of 12 bytes each, and the rows of pixels.
func (g *glass) shows() (*image.RGBA, error) {
	data, err := os.ReadFile(g.memory)
	if err != nil {
		return nil, err
	}
	word := func(i int) int { return int(binary.BigEndian.Uint32(data[4*i:])) }
	if len(data) < 100 || word(1) != 7 {
		return nil, errors.New("not an X window dump")
	}
	wide, high, stride := word(4), word(5), word(12)
	pixels := data[word(0)+12*word(19):]
	if len(pixels) < high*stride {
		return nil, errors.New("a cut X window dump")
	}
	img := image.NewRGBA(image.Rect(0, 0, wide, high))
	for y := range high {
		for x := range wide {
			p := pixels[y*stride+4*x:]
			img.SetRGBA(x, y, color.RGBA{R: p[2], G: p[1], B: p[0], A: 255})
		}
	}
	return img, nil
}

// stored is how many bytes of builds are on the disk.
func (g *glass) stored() int64 {
	var sum int64
	filepath.WalkDir(filepath.Join(g.home, "builds"), func(path string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return nil
		}
		if info, err := e.Info(); err == nil {
			sum += info.Size()
		}
		return nil
	})
	return sum
}

// kept lists the readings of the one build in the program's folder, in the order of their ids.
func (g *glass) kept() []string {
	g.t.Helper()
	shelf, err := logbook.OpenShelf(g.home, logbook.System())
	if err != nil {
		g.t.Fatal(err)
	}
	defer shelf.Close()
	list, err := shelf.List()
	if err != nil || len(list) != 1 {
		g.t.Fatalf("builds in the folder: %v, %v", list, err)
	}
	book, err := shelf.Open(list[0].ID)
	if err != nil {
		g.t.Fatal(err)
	}
	defer book.Close()
	if title := book.Build().Title; title != "Invented estate" {
		g.t.Errorf("title is %q", title)
	}
	var out []string
	for _, r := range book.Build().Readings {
		line := fmt.Sprintf("%s %s %s %s", r.Point, r.Value.Token(), r.Unit, r.State())
		if r.Ride != measure.Bench {
			line += fmt.Sprintf(" setup %d", r.Setup)
		}
		out = append(out, line)
	}
	return out
}
