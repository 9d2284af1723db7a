package system

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"

	"yokebook/app/device"
)

// held are the pickers of a test window. What goes on beside the window is held back until
// the test lets it run, and counted; what comes back to the window is counted too.
type held struct {
	*Pickers
	beside []func()
	back   int
}

func onWindow(t *testing.T) *held {
	t.Helper()
	a := test.NewTempApp(t)
	h := &held{Pickers: Of(a, test.NewTempWindow(t, nil)).Pickers.(*Pickers)}
	h.apart = func(f func()) { h.beside = append(h.beside, f) }
	h.post = func(f func()) { h.back++; f() }
	return h
}

func (h *held) goOn(t *testing.T) {
	t.Helper()
	if len(h.beside) != 1 {
		t.Fatalf("%d things go on beside the window, want 1: files must not be waited for on it", len(h.beside))
	}
	h.beside[0]()
}

func writer(t *testing.T, path string) fyne.URIWriteCloser {
	t.Helper()
	w, err := storage.Writer(storage.NewFileURI(path))
	if err != nil {
		t.Fatal(err)
	}
	return w
}

func TestWhatIsSavedCanBeOpened(t *testing.T) {
	h := onWindow(t)
	path := filepath.Join(t.TempDir(), "build.json")
	data := bytes.Repeat([]byte("invented\n"), 5000)
	saved := errors.New("not called")
	h.save(writer(t, path), nil, "build.json", data, func(err error) { saved = err })
	h.goOn(t)
	if saved != nil || h.back != 1 {
		t.Fatalf("%v, told %d times on the window's goroutine", saved, h.back)
	}
	if got, err := os.ReadFile(path); err != nil || !bytes.Equal(got, data) {
		t.Errorf("%d bytes on the disk, %v", len(got), err)
	}

	h.beside = nil
	from, err := storage.Reader(storage.NewFileURI(path))
	if err != nil {
		t.Fatal(err)
	}
	var files []device.Picked
	h.open(from, nil, func(got []device.Picked, err error) { files = got })
	h.goOn(t)
	if len(files) != 1 || files[0].Name != "build.json" || !bytes.Equal(files[0].Data, data) || h.back != 2 {
		t.Errorf("opened %d files, told %d times", len(files), h.back)
	}
}

// lossy takes everything and keeps half of it, as a full card of a phone does.
type lossy struct {
	fyne.URIWriteCloser
}

func (l lossy) Write(p []byte) (int, error) {
	_, err := l.URIWriteCloser.Write(p[:len(p)/2])
	return len(p), err
}

func TestHalfAFileIsNotSaved(t *testing.T) {
	h := onWindow(t)
	var got error
	h.save(lossy{writer(t, filepath.Join(t.TempDir(), "s.pdf"))}, nil, "s.pdf", []byte("0123456789"), func(err error) { got = err })
	h.goOn(t)
	if got == nil || !strings.Contains(got.Error(), "5 other ones came back") {
		t.Errorf("%v", got)
	}
}

func TestAPickerLeftWithoutAChoice(t *testing.T) {
	h := onWindow(t)
	var saved, opened error
	h.save(nil, nil, "s.pdf", nil, func(err error) { saved = err })
	h.open(nil, nil, func(_ []device.Picked, err error) { opened = err })
	if saved != device.ErrDismissed || opened != device.ErrDismissed {
		t.Errorf("%v, %v", saved, opened)
	}
	broken := errors.New("no provider")
	h.save(nil, broken, "s.pdf", nil, func(err error) { saved = err })
	h.open(nil, broken, func(_ []device.Picked, err error) { opened = err })
	if saved != broken || opened != broken || h.back != 4 {
		t.Errorf("%v, %v, told %d times", saved, opened, h.back)
	}
}

// Both dialogs open over the window; on a desk they are the toolkit's.
func TestTheDialogsOpen(t *testing.T) {
	h := onWindow(t)
	h.window.Resize(fyne.NewSize(411, 914))
	h.Save("build.json", nil, func(error) {})
	h.Open(func([]device.Picked, error) {})
	if n := len(h.window.Canvas().Overlays().List()); n != 2 {
		t.Errorf("%d dialogs", n)
	}
}

func TestTheClipboardTakesText(t *testing.T) {
	a := test.NewTempApp(t)
	Of(a, test.NewTempWindow(t, nil)).Clipboard.Copy("gearbox slope 2.4°")
	if got := a.Clipboard().Content(); got != "gearbox slope 2.4°" {
		t.Errorf("%q", got)
	}
}

// rooted is an app whose system gave it a folder.
type rooted struct {
	fyne.App
	root fyne.URI
}

func (r rooted) Storage() fyne.Storage { return folder{root: r.root} }

type folder struct {
	fyne.Storage
	root fyne.URI
}

func (f folder) RootURI() fyne.URI { return f.root }

func TestWhereTheBuildsAre(t *testing.T) {
	home := func() (string, error) { return "/home/of/a/desk", nil }
	none := func() (string, error) { return "", errors.New("neither $XDG_CONFIG_HOME nor $HOME are defined") }
	sandbox := storage.NewFileURI("/data/user/0/io.github.yokebook/files")
	content, err := storage.ParseURI("content://x/y")
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct {
		name   string
		mobile bool
		asked  string // $YOKEBOOK_HOME
		root   fyne.URI
		home   func() (string, error)
		want   string // "" where it errs
	}{
		{"a desk", false, "", sandbox, home, "/home/of/a/desk"},
		{"a desk without a home", false, "", sandbox, none, ""},
		{"a phone, which has no home", true, "", sandbox, none, "/data/user/0/io.github.yokebook/files"},
		{"a phone's driver on a desk, told where", true, "/tmp/x", sandbox, home, "/home/of/a/desk"},
		{"a phone that gives none", true, "", nil, home, ""},
		{"a folder that is no file address", true, "", content, home, ""},
	} {
		t.Setenv("YOKEBOOK_HOME", row.asked)
		got, err := Storage{App: rooted{root: row.root}, Mobile: row.mobile, Home: row.home}.Root()
		if got != row.want || (err == nil) != (row.want != "") {
			t.Errorf("%s: %q, %v; want %q", row.name, got, err, row.want)
		}
	}
}
