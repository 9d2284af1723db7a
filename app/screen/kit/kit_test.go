package kit

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// newBook is an open build on a shelf of its own, with a clock that ticks by a minute.
func newBook(t *testing.T) *logbook.Book {
	t.Helper()
	n := 0
	shelf, err := logbook.OpenShelf(t.TempDir(), logbook.Sources{
		Now:   func() time.Time { n++; return time.Date(2026, 3, 2, 10, n, 0, 0, time.UTC) },
		NewID: func() measure.ID { n++; return measure.ID(fmt.Sprintf("019ab3f0-0000-7000-8000-%012x", n)) },
	})
	if err != nil {
		t.Fatal(err)
	}
	b, err := shelf.New("invented: instruments", measure.NewLayout())
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = shelf.Close() })
	return b
}

func number(t *testing.T, token string) measure.Value {
	t.Helper()
	v, err := measure.NumberValue(token)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// set puts what the form holds into the build.
func set(t *testing.T, b *logbook.Book, f *Form) {
	t.Helper()
	if f.Step() != Done {
		t.Fatalf("the form still asks for %s", f.Step())
	}
	field, value, err := f.Field(b.Build())
	if err != nil {
		t.Fatal(err)
	}
	if _, err := b.Set(field, value); err != nil {
		t.Fatal(err)
	}
}

// answer gives the numbers of the keypad's steps.
func answer(t *testing.T, f *Form, values ...measure.Value) {
	t.Helper()
	for _, v := range values {
		if err := f.Number(v); err != nil {
			t.Fatal(err)
		}
	}
}

func TestANewInstrumentStandsInTheBuildAsItWasTyped(t *testing.T) {
	b := newBook(t)
	for i, want := range []measure.Instrument{
		{ID: "tape", Kind: "tape", Name: "long tape", Unit: "in", Resolution: number(t, "0.0625"), Accuracy: number(t, "0.03")},
		{ID: "tape-2", Kind: "tape", Unit: "mm", Resolution: number(t, "1")},
		{ID: "angle", Kind: "angle", Unit: "deg", Resolution: number(t, "0.10"), Accuracy: number(t, "0.2")},
	} {
		f := Add()
		f.Choose(want.Kind)
		if f.Step() == Unit {
			f.Choose(string(want.Unit))
		}
		f.Call("  " + want.Name + " ")
		answer(t, f, want.Resolution, want.Accuracy)
		set(t, b, f)
		got, ok := measure.InstrumentOf(b.Build().Instruments, want.ID)
		if !ok || got.Kind != want.Kind || got.Name != want.Name || got.Unit != want.Unit ||
			got.Resolution.Token() != want.Resolution.Token() || got.Accuracy.Token() != want.Accuracy.Token() || len(b.Build().Instruments) != i+1 {
			t.Errorf("in the build %+v, want %+v", got, want)
		}
	}
}

func TestAChangeLeavesTheRestAndItsUnknownMembers(t *testing.T) {
	b := newBook(t)
	if _, err := b.Set("instruments.old", []byte(`{"id":"old","kind":"angle","unit":"deg","resolution":0.10,"serial":"A7"}`)); err != nil {
		t.Fatal(err)
	}
	in, _ := measure.InstrumentOf(b.Build().Instruments, "old")
	f := Change(in, Accuracy)
	answer(t, f, number(t, "0.2"))
	set(t, b, f)
	got, _ := measure.InstrumentOf(b.Build().Instruments, "old")
	if got.Accuracy.Token() != "0.2" || got.Resolution.Token() != "0.10" || string(got.Unknown["serial"]) != `"A7"` {
		t.Errorf("after the change %+v", got)
	}
	f = Change(got, Resolution)
	answer(t, f, measure.Value{})
	set(t, b, f)
	if got, _ = measure.InstrumentOf(b.Build().Instruments, "old"); !got.Resolution.IsZero() {
		t.Errorf("what is not known any more is still %s", got.Resolution.Token())
	}
}

func TestTheFormRefusesAStepOfNothingAndWrongChoices(t *testing.T) {
	f := Add()
	f.Choose("yardstick")
	if f.Step() != Kind {
		t.Error("a kind that is not known was taken")
	}
	f.Choose("tape")
	f.Choose("deg")
	if f.Step() != Unit {
		t.Error("a tape that shows degrees was taken")
	}
	f.Choose("mm")
	f.Call("")
	if err := f.Number(number(t, "0")); err == nil || f.Step() != Resolution {
		t.Errorf("a step of nothing: %v", err)
	}
	answer(t, f, number(t, "0.5"))
	for _, want := range []Step{Resolution, Name, Unit, Kind} {
		if !f.Back() || f.Step() != want {
			t.Errorf("back at %s, want %s", f.Step(), want)
		}
	}
	if f.Back() {
		t.Error("back before the first question")
	}
}

// keep reads a slope with a finder in a setup, either way round.
func keep(t *testing.T, b *logbook.Book, tool, value string, setup, way int) {
	t.Helper()
	_, err := b.Keep(logbook.Entry{Point: "datum.slope", Value: number(t, value), Unit: "deg", State: measure.RideKerb, Setup: setup,
		Instrument: tool, Way: way})
	if err != nil {
		t.Fatal(err)
	}
}

func TestWhatIsDueAndWhatWasFound(t *testing.T) {
	b := newBook(t)
	for _, in := range []string{`{"id":"finder","kind":"angle","unit":"deg"}`, `{"id":"tape","kind":"tape","unit":"mm"}`} {
		id := strings.Split(in, `"`)[3]
		if _, err := b.Set("instruments."+id, []byte(in)); err != nil {
			t.Fatal(err)
		}
	}
	look := func(setup int) (finder, tape Tool) {
		t.Helper()
		list := Tools(b.Build(), b.Findings(), setup)
		if len(list) != 2 || list[0].ID != "finder" || list[1].ID != "tape" {
			t.Fatalf("tools %+v", list)
		}
		return list[0], list[1]
	}
	finder, tape := look(1)
	if !finder.Due() || tape.Due() || finder.Readings != 0 || !finder.Last.IsZero() {
		t.Errorf("before any reading: %+v, %+v", finder, tape)
	}
	keep(t, b, "finder", "3.4", 1, 1)
	if finder, _ = look(1); !finder.Due() || finder.Readings != 1 || finder.Last.IsZero() {
		t.Errorf("after one reading: %+v", finder)
	}
	// 3.4 and 2.8 in the vehicle's own sign, turned in between: half the difference, 0.3, is the zero
	// (engineers' sheet on the calibration of levels: half of what the two differ by).
	keep(t, b, "finder", "2.8", 1, 2)
	finder, _ = look(1)
	if finder.Due() || len(finder.Zeros) != 1 || math.Abs(math.Abs(finder.Zeros[0].Value)-0.3) > 1e-9 || !finder.Zeros[0].At.Equal(finder.Last) {
		t.Errorf("after the reversal: %+v", finder)
	}
	if finder, _ = look(2); !finder.Due() {
		t.Error("a reversal holds in another setup")
	}
}
