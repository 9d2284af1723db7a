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

// newGlass builds the program and starts a display of the size of a phone.
func newGlass(t *testing.T) *glass {
	t.Helper()
	dir := t.TempDir()
	g := &glass{t: t, bin: filepath.Join(dir, "yokebook"), home: filepath.Join(dir, "home"), memory: filepath.Join(dir, "Xvfb_screen0")}
	build := exec.Command("go", "build", "-o", g.bin, "yokebook/app")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("build: %v\n%s", err, out)
	}
	read, write, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	x := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", "411x914x24", "-fbdir", dir, "-nolisten", "tcp")
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
	id := ""
	g.until("a window", func() bool {
		out, err := g.xdotool("search", "--onlyvisible", "--name", "yokebook")
		id = strings.TrimSpace(strings.SplitN(out, "\n", 2)[0])
		return err == nil && id != ""
	})
	for _, step := range [][]string{{"windowmove", id, "0", "0"}, {"windowsize", id, "411", "914"}, {"windowfocus", id}} {
		if out, err := g.xdotool(step...); err != nil {
			g.t.Fatalf("xdotool %v: %v\n%s", step, err, out)
		}
	}
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
	for end := time.Now().Add(patience); !ok(); {
		if time.Now().After(end) {
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
		"mousemove", "410", "913") // out of the picture
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

// alike compares two pictures of a page that were drawn in two ways: the mean brightness of every
// small square is nearly that of the same square in the other, moved by at most one pixel.
func alike(a, b image.Image) bool {
	const side, most = 14, 26
	sa, sb := sumsOf(a), sumsOf(b)
	for y := 1; y+side+1 < min(len(sa), len(sb)); y += side {
		for x := 1; x+side+1 < min(len(sa[0]), len(sb[0])); x += side {
			if !sa.near(sb, x, y, side, most) {
				return false
			}
		}
	}
	return true
}

// sums holds, for each place, the sum of brightness above it and to its left.
type sums [][]int

func sumsOf(img image.Image) sums {
	r := img.Bounds()
	out := make(sums, r.Dy()+1)
	out[0] = make([]int, r.Dx()+1)
	for y := range r.Dy() {
		out[y+1] = make([]int, r.Dx()+1)
		row := 0
		for x := range r.Dx() {
			red, green, blue, _ := img.At(r.Min.X+x, r.Min.Y+y).RGBA()
			row += int(red>>8+green>>8+blue>>8) / 3
			out[y+1][x+1] = out[y][x+1] + row
		}
	}
	return out
}

func (s sums) mean(x, y, side int) int {
	return (s[y+side][x+side] - s[y][x+side] - s[y+side][x] + s[y][x]) / (side * side)
}

func (s sums) near(o sums, x, y, side, most int) bool {
	for _, dy := range []int{0, -1, 1} {
		for _, dx := range []int{0, -1, 1} {
			if d := s.mean(x, y, side) - o.mean(x+dx, y+dy, side); d <= most && d >= -most {
				return true
			}
		}
	}
	return false
}

// pair is the real window and the same screens laid out in the test: every step is done on both,
// and the real one has to show the same page before the next.
type pair struct {
	*desk
	g     *glass
	steps int
}

// same waits until the real window shows what the test's screens show.
func (p *pair) same(after string) {
	p.t.Helper()
	want := p.w.Canvas().Capture()
	var got *image.RGBA
	p.t.Cleanup(func() {
		if p.t.Failed() && *pictures != "" && got != nil && !alike(got, want) {
			savePicture(p.t, got, filepath.Join(*pictures, "real-got.png"))
			savePicture(p.t, want, filepath.Join(*pictures, "real-want.png"))
		}
	})
	p.g.until("the page after "+after, func() bool {
		var err error
		got, err = p.g.shows()
		return err == nil && alike(got, want)
	})
}

// tap presses keys on both; each seventh press is a slow one.
func (p *pair) tap(names ...string) *pair {
	p.t.Helper()
	for _, name := range names {
		at := p.find(name).centre()
		p.steps++
		p.g.press(at.X, at.Y, p.steps%7 == 0)
		p.desk.tap(name)
		p.same(name)
	}
	return p
}

// read types a number on both and keeps it; it returns when the reading is on the disk.
func (p *pair) read(number, side string) *pair {
	p.t.Helper()
	before := p.g.stored()
	for _, r := range number {
		p.tap(map[bool]string{true: "key.decimal", false: "key." + string(r)}[r == '.'])
	}
	p.tap("keep")
	if side != "" {
		p.tap("side." + side)
	}
	p.g.until("the reading on the disk", func() bool { return p.g.stored() > before })
	return p
}

// on goes to the next stop on both, heeds cautions and brings the vehicle there.
func (p *pair) on() *pair {
	p.t.Helper()
	p.tap("next")
	for p.has("bring.done") || p.has("caution.ok") {
		if p.has("bring.done") {
			p.tap("bring.done")
		} else {
			p.tap("caution.ok")
		}
	}
	return p
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

// typed is what the person of TestRealWindow types, in the order of the route.
var typed = []struct {
	number, side string // side: "yes" is the front end high, clockwise; "no" the other; "" none
	want         string // point, value with sign, state, setup
}{
	{"5200", "", "engine.rpm_max 5200 rev/min bench"},
	{"0.83", "", "gear.highest 0.83  bench"},
	{"20", "", "joint.angle_limit 20 deg bench"},
	{"0", "", "shaft.phase 0 deg bench"},
	{"0.6", "yes", "datum.slope 0.6 deg droop/none setup 1"},
	{"2.4", "yes", "gearbox.slope 2.4 deg droop/none setup 1"},
	{"17.0", "yes", "shaft.slope 17.0 deg droop/none setup 1"},
	{"2.0", "yes", "pinion.slope 2.0 deg droop/none setup 1"},
	{"0.4", "no", "datum.slope -0.4 deg ride/kerb setup 2"},
	{"2.2", "yes", "gearbox.slope 2.2 deg ride/kerb setup 2"},
	{"5.3", "yes", "shaft.slope 5.3 deg ride/kerb setup 2"},
	{"2.1", "yes", "pinion.slope 2.1 deg ride/kerb setup 2"},
	{"0.9", "no", "datum.slope -0.9 deg ride/laden setup 3"},
	{"1.9", "yes", "gearbox.slope 1.9 deg ride/laden setup 3"},
	{"3.7", "yes", "shaft.slope 3.7 deg ride/laden setup 3"},
	{"2.6", "yes", "pinion.slope 2.6 deg ride/laden setup 3"},
}

// The real program under a display of its own: a whole route by touch alone, killed in the middle of
// a value, started again, finished; what is stored is what was typed.
func TestRealWindow(t *testing.T) {
	need(t, "Xvfb", "xdotool", "go")
	g := newGlass(t)
	dir := t.TempDir()
	p := &pair{desk: openDeskOn(t, dir, phone, false), g: g}
	g.start()
	p.same("start")

	p.tap("new")
	if out, err := g.xdotool("type", "--delay", "20", "Invented estate"); err != nil {
		t.Fatalf("xdotool: %v\n%s", err, out)
	}
	p.write("Invented estate")
	p.tap("go", "answer.1", "answer.shaft", "answer.leaf", "answer.single", "answer.single")
	for _, r := range typed[:6] {
		p.read(r.number, r.side).on()
	}
	p.tap("key.1", "key.7") // half a value, never kept
	g.kill()

	p.restart(dir)
	g.start()
	p.same("the second start")
	p.tap("build.*", "caution.ok")
	for i, r := range typed[6:] {
		p.read(r.number, r.side)
		if i+1 < len(typed[6:]) {
			p.on()
		}
	}
	g.kill()

	want := make([]string, len(typed))
	for i, r := range typed {
		want[i] = r.want
	}
	if got := g.kept(); strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("stored:\n%s\ntyped:\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	for _, bad := range []string{"Error in Fyne call thread", "panic", "fatal error"} {
		if strings.Contains(g.log.String(), bad) {
			t.Errorf("the program's log says %q:\n%s", bad, g.log.String())
		}
	}
}

// restart shows the screens of the test anew, as after a kill.
func (p *pair) restart(dir string) {
	p.t.Helper()
	if err := p.s.Close(); err != nil {
		p.t.Fatal(err)
	}
	p.s.show()
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
