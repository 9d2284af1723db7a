package cli

import (
	"bufio"
	"bytes"
	"context"
	"io"
	"os"
	"regexp"
	"strings"
	"testing"

	"rsc.io/qr"

	"yokebook/app/places"
)

// shop is a desk that serves its builds.
type shop struct {
	*desk
	lines chan string
	stop  func() // ends serving, and fails unless it ended well
}

// serving starts serve on a free port of this machine.
func serving(d *desk, args ...string) *shop {
	d.t.Helper()
	r, w := io.Pipe()
	var told bytes.Buffer
	ctx, cancel := context.WithCancel(context.Background())
	p := d.program(nil, &told)
	p.Out, p.Context = w, ctx
	done := make(chan int, 1)
	go func() {
		done <- p.Run(append([]string{"serve", "--listen", "127.0.0.1:0"}, args...))
		_ = w.Close()
	}()
	s := &shop{desk: d, lines: make(chan string, 1000)} // what is printed never waits for the test
	go func() {
		for lines := bufio.NewScanner(r); lines.Scan(); {
			s.lines <- lines.Text()
		}
		close(s.lines)
	}()
	s.stop = func() {
		cancel()
		if code := <-done; code != Done || told.Len() > 0 {
			d.t.Errorf("serve ended with %d, %q", code, told.String())
		}
	}
	return s
}

// says reads what is printed until a line matches, and returns the first group.
func (s *shop) says(pattern string) string {
	s.t.Helper()
	re := regexp.MustCompile(pattern)
	for line := range s.lines {
		if m := re.FindStringSubmatch(line); m != nil {
			return m[len(m)-1]
		}
	}
	s.t.Fatalf("serve never said %s", pattern)
	return ""
}

func TestPhoneAndDesktopMeetByPairing(t *testing.T) {
	desktop, phone := newDesk(t), other(t)
	desktop.must("import", desktop.put("hand.json", byHand))
	phone.must("import", phone.put("other.json", strings.Replace(byHand, "0000000000b1", "0000000000b2", 1)))
	s := serving(desktop)
	text := s.says(`yokebook sync '(https://127\.0\.0\.1:\d+/#[^']+)'`)
	address, _, _ := strings.Cut(text, "#")
	if code, _, err := phone.run("sync", address); code != PersonNeeded || !strings.Contains(err, "nobody vouches") {
		t.Errorf("before pairing: exit %d, %q", code, err)
	}
	out := phone.must("sync", text)
	if !strings.Contains(out, "2 of 2 builds synced with "+address) {
		t.Errorf("the phone printed %q", out)
	}
	s.says(`^paired: .*(019ab3ee-0000-7000-8000-000000000002)`)
	next := s.says(`yokebook sync '([^']+)'`)
	s.says(`0000000000b2\): records .* came in: (\d+)`)
	if next == text {
		t.Error("the same code is shown again")
	}
	if out := phone.must("sync", address); !strings.Contains(out, "2 of 2 builds synced with "+address) {
		t.Errorf("without pairing again: %q", out)
	}
	third := newDesk(t)
	third.device = "019ab3ee-0000-7000-8000-000000000003"
	if code, _, err := third.run("sync", text); code != PersonNeeded || !strings.Contains(err, "the code is wrong, used or too old") {
		t.Errorf("a code used before: exit %d, %q", code, err)
	}
	s.stop()
	for _, id := range []string{handID, strings.Replace(handID, "b1", "b2", 1)} {
		desktop.must("export", id, "-o", desktop.path("x.json"))
		phone.must("export", id, "-o", phone.path("x.json"))
		if desktop.file("x.json") != phone.file("x.json") {
			t.Errorf("build %s differs", id)
		}
	}
	if list, err := places.Open(desktop.path("home"), nil).List(); err != nil || len(list) != 0 {
		t.Errorf("the folder that is offered is on the list of places: %v, %v", list, err)
	}
	if out := desktop.must("serve", "--paired"); !strings.Contains(out, "019ab3ee-0000-7000-8000-000000000002") {
		t.Errorf("listed %q", out)
	}
	desktop.must("serve", "--unpair", "019ab3ee-0000-7000-8000-000000000002")
	for _, name := range []string{"secrets.json"} {
		if info, err := os.Stat(phone.path("home/" + name)); err != nil || info.Mode().Perm() != 0o600 {
			t.Errorf("%s: %v, %v", name, info, err)
		}
	}
	for _, name := range []string{"serve/key.pem", "serve/paired.json"} {
		if info, err := os.Stat(desktop.path("home/" + name)); err != nil || info.Mode().Perm() != 0o600 {
			t.Errorf("%s: %v, %v", name, info, err)
		}
	}
}

// The key stays when serve is started again, so that a paired device needs no new pairing.
func TestPairedDeviceKnowsTheServerAfterARestart(t *testing.T) {
	desktop, phone := newDesk(t), other(t)
	desktop.must("import", desktop.put("hand.json", byHand))
	s := serving(desktop)
	text := s.says(`yokebook sync '([^']+)'`)
	phone.must("sync", text)
	s.stop()
	_, first, _ := strings.Cut(text, ".")
	s = serving(desktop)
	_, second, _ := strings.Cut(s.says(`yokebook sync '([^']+)'`), ".")
	if first[strings.LastIndex(first, ".")+1:] != second[strings.LastIndex(second, ".")+1:] {
		t.Error("the fingerprint changed")
	}
	s.stop()
}

func TestServeRefusesWhatItCantDo(t *testing.T) {
	d := newDesk(t)
	for _, tt := range []struct {
		args []string
		says string
	}{
		{[]string{"serve", "x"}, "serve"},
		{[]string{"serve", "--network", "--listen", "127.0.0.1:0"}, "use one"},
		{[]string{"serve", "--listen", "nowhere"}, "can't listen on nowhere"},
		{[]string{"serve", "--unpair", "x"}, "UUID"},
		{[]string{"serve", "--unpair", handID}, "not paired"},
		{[]string{"sync", "https://127.0.0.1:1/#ABCDE-FGHJK.short"}, "pairing text is not whole"},
	} {
		code, out, err := d.run(tt.args...)
		if code != BadInput || out != "" || !strings.Contains(err, tt.says) {
			t.Errorf("%q: exit %d, printed %q, error %q", tt.args, code, out, err)
		}
		oneLineOf(t, strings.Join(tt.args, " "), err)
	}
}

// A drawn code, read back module by module from its characters, is the code.
func TestQRCodeIsDrawnAsItIs(t *testing.T) {
	code, err := qr.Encode("https://192.168.1.20:8417/#ABCDE-FGHJK.0123456789012345678901234567890123456789012", qr.L)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSuffix(drawQR(code.Size, code.Black), "\n"), "\n")
	if len(lines)*2 < code.Size+2*quiet {
		t.Fatalf("%d lines for %d modules", len(lines), code.Size)
	}
	for row, line := range lines {
		line = strings.TrimSuffix(strings.TrimPrefix(line, "\x1b[30;47m"), "\x1b[0m")
		for column, c := range []rune(line) {
			x, y := column-quiet, 2*row-quiet
			up, down := c == '▀' || c == '█', c == '▄' || c == '█'
			if up != code.Black(x, y) || down != code.Black(x, y+1) {
				t.Fatalf("module %d,%d is drawn wrong", x, y)
			}
		}
		if n := len([]rune(line)); n != code.Size+2*quiet || n > 80 {
			t.Errorf("line %d has %d columns", row, n)
		}
	}
}
