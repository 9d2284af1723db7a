package cli

import (
	"bytes"
	"os"
	"strings"
	"testing"
)

func TestSheetWritesEveryForm(t *testing.T) {
	d := newDesk(t)
	for ending, begins := range map[string]string{".pdf": "%PDF-", ".txt": "NOT FOR MANUFACTURE: ", ".html": "<!DOCTYPE html>"} {
		path := d.path("sheet" + ending)
		out := d.must("sheet", twoPiece, "-o", path, "--paper", "letter", "--units", "both", "--lang", "en")
		data, err := os.ReadFile(path)
		if err != nil || !bytes.HasPrefix(data, []byte(begins)) {
			t.Errorf("%s: begins with %.20q: %v", ending, data, err)
		}
		_, code, _ := strings.Cut(strings.TrimSpace(out), "check code is ")
		if ending == ".txt" && (len(code) != 9 || !bytes.Contains(data, []byte(code))) {
			t.Errorf("the code %q that was printed is not on the sheet", code)
		}
	}
}

func TestSheetRefusesInOneLine(t *testing.T) {
	d := newDesk(t)
	for _, c := range []struct {
		name, want string
		args       []string
	}{
		{"no output", "-o", []string{twoPiece}},
		{"another kind of file", ".pdf, .txt or .html", []string{twoPiece, "-o", d.path("x.doc")}},
		{"another paper", "a4 or letter", []string{twoPiece, "-o", d.path("x.pdf"), "--paper", "a3"}},
		{"other units", "metric, imperial or both", []string{twoPiece, "-o", d.path("x.pdf"), "--units", "old"}},
		{"a language not spoken", "en", []string{twoPiece, "-o", d.path("x.pdf"), "--lang", "xx"}},
		{"no such file", "no such file", []string{d.path("none.json"), "-o", d.path("x.pdf")}},
	} {
		code, out, err := d.run(append([]string{"sheet"}, c.args...)...)
		if code != BadInput || out != "" || strings.Count(err, "\n") != 1 || !strings.Contains(err, c.want) {
			t.Errorf("%s: exit %d, %q, %q", c.name, code, out, err)
		}
		if _, err := os.Stat(d.path("x.pdf")); err == nil {
			t.Errorf("%s: a file was written", c.name)
		}
	}
}
