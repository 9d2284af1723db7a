package bench

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// windowRows hold the program against one that opens a window of the same toolkit with nothing in it:
// both start in turn on a display of their own, as large as the window.
func windowRows(t *testing.T) []row {
	for _, tool := range []string{"Xvfb", "go"} {
		if _, err := exec.LookPath(tool); err != nil {
			t.Skipf("%s is not installed; the window is not measured", tool)
		}
	}
	d := openDisplay(t)
	empty := d.program("yokebook/app/screen/run/empty")
	ours := d.program("yokebook/app")
	one, many := filepath.Join(d.dir, "one"), filepath.Join(d.dir, "many")
	stock(t, one, 1, 200)
	stock(t, many, 2000, 200)
	cases := []struct {
		home    string
		command []string
	}{{one, []string{empty}}, {one, []string{ours}}, {many, []string{ours}}, {one, []string{empty, "one line"}}}
	starts, memory := make([]samples, len(cases)), make([]samples, len(cases))
	for round := range 12 {
		for i, c := range cases {
			start, kB := d.start(c.command, c.home, round%4 == 0)
			switch {
			case round == 0: // the disk's cache fills
			case kB > 0:
				memory[i] = append(memory[i], time.Duration(kB))
			default:
				starts[i] = append(starts[i], start)
			}
		}
	}
	const what = "empty window"
	base := memory[0].at(0.5)
	size := [2]int64{sizeOf(t, empty), sizeOf(t, ours)}
	mb := func(n float64) string { return fmt.Sprintf("%.1f MB", n) }
	return []row{
		times("start to first frame, 1 build", starts[1].at(0.5), starts[0].at(0.5), what, 1.3),
		times("  beside it: a window with one line of text", starts[3].at(0.5), starts[0].at(0.5), what, 0),
		times("start to first frame, 2,000 builds × 200 readings", starts[2].at(0.5), starts[0].at(0.5), what, 2),
		{"resident memory, 2,000 builds", mb(float64(memory[2].at(0.5)) / 1024), mb(float64(base)/1024) + " " + what,
			float64(memory[2].at(0.5)) / float64(base), 1.5},
		{"size of the program, stripped", mb(float64(size[1]) / 1e6), mb(float64(size[0])/1e6) + " empty program",
			float64(size[1]) / float64(size[0]), 1.5},
	}
}

func sizeOf(t *testing.T, path string) int64 {
	info, err := os.Stat(path)
	if err != nil {
		t.Fatal(err)
	}
	return info.Size()
}

// display is a screen without glass whose picture is a file.
type display struct {
	t      *testing.T
	dir    string
	number int
}

func openDisplay(t *testing.T) *display {
	t.Helper()
	d := &display{t: t, dir: t.TempDir()}
	read, write, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	x := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", "411x914x24", "-fbdir", d.dir, "-nolisten", "tcp", "-noreset")
	x.ExtraFiles = []*os.File{write}
	if err := x.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		x.Process.Signal(syscall.SIGTERM)
		x.Wait()
	})
	write.Close()
	if _, err := fmt.Fscan(read, &d.number); err != nil {
		t.Fatalf("Xvfb gave no display: %v", err)
	}
	return d
}

// program builds a command, stripped.
func (d *display) program(pkg string) string {
	d.t.Helper()
	bin := filepath.Join(d.dir, filepath.Base(pkg))
	build := exec.Command("go", "build", "-ldflags", "-s -w", "-o", bin, pkg)
	if out, err := build.CombinedOutput(); err != nil {
		d.t.Fatalf("build: %v\n%s", err, out)
	}
	return bin
}

// start starts a program and waits for the first picture that it shows. When it settles, it is left
// alone for a second and its resident memory in kB is returned too. Then it is killed.
func (d *display) start(command []string, home string, settle bool) (first time.Duration, kB int) {
	d.t.Helper()
	d.until("a dark display", func() bool { return !d.lit() })
	cmd := exec.Command(command[0], command[1:]...)
	cmd.Env = append(os.Environ(), fmt.Sprintf("DISPLAY=:%d", d.number), "WAYLAND_DISPLAY=", "FYNE_SCALE=1", "FYNE_THEME=light",
		"LANG=en_GB.UTF-8", "LIBGL_ALWAYS_SOFTWARE=1", "YOKEBOOK_HOME="+home, "XDG_CONFIG_HOME="+filepath.Join(d.dir, "config"))
	begin := time.Now()
	if err := cmd.Start(); err != nil {
		d.t.Fatal(err)
	}
	defer func() {
		cmd.Process.Kill()
		cmd.Wait()
	}()
	d.until("the first frame of "+filepath.Base(command[0]), d.lit)
	first = time.Since(begin)
	if settle {
		<-time.After(time.Second)
		kB = d.resident(cmd.Process.Pid)
	}
	return first, kB
}

func (d *display) until(what string, ok func() bool) {
	d.t.Helper()
	tick := time.NewTicker(time.Millisecond)
	defer tick.Stop()
	for end := time.Now().Add(time.Minute); !ok(); {
		if (<-tick.C).After(end) {
			d.t.Fatalf("waited a minute for %s", what)
		}
	}
}

// lit reports that something is on the display. The file is an X window dump (XWDFile.h, version 7):
// a header of big-endian words, a table of colours of 12 bytes each, and the pixels. One row in the
// middle is looked at.
func (d *display) lit() bool {
	f, err := os.Open(filepath.Join(d.dir, "Xvfb_screen0"))
	if err != nil {
		d.t.Fatal(err)
	}
	defer f.Close()
	head := make([]byte, 100)
	if _, err := f.ReadAt(head, 0); err != nil {
		d.t.Fatal(err)
	}
	word := func(i int) int64 { return int64(binary.BigEndian.Uint32(head[4*i:])) }
	line := make([]byte, word(12))
	if _, err := f.ReadAt(line, word(0)+12*word(19)+word(5)/2*word(12)); err != nil {
		d.t.Fatal(err)
	}
	return len(line)-bytes.Count(line, []byte{0}) > len(line)/2
}

// resident reads how much memory a process has in use, in kB.
func (d *display) resident(pid int) int {
	d.t.Helper()
	data, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", pid))
	if err != nil {
		d.t.Fatal(err)
	}
	_, rest, _ := strings.Cut(string(data), "VmRSS:")
	var kB int
	if _, err := fmt.Sscan(rest, &kB); err != nil || kB == 0 {
		d.t.Fatalf("no VmRSS in the status of %d: %v", pid, err)
	}
	return kB
}
