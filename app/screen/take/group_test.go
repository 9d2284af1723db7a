package take

import (
	"testing"

	"yokebook/measure"
)

// enter puts a group on the route and goes to its first stop, past what it warns of.
func enter(m *Model, g measure.Group) {
	m.OpenGroup(g)
	m.EnterGroup()
	pass(m)
}

// pass brings the vehicle there and heeds cautions.
func pass(m *Model) {
	for m.Page() == Bring || m.Page() == Caution {
		if m.Page() == Bring {
			m.Brought()
		} else {
			m.Heeded()
		}
	}
}

func groupOf(t *testing.T, m *Model, g measure.Group) Group {
	t.Helper()
	for _, have := range m.Groups() {
		if have.Group == g {
			return have
		}
	}
	t.Fatalf("no group %s", g)
	return Group{}
}

// A new build is asked for its shaft line alone; each group says how much it holds and what waits.
func TestNoGroupIsOnTheRouteByItself(t *testing.T) {
	m, _ := open(t)
	for _, g := range m.Groups() {
		if g.Chosen || len(g.Stops) == 0 {
			t.Errorf("%s: chosen %v, %d stops", g.Group, g.Chosen, len(g.Stops))
		}
	}
	clutch := groupOf(t, m, measure.GroupClutch)
	waits := map[string]bool{}
	for _, f := range clutch.Waits {
		waits[f.Check] = true
	}
	if !waits["clutch.release"] || !waits["clutch.spigot"] || waits["joint.residual"] {
		t.Errorf("waiting for the clutch stack: %v", waits)
	}
}

// A group is walked stop by stop; then work goes back to the shaft line.
func TestAGroupIsWalkedToItsEnd(t *testing.T) {
	m, _ := open(t)
	enter(m, measure.GroupRetention)
	want := len(groupOf(t, m, measure.GroupRetention).Stops)
	for n := 0; ; n++ {
		if g, ok := m.Walking(); !ok || g != measure.GroupRetention {
			if n != want {
				t.Errorf("left after %d stops of %d", n, want)
			}
			break
		}
		if at, of := m.Place(); at != n+1 || of != want {
			t.Errorf("stop %d of %d, want %d of %d", at, of, n+1, want)
		}
		m.Skip("later")
		pass(m)
	}
	if m.Stop().Point.Key != "engine.rpm_max" {
		t.Errorf("goes on at %s", m.Stop().Point.Key)
	}
	if g := groupOf(t, m, measure.GroupRetention); g.Done() != want || !g.Chosen {
		t.Errorf("%d of %d done, chosen %v", g.Done(), want, g.Chosen)
	}
}

// What was begun is gone on with once the shaft line is done, and survives the end of the program.
func TestABegunGroupStaysOnTheRoute(t *testing.T) {
	m, book := open(t)
	enter(m, measure.GroupMass)
	m.Go(m.Stops()[0])
	again := Resume(book, m.Where())
	for i := 0; ; i++ {
		if _, walking := again.Walking(); walking {
			break
		}
		if again.Page() == Run || i > 60 {
			t.Fatal("the shaft line ended without the group")
		}
		again.Skip("later")
		pass(again)
	}
	again.LeaveGroup(measure.GroupMass)
	if again.Page() != Run || groupOf(t, again, measure.GroupMass).Chosen {
		t.Errorf("page %s after leaving the group", again.Page())
	}
}

// Lifting is warned of once in a setup, also after the program was started again.
func TestLiftingIsWarnedOfOnce(t *testing.T) {
	m, book := open(t)
	m.OpenGroup(measure.GroupMass)
	m.EnterGroup()
	wantPage(t, m, Caution)
	if got := m.Cautions(); len(got) != 1 || got[0] != measure.CautionLift {
		t.Errorf("cautions %v", got)
	}
	m.Heeded()
	again := Resume(book, m.Where())
	wantPage(t, again, Keypad)
	again.Later()
	wantPage(t, again, Keypad)
}

// Several obstacles are told apart: each has its own stops, and readings of one don't fill another's.
func TestObstaclesAreToldApart(t *testing.T) {
	m, book := open(t)
	enter(m, measure.GroupClearance)
	for n := 0; n < 20 && (m.Page() == Keypad || m.Page() == Codes); n++ {
		if g, _ := m.Walking(); g != measure.GroupClearance {
			break
		}
		if m.Page() == Codes {
			m.Answer(1)
		} else {
			press(m, "120")
			keep(m)
		}
		if m.Page() == Doubts {
			m.KeepAllTheSame()
		}
		m.Next()
		pass(m)
	}
	for _, r := range book.Build().Readings {
		if r.Tag != "1" {
			t.Errorf("%s is tagged %q", r.Point, r.Tag)
		}
	}
	m.OpenGroup(measure.GroupClearance)
	m.EnterGroup()
	wantPage(t, m, Obstacles)
	list := m.ObstacleList()
	if len(list) != 2 || list[1].Tag != "2" || (Group{Stops: list[0].Stops}).Done() != 3 || (Group{Stops: list[1].Stops}).Done() != 0 {
		t.Fatalf("obstacles %+v", list)
	}
	m.EnterObstacle("2")
	pass(m)
	if m.Stop().Tag != "2" || m.Stop().Taken != 0 {
		t.Errorf("at %+v", m.Stop())
	}
	if again := Resume(book, m.Where()); again.Stop().Tag != "2" {
		t.Errorf("after a kill at obstacle %q", again.Stop().Tag)
	}
}

// A stop of one obstacle is left out for that one alone, and asked for again once that is taken back.
func TestAStopOfOneObstacleIsLeftOutAndAskedForAgain(t *testing.T) {
	m, book := open(t)
	enter(m, measure.GroupClearance)
	first := m.Stop()
	if _, out := m.LeftOut(); out || first.Tag != "1" {
		t.Fatalf("at %+v, left out", first)
	}
	m.Skip("tank in the way")
	if s := book.Build().Skips; len(s) != 1 || s[0].Tag != "1" || s[0].Reason != "tank in the way" {
		t.Fatalf("skips %+v", s)
	}
	if m.Stop().Tag != "1" || m.Stop().Point.Key == first.Point.Key {
		t.Errorf("after it at %+v", m.Stop())
	}
	if s := m.groupStops(measure.GroupClearance, "2")[0]; s.Done() {
		t.Errorf("left out of another obstacle: %+v", s)
	}
	m.Go(first)
	if why, out := m.LeftOut(); !out || why.Reason != "tank in the way" {
		t.Errorf("left out: %v, %+v", out, why)
	}
	m.AskAgain()
	if _, out := m.LeftOut(); out || m.Stop().Point.Key != first.Point.Key || m.Stop().Done() {
		t.Errorf("asked for again, at %+v", m.Stop())
	}
}

// A struck reading of a group is used again from the result page.
func TestAStrikeIsUndoneOnItsResult(t *testing.T) {
	m, book := open(t)
	enter(m, measure.GroupClutch)
	first := m.Stop().Point.Key
	press(m, "12")
	keep(m)
	m.StrikeLast("slipped")
	if next, ok := m.Wanted(m.Kept().Change); !ok || next.Point.Key != first {
		t.Errorf("after the strike comes %s", next.Point.Key)
	}
	m.Unstrike()
	if got := len(book.Build().CurrentReadings(func(measure.Reading) string { return "" })); got != 1 || m.Kept().Struck {
		t.Errorf("%d readings count", got)
	}
}

// What is entered as built is a reading of the shaft builder, as the file says.
func TestWhatWasBuiltIsReadByTheBuilder(t *testing.T) {
	m, _ := open(t)
	enter(m, measure.GroupBuilt)
	for _, d := range []int{1, 0, 1, 0} {
		m.Digit(d)
	}
	m.Keep()
	if k := m.Kept(); k == nil || k.Reading.By != "builder" || k.Reading.Point != "as_built.closed_length" {
		t.Errorf("kept %+v on page %s", k, m.Page())
	}
}
