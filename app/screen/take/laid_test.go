package take

import (
	"encoding/json"
	"math"
	"testing"

	"yokebook/app/logbook"
	"yokebook/checks"
	"yokebook/measure"
)

// What a finder of zero z shows on a part of slope s, front end high: it measures how high above the
// level its marked end points, and shows no more than 90. Of each row the slope that the reading
// stands for is off by +z or −z; the sign is that of way 1 along the part for the first, the other
// for the second.
// Source: worked apart from this code, with s = 4 and z = 0.5.
var shows = []struct {
	laid  Laid
	shown float64
	along float64 // what it stands for
}{
	{AlongFore, 4.5, 4.5}, {AlongAft, 3.5, 3.5}, // marked end at +4; at −4, shown −3.5, front end high
	{RearUp, 85.5, 4.5}, {RearDown, 86.5, 3.5}, // at 94, shown 94.5; at −94, shown −93.5
	{FrontDown, 85.5, 4.5}, {FrontUp, 86.5, 3.5}, // at −86, shown −85.5; at 86, shown 86.5
}

// However it lies, way and lay say with which sign its zero enters: +z where the reading's way is 1
// along the part or 2 on a face.
func TestWayAndLayTellTheSignOfTheZero(t *testing.T) {
	const slope, zero = 4.0, 0.5
	for _, row := range shows {
		r := measure.Reading{Point: "gearbox.slope", Way: row.laid.Way(), Lay: row.laid.Lay()}
		if got := r.Along(row.shown); math.Abs(got-row.along) > 1e-9 {
			t.Errorf("%s: %v shown is a slope of %v, want %v", row.laid, row.shown, got, row.along)
		}
		sign := 1.0
		if (r.Way == 2) != (r.Lay == "face") {
			sign = -1
		}
		if got := slope + sign*zero; got != row.along {
			t.Errorf("%s: way %d, lay %s says %v, the finder %v", row.laid, r.Way, r.Lay, got, row.along)
		}
		if row.laid.Turned().Turned() != row.laid || row.laid.Turned().Way() == r.Way || row.laid.Turned().Lay() != r.Lay {
			t.Errorf("%s turned is %s", row.laid, row.laid.Turned())
		}
	}
	if len(shows) != len(Layings) {
		t.Errorf("%d rows for %d ways to lie", len(shows), len(Layings))
	}
}

func TestTheLieIsAskedOnceInASetup(t *testing.T) {
	m, _ := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	press(m, "2.4")
	m.Keep()
	wantPage(t, m, Laying)
	m.Lay(AlongAft)
	wantPage(t, m, Sides)
	m.Side(true)
	if r := m.Kept().Reading; r.Way != 2 || r.Lay != "along" {
		t.Errorf("kept way %d, lay %q", r.Way, r.Lay)
	}
	m.Next()
	press(m, "3")
	m.Keep()
	wantPage(t, m, Sides)
	m.Side(true)
	m.Again()
	m.Moved()
	m.Heeded()
	if l, said := m.Laid(); said || l != AlongAft {
		t.Errorf("in a new setup it lies %q, said %v", l, said)
	}
	press(m, "3")
	m.Keep()
	wantPage(t, m, Laying)
	m.Back()
	wantPage(t, m, Keypad)
	if got := m.Typed().Text(false); got != "3" {
		t.Errorf("typed is %q now", got)
	}
}

func TestTheLieIsChangedInTwoTaps(t *testing.T) {
	m, _ := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	press(m, "86")
	m.OpenLaying()
	m.Lay(RearUp)
	wantPage(t, m, Keypad)
	m.Keep()
	m.Side(true)
	wantPage(t, m, Result)
	if r := m.Kept().Reading; r.Way != 2 || r.Lay != "face" || r.Value.Token() != "86" {
		t.Errorf("kept %+v", r)
	}
}

// What was said is not asked again after the program was closed.
func TestTheLieIsRecalledFromTheReadings(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	press(m, "2.4")
	m.Keep()
	m.Lay(AlongAft)
	m.Side(true)
	again := New(book)
	if l, said := again.Laid(); !said || l != AlongAft {
		t.Errorf("lies %q, said %v", l, said)
	}
}

func TestOnlyAFinderIsAskedFor(t *testing.T) {
	m, _ := open(t)
	for _, point := range []string{"engine.rpm_max", "shaft.length", "shaft.phase", "gearbox.plan", "pinion.windup_drive"} {
		at(t, m, point, measure.OffBench)
		if m.TakesFinder() {
			t.Errorf("%s is read with a finder", point)
		}
	}
}

// zeroOf reads a slope both ways, guided, and returns the message of the zero.
func zeroOf(t *testing.T, m *Model, first, second string) checks.Message {
	t.Helper()
	m.OpenReversal(m.Tool())
	wantPage(t, m, Reverse)
	m.BeginReversal()
	for m.Page() == Bring || m.Page() == Caution {
		if m.Page() == Bring {
			m.Brought()
		} else {
			m.Heeded()
		}
	}
	wantPage(t, m, Keypad)
	press(m, first)
	m.Keep()
	m.Side(true)
	wantPage(t, m, Turn)
	m.Turned()
	wantPage(t, m, Keypad)
	press(m, second)
	m.Keep()
	m.Side(true)
	wantPage(t, m, Zero)
	found, ok := m.ZeroFound()
	if !ok {
		t.Fatal("no zero was found")
	}
	return found
}

// A finder that shows 4.5 and, turned in the same place, 3.5 shows half of the difference too much.
// Source: reversal of a spirit level, as on any level calibration sheet (from memory); worked apart.
func TestAReversalFindsTheZero(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	found := zeroOf(t, m, "4.5", "3.5")
	if zero, ok := found.Args[2].(float64); !ok || math.Abs(zero-0.5) > 1e-9 {
		t.Errorf("zero %v, want 0.5", found.Args[2])
	}
	list := book.Build().Readings
	if len(list) != 2 {
		t.Fatalf("%d readings", len(list))
	}
	a, b := list[0], list[1]
	if a.Way != 1 || b.Way != 2 || a.Point != b.Point || a.State() != b.State() || a.Setup != b.Setup || a.Lay != b.Lay ||
		a.Instrument != "finder" || b.Instrument != "finder" {
		t.Errorf("readings %+v and %+v", a, b)
	}
	if m.Reversing() != nil {
		t.Error("the reversal goes on")
	}
	m.Next()
	wantPage(t, m, Keypad)
	if l, said := m.Laid(); !said || l != AlongAft {
		t.Errorf("after it the finder lies %q", l)
	}
}

func TestAReversalOnAFaceFindsTheSameZero(t *testing.T) {
	m, _ := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	m.OpenLaying()
	m.Lay(RearUp)
	m.tools[measure.Angle] = "finder"
	m.laid["finder"] = laying{RearUp, m.stand.Setup}
	if err := m.addFinder(); err != nil {
		t.Fatal(err)
	}
	found := zeroOf(t, m, "85.5", "86.5")
	if zero, ok := found.Args[2].(float64); !ok || math.Abs(zero-0.5) > 1e-9 {
		t.Errorf("zero %v, want 0.5", found.Args[2])
	}
}

// At a stop without a finder, and before anything stands anywhere, the frame mark is the place.
func TestAReversalFindsItsPlace(t *testing.T) {
	m, _ := open(t)
	m.OpenReversal("")
	if got := m.Planned().Stop; got.Point.Key != "datum.slope" || got.State != measure.Hanging {
		t.Errorf("at %s %s", got.Point.Key, got.State)
	}
	m.Back()
	zeroOf(t, m, "0.5", "0.1")
}

// Two readings with the vehicle moved in between do not compare: the reversal ends.
func TestAMovedVehicleEndsTheReversal(t *testing.T) {
	for _, leave := range []func(*Model){
		func(m *Model) { m.Moved() },
		func(m *Model) { m.Later() },
		func(m *Model) { m.EndReversal() },
	} {
		m, _ := open(t)
		at(t, m, "gearbox.slope", measure.RideKerb)
		m.OpenReversal("")
		m.BeginReversal()
		press(m, "4.5")
		m.Keep()
		m.Side(true)
		wantPage(t, m, Turn)
		leave(m)
		if m.Reversing() != nil {
			t.Error("the reversal goes on")
		}
	}
}

// A first reading that is left stays kept; the plan that is left on its page changes nothing.
func TestAReversalThatIsLeft(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	m.OpenReversal("")
	m.Back()
	if m.Reversing() != nil || len(book.Build().Instruments) != 0 {
		t.Error("a plan that was left goes on")
	}
	m.OpenReversal("")
	m.BeginReversal()
	press(m, "4.5")
	m.Keep()
	m.Side(true)
	m.EndReversal()
	wantPage(t, m, Result)
	if len(book.Build().Readings) != 1 {
		t.Error("the first reading is gone")
	}
}

// A disk that takes no instrument says so.
func TestAReversalWithoutRoomIsSaid(t *testing.T) {
	_, book := open(t)
	m := New(full{book})
	m.OpenReversal("")
	m.BeginReversal()
	wantPage(t, m, Reverse)
	if m.Error() == nil {
		t.Error("nothing is said")
	}
}

func (full) Set(string, json.RawMessage) (logbook.Change, error) { return logbook.Change{}, errFull }
