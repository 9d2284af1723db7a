package logbook

import (
	"reflect"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// What the book shows after each record, carried on from run to run, is what the checks say of the
// exported file from nothing.
func TestBookShowsWhatTheChecksSayOfTheExportedFile(t *testing.T) {
	src := newWorld().sources(deviceA)
	src.run = nil // the real checks
	s, err := OpenShelf(t.TempDir(), src)
	if err != nil {
		t.Fatal(err)
	}
	defer s.Close()
	b, err := s.New("invented: with the real checks", measure.NewLayout())
	if err != nil {
		t.Fatal(err)
	}
	same := func(after string) {
		t.Helper()
		data, err := s.Export(b.ID())
		if err != nil {
			t.Fatal(err)
		}
		build, _, err := document.Read(data)
		if err != nil {
			t.Fatal(err)
		}
		if want := checks.Run(build, nil).Findings; !reflect.DeepEqual(b.Findings(), want) {
			t.Errorf("after %s the book shows %s\nthe file gives %s", after, said(b.Findings()), said(want))
		}
	}
	var last Change
	for _, row := range []struct{ point, value string }{
		{"gearbox.slope", "2.4"}, {"shaft.slope", "17"}, {"pinion.slope", "2"}, {"shaft.slope", "17.2"},
	} {
		e := slope(t, row.point, row.value)
		e.State = measure.RideKerb
		last = keep(t, b, e)
		same(row.point + " " + row.value)
	}
	if len(b.Findings()) == 0 {
		t.Fatal("the checks say nothing: the test proves nothing")
	}
	if _, err := b.Strike(last.Reading, "on the weld"); err != nil {
		t.Fatal(err)
	}
	same("a strike")
	if _, err := b.Set("layout.slip", []byte(`"gearbox"`)); err != nil {
		t.Fatal(err)
	}
	same("another layout")
}
