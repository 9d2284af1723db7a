package take

import (
	"context"
	"errors"
	"slices"
	"testing"

	"yokebook/app/logbook"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// rank reckons what settles most, as the window does beside itself.
func rank(t *testing.T, m *Model) []remedy.Reading {
	t.Helper()
	of, task := m.Ranking()
	list, err := task(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	m.SetRanking(of, list)
	return list
}

// slopesRead reads the slopes of the line at ride height; plan angles and phase stay open.
func slopesRead(t *testing.T, m *Model) {
	t.Helper()
	for _, r := range []struct{ point, value string }{{"gearbox.slope", "3.0"}, {"shaft.slope", "5.4"}, {"pinion.slope", "3.1"}} {
		at(t, m, r.point, measure.RideKerb)
		press(m, r.value)
		keep(m)
		m.Side(true)
		if m.Page() == Doubts {
			m.KeepAllTheSame()
		}
	}
}

// By its use the route offers first what settles most, as long as it is known for the build as it is; by its
// own order it goes on as it did.
func TestTheRouteOffersFirstWhatSettlesMost(t *testing.T) {
	m, book := open(t)
	slopesRead(t, m)
	own, _ := m.Wanted(m.Kept().Change)
	if m.ByUse() || m.Ranked() || m.Useful() != nil {
		t.Error("goes by use before anybody asked")
	}
	list := rank(t, m)
	if len(list) == 0 || !m.Ranked() {
		t.Fatalf("%d readings are ranked", len(list))
	}
	if still, _ := m.Wanted(m.Kept().Change); still.Point.Key != own.Point.Key {
		t.Errorf("the route's own order leads to %s, was %s", still.Point.Key, own.Point.Key)
	}
	m.TurnUse()
	next, ok := m.Wanted(m.Kept().Change)
	list = slices.DeleteFunc(slices.Clone(list), func(r remedy.Reading) bool { return r.Kind == remedy.ReadBetter })
	if !ok || next.Point.Key != list[0].Point || next.State != list[0].State {
		t.Errorf("by use the route leads to %s, the first of the ranking is %s", next.Point.Key, list[0].Point)
	}
	if why, ok := m.ReasonOf(next); !ok || why.Point != next.Point.Key {
		t.Errorf("reason %+v", why)
	}
	m.GoUseful(list[0])
	if list[0].Kind != remedy.ReadTurned && m.Stop().Point.Key != list[0].Point {
		t.Errorf("gone to %s, not %s", m.Stop().Point.Key, list[0].Point)
	}
	value, _ := measure.NumberValue("0")
	if _, err := book.Keep(logbook.Entry{Point: "shaft.phase", Value: value, Unit: "deg", State: measure.OffBench, Setup: 1}); err != nil {
		t.Fatal(err)
	}
	if m.Ranked() || m.Useful() != nil {
		t.Error("the ranking of the build before stands after a new reading")
	}
	if after, _ := m.Wanted(m.Kept().Change); after.Point.Key != own.Point.Key {
		t.Errorf("until it is reckoned again the route leads to %s, not %s", after.Point.Key, own.Point.Key)
	}
}

func TestReckoningWhatSettlesMostEndsWithItsContext(t *testing.T) {
	m, _ := open(t)
	slopesRead(t, m)
	_, task := m.Ranking()
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if list, err := task(ctx); !errors.Is(err, context.Canceled) || list != nil {
		t.Errorf("%v, %v", list, err)
	}
}

// The order that was chosen is there again after the program was killed.
func TestTheOrderOfTheRouteIsThereAgain(t *testing.T) {
	m, book := open(t)
	if Resume(book, m.Where()).ByUse() {
		t.Error("by use, though nobody chose it")
	}
	m.TurnUse()
	if !Resume(book, m.Where()).ByUse() {
		t.Error("the choice was lost")
	}
}
