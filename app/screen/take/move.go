package take

import (
	"fmt"
	"slices"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/route"
)

// Go goes to a stop. What was typed at another point is dropped. A stop that wants the vehicle to
// stand another way shows the page Bring first, the first stop under a vehicle the page Caution.
func (m *Model) Go(s route.Stop) {
	m.leaveCorrection()
	if s.Point.Key != m.stop.Point.Key || s.Tag != m.stop.Tag {
		m.typed, m.written = Typed{}, ""
	}
	m.stop = s
	m.leaveReversal()
	switch {
	case s.State.Ride != measure.Bench && s.State != m.stand.State:
		m.show(Bring)
	case len(m.Cautions()) > 0:
		m.show(Caution)
	default:
		m.show(m.pageOf(s))
	}
}

// pageOf is the page that a stop is answered on.
func (m *Model) pageOf(s route.Stop) Page {
	switch {
	case s.Point.Quantity == measure.Text:
		return Write
	case s.Point.Quantity == measure.Answer, len(s.Point.Codes) > 0:
		return Codes
	}
	return Keypad
}

// Next goes to the stop that the newest reading leads to.
func (m *Model) Next() {
	if m.kept != nil {
		m.goOn(m.kept.Change)
	}
}

// goOn goes to the next stop, or shows that the route is done.
func (m *Model) goOn(c logbook.Change) {
	if next, ok := m.Wanted(c); ok {
		m.Go(next)
		return
	}
	m.finish()
}

// finish shows that the route is done. What follows is the first run, so what can hurt there comes
// first, once in a setup.
func (m *Model) finish() {
	if m.warned[m.runWarning()] {
		m.show(Done)
		return
	}
	m.show(Run)
}

// HeedRun answers the page Run.
func (m *Model) HeedRun() {
	if m.page == Run {
		m.warned[m.runWarning()] = true
		m.show(Done)
	}
}

func (m *Model) runWarning() string {
	return fmt.Sprintf("%s|%d|", measure.CautionFirstRun, m.stand.Setup)
}

// Wanted is the stop that a change leads to: the next one of the group at hand, else of the shaft
// line, else of a group that was begun. Stops that nobody must take are not gone to by themselves.
func (m *Model) Wanted(c logbook.Change) (route.Stop, bool) {
	if s, ok := m.struckStop(); ok {
		return s, true
	}
	if s, ok := m.mostUseful(); ok {
		return s, true
	}
	if _, walking := m.Walking(); walking {
		if c.More && c.Next.Point.Key == m.stop.Point.Key && c.Next.State == m.stop.State {
			return c.Next, true
		}
		if next, ok := route.Next(m.stops(), m.stop.Point.Key, m.stop.State); ok {
			return next, true
		}
	}
	if next, ok := m.wantedOfLine(c); ok {
		return next, true
	}
	return m.begunGroup()
}

// struckStop is the stop of a group whose reading was just struck, to be read again.
func (m *Model) struckStop() (route.Stop, bool) {
	if m.kept == nil || !m.kept.Struck {
		return route.Stop{}, false
	}
	r := m.kept.Reading
	p, _ := measure.PointOf(r.Point)
	if _, of := route.GroupOf(p); !of {
		return route.Stop{}, false
	}
	s, ok := m.findTagged(r.Point, r.State(), r.Tag)
	return s, ok && !s.Done()
}

// wantedOfLine is the stop of the shaft line that a change leads to.
func (m *Model) wantedOfLine(c logbook.Change) (route.Stop, bool) {
	if !c.More || !c.Next.Point.Optional {
		return c.Next, c.More
	}
	var wanted []route.Stop
	after := false
	var before []route.Stop
	for _, s := range m.log.Stops() {
		after = after || s.Point.Key == c.Next.Point.Key && s.State == c.Next.State
		switch {
		case s.Point.Optional || s.Done():
		case after:
			wanted = append(wanted, s)
		default:
			before = append(before, s)
		}
	}
	if wanted = append(wanted, before...); len(wanted) == 0 {
		return route.Stop{}, false
	}
	return wanted[0], true
}

// leaveGroup goes from a stop of a group to the next one elsewhere.
func (m *Model) leaveGroup() {
	var c logbook.Change
	c.Next, c.More = route.Next(m.log.Stops(), "", measure.State{})
	next, ok := m.wantedOfLine(c)
	if !ok {
		next, ok = m.begunGroup()
	}
	if !ok {
		m.finish()
		return
	}
	m.Go(next)
}

// Later and Earlier go along the route, done or not, and stay at its ends.
func (m *Model) Later() { m.step(1) }

// Earlier goes to the stop before this one.
func (m *Model) Earlier() { m.step(-1) }

func (m *Model) step(by int) {
	stops := m.stops()
	at := -1
	for i, s := range stops {
		if s.Point.Key == m.stop.Point.Key && s.State == m.stop.State {
			at = i
		}
	}
	if at+by >= 0 && at+by < len(stops) {
		m.Go(stops[at+by])
	}
}

// Stops is the whole route.
func (m *Model) Stops() []route.Stop { return m.log.Stops() }

// Left counts the stops that are wanted in a state and not done.
func (m *Model) Left(s measure.State) int {
	n := 0
	for _, stop := range m.log.Stops() {
		if stop.State == s && !stop.Done() && !stop.Point.Optional {
			n++
		}
	}
	return n
}

// Place says which stop of how many this is, of its group or of the shaft line; 0 for a stop that
// neither has.
func (m *Model) Place() (at, of int) {
	stops := m.stops()
	for i, s := range stops {
		if s.Point.Key == m.stop.Point.Key && s.State == m.stop.State {
			at = i + 1
		}
	}
	return at, len(stops)
}

// find returns a stop of the route, or one made for the purpose where the route has none there.
func (m *Model) find(point string, s measure.State) (route.Stop, bool) {
	return m.findTagged(point, s, m.stop.Tag)
}

// findTagged is find for one of several obstacles.
func (m *Model) findTagged(point string, s measure.State, tag string) (route.Stop, bool) {
	p, ok := measure.PointOf(point)
	stops := m.log.Stops()
	if p.Group != measure.GroupClearance {
		tag = ""
	}
	if g, of := route.GroupOf(p); ok && of {
		stops = m.groupStops(g, tag)
	}
	for _, stop := range stops {
		if stop.Point.Key == point && stop.State == s {
			return stop, true
		}
	}
	return route.Stop{Point: p, State: s, Tag: tag}, ok
}

// SetState says how the vehicle stands. Another state than before raises the setup, since the
// vehicle was jacked, let down or loaded, and its height is not known any more. The stop becomes
// the same point in the new state; what was typed stays. Off the vehicle says so of the part at
// hand and leaves the vehicle where it is.
func (m *Model) SetState(s measure.State) {
	if s.Ride != measure.Bench && s != m.stand.State {
		m.stand.State = s
		m.stand.Height, m.height = measure.Value{}, Typed{}
		m.raiseSetup()
	}
	if stop, ok := m.find(m.stop.Point.Key, s); ok {
		m.Go(stop)
	}
}

// Moved says that the vehicle was moved, jacked or let down, though it stands in the same state.
func (m *Model) Moved() {
	m.stand.Height, m.height = measure.Value{}, Typed{}
	m.raiseSetup()
	m.Go(m.stop)
}

// raiseSetup starts a new setup unless nothing was read in the present one yet.
func (m *Model) raiseSetup() {
	for _, r := range m.log.Build().Readings {
		if r.Setup == m.stand.Setup && r.Ride != measure.Bench {
			m.stand.Setup = m.log.NextSetup()
			return
		}
	}
}

// Brought answers the page Bring: the vehicle now stands as the stop wants it.
func (m *Model) Brought() { m.SetState(m.stop.State) }

// StayAsItIs answers the page Bring: goes to what can still be read as the vehicle stands, or shows
// the route when that is nothing.
func (m *Model) StayAsItIs() {
	for _, s := range append(m.stops(), m.log.Stops()...) {
		if !s.Done() && (s.State == m.stand.State || s.State.Ride == measure.Bench) {
			m.Go(s)
			return
		}
	}
	m.open(Route)
}

// Cautions are the keys of the cautions that were not shown yet for this stop as the vehicle
// stands: under it once per setup and state, and the point's own.
func (m *Model) Cautions() []string {
	var out []string
	ask := func(key string) {
		if key != "" && !m.warned[m.warning(key)] && !slices.Contains(out, key) {
			out = append(out, key)
		}
	}
	onBench := m.stop.State.Ride == measure.Bench
	if !onBench {
		ask(measure.CautionUnder)
		ask(m.stop.State.Caution())
	}
	if own := m.stop.Point.Caution; !onBench || own != measure.CautionUnder {
		ask(own)
	}
	return out
}

// Heeded answers the page Caution and goes on to the stop.
func (m *Model) Heeded() {
	for _, key := range m.Cautions() {
		m.warned[m.warning(key)] = true
	}
	m.show(m.pageOf(m.stop))
}

func (m *Model) warning(key string) string {
	return fmt.Sprintf("%s|%d|%s", key, m.stand.Setup, m.stop.State)
}
