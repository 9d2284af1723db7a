package sync

import (
	"bytes"
	"context"
	"errors"
	"testing"

	"yokebook/sync/place"
)

// tidy takes a copy away and returns what was put aside.
func (d *desk) tidy(s place.Place, name string) (aside []byte, err error) {
	p := Pass{Place: s, Device: d.id}
	err = p.Tidy(context.Background(), name, func(_ string, data []byte) error {
		aside = bytes.Clone(data)
		return nil
	})
	return aside, err
}

func TestCopyIsTidiedAwayAndCanBePutBack(t *testing.T) {
	for _, name := range []string{"x (1).json", "from the phone/x.json"} {
		s, a, b := pair(t)
		a.keep(1, 1, "2.4")
		b.keep(1, 2, "2.5")
		copied := bytesOf(t, b.drawer.builds[buildID(1)])
		s.drop(name, copied)
		if r := a.must(); len(r.Copies) != 1 {
			t.Fatalf("copies: %q", r.Copies)
		}
		aside, err := a.tidy(s, name)
		if err != nil || !bytes.Equal(aside, copied) {
			t.Fatalf("%s: %v, put aside %d bytes of %d", name, err, len(aside), len(copied))
		}
		if _, there := s.files[name]; there || len(s.files) != 1 {
			t.Errorf("%s: the place holds %d files; want the device's own", name, len(s.files))
		}
		b.must()
		if got := len(b.drawer.builds[buildID(1)].Readings); got != 2 {
			t.Errorf("%s: the other device has %d readings; want both", name, got)
		}
		p := Pass{Place: s, Device: a.id}
		if err := p.PutBack(context.Background(), name, aside); err != nil || !bytes.Equal(s.files[name].data, copied) {
			t.Errorf("%s: putting back: %v", name, err)
		}
		if err := p.PutBack(context.Background(), name, aside); !errors.Is(err, ErrTouched) {
			t.Errorf("%s: putting back over a file: %v", name, err)
		}
	}
}

// rewritten is a place in which a copy changes while it is put aside.
type rewritten struct {
	*shed
	name string
	to   []byte
	gets int
}

func (r *rewritten) Get(ctx context.Context, name string) ([]byte, error) {
	if name == r.name {
		if r.gets++; r.gets == 2 {
			r.drop(name, r.to)
		}
	}
	return r.shed.Get(ctx, name)
}

func TestNothingIsTidiedThatIsNotHadTwice(t *testing.T) {
	const name = "x (1).json"
	full := errors.New("the disk is full")
	for _, row := range []struct {
		name string
		act  func(s *shed, a *desk, copied, more []byte) error
		want error
	}{
		{"a record that came after the pass", func(s *shed, a *desk, _, more []byte) error {
			s.drop(name, more)
			_, err := a.tidy(s, name)
			return err
		}, ErrNotHad},
		{"our own file is gone", func(s *shed, a *desk, _, _ []byte) error {
			delete(s.files, place.FileName(buildID(1), a.id))
			_, err := a.tidy(s, name)
			return err
		}, place.ErrNone},
		{"nothing can be put aside", func(s *shed, a *desk, _, _ []byte) error {
			return Pass{Place: s, Device: a.id}.Tidy(context.Background(), name, func(string, []byte) error { return full })
		}, full},
		{"changed while it was put aside", func(s *shed, a *desk, _, more []byte) error {
			_, err := a.tidy(&rewritten{shed: s, name: name, to: more}, name)
			return err
		}, ErrTouched},
	} {
		s, a, b := pair(t)
		a.keep(1, 1, "2.4")
		b.keep(1, 2, "2.5")
		copied := bytesOf(t, b.drawer.builds[buildID(1)])
		s.drop(name, copied)
		a.must()
		b.keep(1, 3, "2.6")
		if err := row.act(s, a, copied, bytesOf(t, b.drawer.builds[buildID(1)])); !errors.Is(err, row.want) {
			t.Errorf("%s: %v; want %v", row.name, err, row.want)
		}
		if _, there := s.files[name]; !there {
			t.Errorf("%s: the copy is gone", row.name)
		}
	}
	s, a, _ := pair(t)
	a.keep(1, 1, "2.4")
	a.must()
	if _, err := a.tidy(s, place.FileName(buildID(1), a.id)); !errors.Is(err, ErrNoCopy) || len(s.files) != 1 {
		t.Errorf("a device's file: %v", err)
	}
}
