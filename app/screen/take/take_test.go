package take

import (
	"errors"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// open returns the model of a new build on a file, with a clock that ticks by itself.
func open(t *testing.T) (*Model, *logbook.Book) {
	t.Helper()
	n := 0
	src := logbook.Sources{
		Now: func() time.Time { n++; return time.Date(2026, 3, 2, 10, 0, n, 0, time.UTC) },
		NewID: func() measure.ID {
			n++
			return measure.ID(fmt.Sprintf("019ab3f0-0000-7000-8000-%012x", n))
		},
		Device: "019ab3ee-0000-7000-8000-000000000001",
	}
	book, err := logbook.NewFile(filepath.Join(t.TempDir(), "build.json"), "invented", measure.NewLayout(), src)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { book.Close() })
	return New(book), book
}

// at goes to a stop, whatever that takes.
func at(t *testing.T, m *Model, point string, state measure.State) {
	t.Helper()
	s, ok := m.find(point, state)
	if !ok {
		t.Fatalf("no point %s", point)
	}
	m.Go(s)
	for m.Page() == Bring || m.Page() == Caution {
		if m.Page() == Bring {
			m.Brought()
		} else {
			m.Heeded()
		}
	}
}

// press types a number such as "2.4".
func press(m *Model, number string) {
	for _, r := range number {
		if r == '.' {
			m.Decimal()
		} else {
			m.Digit(int(r - '0'))
		}
	}
}

// keep presses the key; where the finder's lie is asked it lies along the part, marked end forward.
func keep(m *Model) {
	m.Keep()
	if m.Page() == Laying {
		m.Lay(AlongFore)
	}
}

func wantPage(t *testing.T, m *Model, want Page) {
	t.Helper()
	if m.Page() != want {
		t.Fatalf("page is %s, want %s (error: %v)", m.Page(), want, m.Error())
	}
}

func TestTyping(t *testing.T) {
	for _, row := range []struct{ keys, shown, token string }{
		{"", "", ""},
		{"2.4", "2.4", "2.4"},
		{"2.40", "2.40", "2.40"}, // the last digit says how finely the tool shows
		{".5", "0.5", "0.5"},
		{"007", "7", "7"},
		{"0.0", "0.0", "0.0"},
		{"1.2.3", "1.23", "1.23"},
		{"5.", "5.", "5"},
		{"1234567890", "12345678", "12345678"},
		{"12<3", "13", "13"},
		{"1.<", "1", "1"},
		{"<", "", ""},
	} {
		var typed Typed
		for _, r := range row.keys {
			switch r {
			case '.':
				typed.Decimal()
			case '<':
				typed.Erase()
			default:
				typed.Digit(int(r - '0'))
			}
		}
		if got := typed.Text(false); got != row.shown {
			t.Errorf("%q shows %q, want %q", row.keys, got, row.shown)
		}
		if v, ok := typed.Value(false); v.Token() != row.token || ok != (row.token != "") {
			t.Errorf("%q means %q, want %q", row.keys, v.Token(), row.token)
		}
	}
}

func TestDecimalCommaIsOnlyShown(t *testing.T) {
	var typed Typed
	typed.Digit(2)
	typed.Decimal()
	typed.Digit(4)
	if got := typed.Text(true); got != "2,4" {
		t.Errorf("shows %q", got)
	}
	if v, _ := typed.Value(true); v.Token() != "-2.4" {
		t.Errorf("means %q", v.Token())
	}
}

func TestANewBuildStartsOnTheBench(t *testing.T) {
	m, _ := open(t)
	wantPage(t, m, Keypad)
	if got := m.Stop(); got.Point.Key != "engine.rpm_max" || got.State != measure.OffBench {
		t.Errorf("starts at %s %s", got.Point.Key, got.State)
	}
}

func TestASignedValueAsksForItsSide(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.Hanging)
	press(m, "2.4")
	keep(m)
	wantPage(t, m, Sides)
	if len(book.Build().Readings) != 0 {
		t.Fatal("kept before the side was said")
	}
	m.Side(false)
	wantPage(t, m, Result)
	if r := m.Kept().Reading; r.Value.Token() != "-2.4" || r.Unit != "deg" || r.State() != measure.Hanging || r.Setup != 1 {
		t.Errorf("kept %+v", r)
	}
}

func TestZeroHasNoSide(t *testing.T) {
	m, _ := open(t)
	at(t, m, "gearbox.slope", measure.Hanging)
	press(m, "0.0")
	keep(m)
	wantPage(t, m, Result)
	if got := m.Kept().Reading.Value.Token(); got != "0.0" {
		t.Errorf("kept %q", got)
	}
}

func TestNothingTypedIsNotKept(t *testing.T) {
	m, _ := open(t)
	keep(m)
	wantPage(t, m, Keypad)
	if !errors.Is(m.Error(), ErrNothingTyped) {
		t.Errorf("error is %v", m.Error())
	}
	m.Digit(1)
	if m.Error() != nil {
		t.Errorf("still says %v", m.Error())
	}
}

func TestAnImplausibleValueIsAskedBack(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.Hanging)
	press(m, "45")
	keep(m)
	m.Side(true)
	wantPage(t, m, Doubts)
	if got := m.Doubts()[0].Key; got != logbook.DoubtImplausible {
		t.Errorf("asks %s", got)
	}
	m.LookAgain()
	wantPage(t, m, Keypad)
	if got := m.Typed().Text(false); got != "45" {
		t.Errorf("typed is %q now", got)
	}
	keep(m)
	m.Side(true)
	m.KeepAllTheSame()
	wantPage(t, m, Result)
	if n := len(book.Build().Readings); n != 1 {
		t.Errorf("%d readings", n)
	}
}

func TestAnImpossibleValueIsRefusedAndStaysTyped(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.Hanging)
	press(m, "94")
	keep(m)
	m.Side(true)
	wantPage(t, m, Refused)
	if m.Error() == nil || len(book.Build().Readings) != 0 {
		t.Errorf("error %v, %d readings", m.Error(), len(book.Build().Readings))
	}
	m.LookAgain()
	wantPage(t, m, Keypad)
	if got := m.Typed().Text(false); got != "94" {
		t.Errorf("typed is %q now", got)
	}
}

// full is a disk that takes nothing.
type full struct{ *logbook.Book }

var errFull = errors.New("the disk is full; make room")

func (full) Keep(logbook.Entry) (logbook.Change, error) { return logbook.Change{}, errFull }
func (full) Skip(string, measure.State, string, string) (logbook.Change, error) {
	return logbook.Change{}, errFull
}

func TestWhatTheDiskRefusesIsSaid(t *testing.T) {
	_, book := open(t)
	m := New(full{book})
	press(m, "5200")
	keep(m)
	wantPage(t, m, Refused)
	if !errors.Is(m.Error(), errFull) || m.Kept() != nil {
		t.Errorf("error %v, kept %v", m.Error(), m.Kept())
	}
	m.LookAgain()
	if got := m.Typed().Text(false); got != "5200" {
		t.Errorf("typed is %q now", got)
	}
	m.OpenSkips()
	m.Skip("later")
	wantPage(t, m, Refused)
}

func TestCautionsComeOncePerSetupAndState(t *testing.T) {
	m, _ := open(t)
	s, _ := m.find("datum.slope", measure.Hanging)
	m.Go(s)
	wantPage(t, m, Bring)
	m.Brought()
	wantPage(t, m, Caution)
	if got := m.Cautions(); len(got) != 2 || got[0] != measure.CautionUnder || got[1] != measure.CautionHanging {
		t.Errorf("cautions %v", got)
	}
	m.Heeded()
	wantPage(t, m, Keypad)
	press(m, "0")
	keep(m)
	m.Next()
	wantPage(t, m, Keypad)
	m.OpenSetup()
	m.Moved()
	wantPage(t, m, Caution)
}

func TestAChangedStateRaisesTheSetup(t *testing.T) {
	m, _ := open(t)
	at(t, m, "datum.slope", measure.Hanging)
	if got := m.Stand().Setup; got != 1 {
		t.Fatalf("first setup is %d", got)
	}
	at(t, m, "datum.slope", measure.RideKerb) // nothing was read yet: still the first
	if got := m.Stand().Setup; got != 1 {
		t.Errorf("setup %d though nothing was read", got)
	}
	press(m, "0")
	keep(m)
	m.OpenStances()
	m.SetState(measure.RideLaden)
	if got := m.Stand(); got.Setup != 2 || got.State != measure.RideLaden {
		t.Errorf("stands %+v", got)
	}
	m.SetState(measure.RideLaden)
	if got := m.Stand().Setup; got != 2 {
		t.Errorf("setup %d though nothing changed", got)
	}
}

func TestThePartOffTheVehicleLeavesTheVehicleWhereItIs(t *testing.T) {
	m, _ := open(t)
	at(t, m, "shaft.length", measure.RideKerb)
	press(m, "1200")
	m.SetState(measure.OffBench)
	wantPage(t, m, Keypad)
	if got := m.Stand(); got.State != measure.RideKerb || got.Setup != 1 {
		t.Errorf("stands %+v", got)
	}
	keep(m)
	if got := m.Kept().Reading.State(); got != measure.OffBench {
		t.Errorf("read %s", got)
	}
}

func TestWhatIsTypedStaysWhenTheStateChanges(t *testing.T) {
	m, _ := open(t)
	at(t, m, "gearbox.slope", measure.Hanging)
	press(m, "2.4")
	m.OpenStances()
	m.SetState(measure.RideKerb)
	m.Heeded()
	wantPage(t, m, Keypad)
	if got := m.Typed().Text(false); got != "2.4" {
		t.Errorf("typed is %q now", got)
	}
}

func TestTheHeightGoesWithTheReadings(t *testing.T) {
	m, _ := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	press(m, "2")
	m.OpenHeight()
	press(m, "612")
	keep(m)
	wantPage(t, m, Keypad)
	if got := m.Typed().Text(false); got != "2" {
		t.Errorf("typed is %q now", got)
	}
	keep(m)
	m.Side(true)
	if got := m.Kept().Reading.Height.Token(); got != "612" {
		t.Errorf("height %q", got)
	}
	m.OpenStances()
	m.SetState(measure.Hanging)
	if !m.Stand().Height.IsZero() {
		t.Error("the height of another state is still shown")
	}
}

func TestStrikeTheLast(t *testing.T) {
	m, book := open(t)
	at(t, m, "datum.slope", measure.Hanging)
	press(m, "3")
	keep(m)
	m.Side(true)
	m.StrikeLast("misread")
	wantPage(t, m, Result)
	if !m.Kept().Struck || len(book.Build().Strikes) != 1 || book.Build().Strikes[0].Reason != "misread" {
		t.Fatalf("struck %v, %+v", m.Kept().Struck, book.Build().Strikes)
	}
	m.StrikeLast("misread")
	if n := len(book.Build().Strikes); n != 1 {
		t.Errorf("%d strikes", n)
	}
	m.Next()
	if got := m.Stop(); got.Point.Key != "datum.slope" || got.Taken != 0 {
		t.Errorf("goes on to %s, taken %d", got.Point.Key, got.Taken)
	}
}

func TestRepeatsAreCounted(t *testing.T) {
	m, _ := open(t)
	at(t, m, "datum.slope", measure.Hanging)
	for range 2 {
		press(m, "3")
		keep(m)
		m.Side(true)
		m.Again()
	}
	if got := m.Stop().Taken; got != 2 {
		t.Errorf("taken %d times", got)
	}
}

func TestSkipGoesOnWithItsReason(t *testing.T) {
	m, book := open(t)
	first := m.Stop().Point.Key
	m.OpenMore()
	m.OpenSkips()
	m.Skip("no tool for it")
	if got := book.Build().Skips; len(got) != 1 || got[0].Point != first || got[0].Reason != "no tool for it" {
		t.Fatalf("skips %+v", got)
	}
	if m.Stop().Point.Key == first {
		t.Error("still at the stop that was left out")
	}
}

func TestStopsThatNobodyMustTakeAreNotGoneTo(t *testing.T) {
	m, _ := open(t)
	seen := map[string]bool{}
	for i := 0; m.Page() != Run; i++ {
		if i > 100 {
			t.Fatal("the route does not end")
		}
		if m.Stop().Point.Optional {
			t.Fatalf("went to %s", m.Stop().Point.Key)
		}
		seen[m.Stop().Point.Key+m.Stop().State.String()] = true
		m.Skip("later")
	}
	want := 0
	for _, s := range m.Stops() {
		if !s.Point.Optional {
			want++
		}
	}
	if len(seen) != want {
		t.Errorf("went to %d stops of %d", len(seen), want)
	}
}

func TestAlongTheRoute(t *testing.T) {
	m, _ := open(t)
	stops := m.Stops()
	m.Earlier()
	if m.Stop().Point.Key != stops[0].Point.Key {
		t.Error("went before the first stop")
	}
	for range stops {
		m.Later()
	}
	if last := stops[len(stops)-1]; m.Stop().Point.Key != last.Point.Key || m.Stop().State != last.State {
		t.Errorf("ended at %s", m.Stop().Point.Key)
	}
}

func TestUnits(t *testing.T) {
	m, _ := open(t)
	at(t, m, "shaft.length", measure.RideKerb)
	press(m, "47.5")
	m.OpenMore()
	if other, ok := m.OtherUnit(); !ok || other != "in" {
		t.Fatalf("other unit %q", other)
	}
	m.SwitchUnit()
	wantPage(t, m, Keypad)
	keep(m)
	if r := m.Kept().Reading; r.Unit != "in" || r.Value.Token() != "47.5" {
		t.Errorf("kept %s %s", r.Value.Token(), r.Unit)
	}
	at(t, m, "gearbox.slope", measure.RideKerb)
	if _, ok := m.OtherUnit(); ok {
		t.Error("degrees have another unit")
	}
}

func TestTheOnlyToolIsTaken(t *testing.T) {
	m, book := open(t)
	tool := `{"id":"finder","kind":"angle","resolution":0.1,"accuracy":0.2,"unit":"deg"}`
	if _, err := book.Set("instruments.finder", []byte(tool)); err != nil {
		t.Fatal(err)
	}
	at(t, m, "gearbox.slope", measure.RideKerb)
	if got := m.Tool(); got != "finder" {
		t.Fatalf("reads with %q", got)
	}
	m.OpenTools()
	m.SetTool("")
	press(m, "0")
	keep(m)
	if got := m.Kept().Reading.Instrument; got != "" {
		t.Errorf("kept with %q though none was said", got)
	}
}

func TestAnswersAndTexts(t *testing.T) {
	m, _ := open(t)
	at(t, m, "front_end.clip", measure.OffBench)
	wantPage(t, m, Codes)
	m.Answer(3)
	wantPage(t, m, Result)
	if got := m.Kept().Reading.Value.Token(); got != "3" {
		t.Errorf("kept %q", got)
	}
	at(t, m, "tyre.code", measure.OffBench)
	wantPage(t, m, Write)
	m.Wrote("")
	if !errors.Is(m.Error(), ErrNothingTyped) {
		t.Errorf("error %v", m.Error())
	}
	m.Wrote("205/55 R16")
	wantPage(t, m, Result)
	if v := m.Kept().Reading.Value; !v.IsText() || v.Token() != "205/55 R16" {
		t.Errorf("kept %q", v.Token())
	}
}

func TestStayAsItIsReadsWhatIsLeft(t *testing.T) {
	m, _ := open(t)
	s, _ := m.find("datum.slope", measure.RideKerb)
	m.Go(s)
	wantPage(t, m, Bring)
	m.StayAsItIs()
	wantPage(t, m, Keypad)
	if m.Stop().State != measure.OffBench {
		t.Errorf("at %s", m.Stop().State)
	}
}

func TestBackLeavesPagesInOrder(t *testing.T) {
	m, _ := open(t)
	press(m, "52")
	m.OpenMore()
	m.OpenFindings()
	m.Back()
	wantPage(t, m, More)
	m.Back()
	wantPage(t, m, Keypad)
	if m.Back() {
		t.Error("went back from the keypad")
	}
	if got := m.Typed().Text(false); got != "52" {
		t.Errorf("typed is %q now", got)
	}
}

func TestWorkGoesOnWhereTheVehicleStands(t *testing.T) {
	m, book := open(t)
	at(t, m, "datum.slope", measure.RideKerb)
	press(m, "612")
	m.OpenHeight()
	press(m, "598")
	keep(m)
	m.Erase()
	m.Erase()
	keep(m)
	m.Side(true)
	again := New(book)
	if got := again.Stand(); got.State != measure.RideKerb || got.Setup != 1 || got.Height.Token() != "598" {
		t.Errorf("stands %+v", got)
	}
	if got := again.Stop(); got.Point.Key != "gearbox.slope" || got.State != measure.RideKerb {
		t.Errorf("at %s %s", got.Point.Key, got.State)
	}
}

func TestAFinishedRouteIsDone(t *testing.T) {
	m, book := open(t)
	for m.Page() != Run {
		m.Skip("later")
	}
	if m.HeedRun(); m.Page() != Done {
		t.Errorf("after the caution comes %s", m.Page())
	}
	wantPage(t, Resume(book, m.Where()), Done) // the caution comes once in a setup
	for _, s := range book.Stops() {
		if s.Point.Optional {
			if _, err := book.Skip(s.Point.Key, s.State, "", "later"); err != nil {
				t.Fatal(err)
			}
		}
	}
	wantPage(t, New(book), Run)
}

var _ Log = (*logbook.Book)(nil)
