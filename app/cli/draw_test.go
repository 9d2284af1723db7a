package cli

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"yokebook/app/draw"
)

// twoPiece is an invented build of which every view but clutch and mounts was read.
var twoPiece = filepath.Join("..", "..", "testdata", "builds", "links-two-piece.json")

func TestDrawWritesEveryViewAsEitherKind(t *testing.T) {
	d := newDesk(t)
	for _, v := range draw.Views {
		svg, png := d.path(string(v)+".svg"), d.path(string(v)+".png")
		d.must("draw", twoPiece, "-o", svg, "--view", string(v))
		d.must("draw", twoPiece, "-o", png, "--view", string(v), "--theme", "dark")
		if data, err := os.ReadFile(svg); err != nil || !strings.HasPrefix(string(data), "<svg ") || !strings.Contains(string(data), `data-view="`+string(v)) {
			t.Errorf("%s: no picture of it: %v", svg, err)
		}
		if data, err := os.ReadFile(png); err != nil || !bytes.HasPrefix(data, []byte("\x89PNG")) {
			t.Errorf("%s: no picture: %v", png, err)
		}
	}
}

func TestDrawMovesTheAxle(t *testing.T) {
	d := newDesk(t)
	d.must("draw", twoPiece, "-o", d.path("at.svg"), "--at", "634")
	data, err := os.ReadFile(d.path("at.svg"))
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(data), "wheels hanging, hub 634 mm below the arch") || !strings.Contains(string(data), "11.7") {
		t.Error("moved to where the wheels hang, the picture does not show what was read there")
	}
	d.must("draw", twoPiece, "-o", d.path("inch.svg"), "--at", "24 15/16 in")
}

func TestDrawRefusesInOneLine(t *testing.T) {
	d := newDesk(t)
	for _, c := range []struct {
		name, want string
		args       []string
	}{
		{"no output", "-o", []string{twoPiece}},
		{"another kind of file", ".svg or .png", []string{twoPiece, "-o", d.path("x.gif")}},
		{"another view", "side", []string{twoPiece, "-o", d.path("x.svg"), "--view", "inside"}},
		{"another theme", "light or dark", []string{twoPiece, "-o", d.path("x.svg"), "--theme", "pink"}},
		{"a height out of reach", "travel", []string{twoPiece, "-o", d.path("x.svg"), "--at", "900"}},
		{"no height", "--at", []string{twoPiece, "-o", d.path("x.svg"), "--at", "high"}},
		{"no such file", "no such file", []string{d.path("none.json"), "-o", d.path("x.svg")}},
	} {
		code, out, err := d.run(append([]string{"draw"}, c.args...)...)
		if code != BadInput || out != "" || strings.Count(err, "\n") != 1 || !strings.Contains(err, c.want) {
			t.Errorf("%s: exit %d, %q, %q", c.name, code, out, err)
		}
		if _, err := os.Stat(d.path("x.svg")); err == nil {
			t.Errorf("%s: a file was written", c.name)
		}
	}
	if code, _, _ := d.run("draw", twoPiece, "-o", filepath.Join(d.path("no"), "such", "x.svg")); code != NotWritten {
		t.Errorf("a folder that is not there: exit %d, want %d", code, NotWritten)
	}
}
