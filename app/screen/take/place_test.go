package take

import (
	"reflect"
	"strings"
	"testing"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// killed is the model of a program that was killed and started again.
func killed(m *Model, book *logbook.Book) *Model { return Resume(book, m.Where()) }

func TestAKillLosesNothingHalfTyped(t *testing.T) {
	m, book := open(t)
	at(t, m, "shaft.length", measure.RideKerb)
	m.OpenMore()
	m.SwitchUnit()
	press(m, "47.")
	m.OpenHeight()
	press(m, "598")
	m.Keep()
	again := killed(m, book)
	wantPage(t, again, Keypad) // the cautions were seen
	if got := again.Stop(); got.Point.Key != "shaft.length" || got.State != measure.RideKerb {
		t.Errorf("at %s %s", got.Point.Key, got.State)
	}
	if got := again.Stand(); got.State != measure.RideKerb || got.Setup != 1 || got.Height.Token() != "598" {
		t.Errorf("stands %+v", got)
	}
	if got := again.Typed().Text(false); got != "47." || again.Unit() != "in" {
		t.Errorf("typed %q %s", got, again.Unit())
	}
}

func TestAKillOnAPageOverTheStopReturnsToThatPage(t *testing.T) {
	for _, over := range []func(*Model){(*Model).OpenMore, (*Model).OpenFindings, (*Model).OpenLaying, (*Model).Keep, (*Model).OpenRecords} {
		m, book := open(t)
		at(t, m, "gearbox.slope", measure.RideKerb)
		press(m, "2.4")
		over(m)
		again := killed(m, book)
		wantPage(t, again, m.Page())
		again.Back()
		wantPage(t, again, Keypad)
		if got := again.Typed().Text(false); got != "2.4" || again.Stop().Point.Key != "gearbox.slope" {
			t.Errorf("typed %q at %s", got, again.Stop().Point.Key)
		}
	}
}

func TestAKillAfterAKeepReturnsToTheResult(t *testing.T) {
	m, book := open(t)
	press(m, "5200")
	m.Keep()
	wantPage(t, m, Result)
	again := killed(m, book)
	wantPage(t, again, Result)
	if got, want := again.Kept().Change.Findings, m.Kept().Change.Findings; len(want) == 0 || !reflect.DeepEqual(got, want) {
		t.Errorf("changed %d findings, was %d", len(got), len(want))
	}
	again.Next()
	wantPage(t, again, Keypad)
	if got := again.Stop().Point.Key; got == "engine.rpm_max" {
		t.Errorf("on to %s, which is read", got)
	}
}

// Where the build does not bear the result out any more work goes on at the next stop.
func TestAKillAfterAKeepThatIsGoneGoesOn(t *testing.T) {
	m, book := open(t)
	press(m, "5200")
	m.Keep()
	p := m.Where()
	p.Pages[0] = strings.Replace(p.Pages[0], string(m.Kept().Reading.ID), "none", 1)
	wantPage(t, Resume(book, p), Keypad)
}

func TestAKillWhileTheHeightIsTyped(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	press(m, "2")
	m.OpenHeight()
	press(m, "61")
	again := killed(m, book)
	wantPage(t, again, Height)
	if got := again.Typed().Text(false); got != "61" {
		t.Errorf("typed %q", got)
	}
	again.Back()
	if got := again.Typed().Text(false); got != "2" {
		t.Errorf("under it %q", got)
	}
}

func TestAKillDuringACorrection(t *testing.T) {
	m, book := open(t)
	read(t, m, "engine.rpm_max", "5200")
	m.Next()
	press(m, "0.8")
	openRecord(t, m, 0)
	m.Correct()
	press(m, "53")
	again := killed(m, book)
	if old, ok := again.Correcting(); !ok || old.Point != "engine.rpm_max" || again.Typed().Text(false) != "53" {
		t.Fatalf("corrects %q, typed %q", old.Point, again.Typed().Text(false))
	}
	again.EndCorrection()
	if got := again.Typed().Text(false); got != "0.8" {
		t.Errorf("typed %q", got)
	}
}

func TestAKillWhileWriting(t *testing.T) {
	m, book := open(t)
	at(t, m, "tyre.code", measure.OffBench)
	m.Writing("205/55")
	again := killed(m, book)
	wantPage(t, again, Write)
	if got := again.Written(); got != "205/55" {
		t.Errorf("written %q", got)
	}
	again.Wrote("205/55 R16")
	if got := again.Written(); got != "" {
		t.Errorf("still %q", got)
	}
}

// A reversal goes on with its first reading; where nothing is typed yet it says once more to turn.
func TestAKillDuringAReversal(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	m.OpenReversal("")
	m.BeginReversal()
	press(m, "4.")
	m = killed(m, book)
	if r := m.Reversing(); r == nil || r.Second() || m.Typed().Text(false) != "4." {
		t.Fatalf("reverses %+v with %q typed", r, m.Typed().Text(false))
	}
	press(m, "5")
	m.Keep()
	m.Side(true)
	m = killed(m, book)
	wantPage(t, m, Turn)
	m.Turned()
	press(m, "3.")
	m = killed(m, book)
	wantPage(t, m, Keypad)
	press(m, "5")
	m.Keep()
	m.Side(true)
	wantPage(t, m, Zero)
	list := book.Build().Readings
	if len(list) != 2 || list[0].Way != 1 || list[1].Way != 2 {
		t.Errorf("readings %+v", list)
	}
	if killed(m, book).Reversing() != nil {
		t.Error("the reversal goes on")
	}
}

// The tool that was chosen, none too, and how it lies stay.
func TestAKillKeepsTheTool(t *testing.T) {
	m, book := open(t)
	if err := m.addFinder(); err != nil {
		t.Fatal(err)
	}
	at(t, m, "gearbox.slope", measure.RideKerb)
	m.OpenTools()
	m.SetTool("")
	m.OpenLaying()
	m.Lay(FrontUp)
	again := killed(m, book)
	if l, said := again.Laid(); again.Tool() != "" || l != FrontUp || !said {
		t.Errorf("tool %q lies %q, said %v", again.Tool(), l, said)
	}
}

// A place that the build does not bear out any more: another device went on, or the file was altered.
func TestAPlaceThatDoesNotFit(t *testing.T) {
	m, book := open(t)
	at(t, m, "datum.slope", measure.RideKerb)
	press(m, "1")
	keep(m)
	m.Side(true)
	m.Moved()
	m.Heeded()
	press(m, "1")
	keep(m)
	m.Side(true) // setup 2 is in the build
	for _, p := range []logbook.Place{
		{},
		{Point: "no.point", State: "ride/kerb", Typed: "5"},
		{Point: "gearbox.slope", State: "upside/down", Typed: "5"},
		{Stands: "droop/none", Setup: 1, Height: "x"},
		{Stands: "nowhere", Setup: 9},
		{Point: "datum.slope", State: "ride/kerb", Typed: "1x.y..2-3456789", Tools: map[string]string{"angle": "gone"},
			Units: map[string]string{"angle": "mm"}, Laid: map[string]logbook.Laying{"": {How: "sideways", Setup: 2}}, Corrects: "gone"},
	} {
		again := Resume(book, p)
		if got := again.Stand(); got.State != measure.RideKerb || got.Setup != 2 {
			t.Errorf("%+v: stands %+v", p, got)
		}
		if again.Unit() != again.Stop().Point.Quantity.Base() || again.Tool() != "" {
			t.Errorf("%+v: reads with %q in %s", p, again.Tool(), again.Unit())
		}
		if l, said := again.Laid(); said && l != AlongFore {
			t.Errorf("%+v: lies %q", p, l)
		}
		for _, r := range again.Typed().Text(false) {
			if (r < '0' || r > '9') && r != '.' {
				t.Errorf("%+v: typed %q", p, again.Typed().Text(false))
			}
		}
	}
}
