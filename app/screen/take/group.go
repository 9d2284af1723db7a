package take

import (
	"slices"
	"strconv"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/route"
)

// Group is a group of stops beyond the shaft line, as far as it was read.
type Group struct {
	Group  measure.Group
	Stops  []route.Stop
	Chosen bool             // on the route of this build, on this device
	Waits  []checks.Finding // findings that wait for its readings, one for each check
}

// Done counts the stops that need no more.
func (g Group) Done() int {
	n := 0
	for _, s := range g.Stops {
		if s.Done() {
			n++
		}
	}
	return n
}

// Groups lists what can be measured beyond the shaft line.
func (m *Model) Groups() []Group {
	var out []Group
	for _, g := range route.Groups(m.Build()) {
		out = append(out, m.group(g))
	}
	return out
}

func (m *Model) group(g measure.Group) Group {
	out := Group{Group: g, Chosen: slices.Contains(m.chosen, g)}
	for _, tag := range m.tagsOf(g) {
		out.Stops = append(out.Stops, m.groupStops(g, tag)...)
	}
	seen := map[string]bool{}
	for _, f := range m.log.Findings() {
		if f.Verdict == checks.Waiting && !seen[f.Check] && waitsFor(f, g) {
			seen[f.Check] = true
			out.Waits = append(out.Waits, f)
		}
	}
	return out
}

// waitsFor reports that a finding's check is made from points of a group.
func waitsFor(f checks.Finding, g measure.Group) bool {
	c, _ := checks.CheckOf(f.Check)
	return slices.ContainsFunc(c.Points, func(key string) bool {
		p, _ := measure.PointOf(key)
		of, ok := route.GroupOf(p)
		return ok && of == g
	})
}

// tagsOf are the obstacles that a build has readings of, at least a first one; in every other group
// the one empty tag.
func (m *Model) tagsOf(g measure.Group) []string {
	if g != measure.GroupClearance {
		return []string{""}
	}
	if tags := route.Obstacles(m.Build(), document.Hash); len(tags) > 0 {
		return tags
	}
	return []string{"1"}
}

func (m *Model) groupStops(g measure.Group, tag string) []route.Stop {
	return route.GroupStops(m.Build(), document.Hash, g, m.stand.State, tag)
}

// Walking is the group that the stop at hand belongs to; false on the shaft line.
func (m *Model) Walking() (measure.Group, bool) {
	g, ok := route.GroupOf(m.stop.Point)
	return g, ok && g != ""
}

// OpenGroups shows what can be measured beyond the shaft line.
func (m *Model) OpenGroups() { m.open(Groups) }

// OpenGroup shows one group.
func (m *Model) OpenGroup(g measure.Group) {
	m.looked = g
	m.open(OneGroup)
}

// LookedAt is the group of the page OneGroup.
func (m *Model) LookedAt() Group { return m.group(m.looked) }

// EnterGroup puts the group of the page OneGroup on the route and goes to its first open stop, or to
// its first where all are read. Where there are obstacles already it asks which one.
func (m *Model) EnterGroup() {
	g := m.looked
	if !slices.Contains(m.chosen, g) {
		m.chosen = append(m.chosen, g)
	}
	if g == measure.GroupClearance && len(route.Obstacles(m.Build(), document.Hash)) > 0 {
		m.open(Obstacles)
		return
	}
	m.enter(m.groupStops(g, m.tagsOf(g)[0]))
}

func (m *Model) enter(stops []route.Stop) {
	next, ok := route.Next(stops, "", measure.State{})
	switch {
	case ok:
		m.Go(next)
	case len(stops) > 0:
		m.Go(stops[0])
	}
}

// LeaveGroup takes a group off the route again; what was read of it stays. From a stop of the group
// it goes back to the shaft line.
func (m *Model) LeaveGroup(g measure.Group) {
	m.chosen = slices.DeleteFunc(m.chosen, func(c measure.Group) bool { return c == g })
	if at, ok := m.Walking(); ok && at == g {
		m.leaveGroup()
	}
}

// RouteLine is a stop in the list of the whole route, or the heading over a group that is on it.
type RouteLine struct {
	Group measure.Group // of a heading; "" for a stop
	Stop  route.Stop
}

// Route is the whole route: the shaft line, then the groups that were put on it.
func (m *Model) Route() []RouteLine {
	var lines []RouteLine
	for _, s := range m.log.Stops() {
		lines = append(lines, RouteLine{Stop: s})
	}
	for _, g := range m.chosen {
		lines = append(lines, RouteLine{Group: g})
		for _, s := range m.group(g).Stops {
			lines = append(lines, RouteLine{Stop: s})
		}
	}
	return lines
}

// Obstacle is one obstacle beside the shaft.
type Obstacle struct {
	Tag   string
	Stops []route.Stop
}

// ObstacleList are the obstacles that were begun, and last a further one that was not.
func (m *Model) ObstacleList() []Obstacle {
	tags := route.Obstacles(m.Build(), document.Hash)
	for n := 1; ; n++ {
		if fresh := strconv.Itoa(n); !slices.Contains(tags, fresh) {
			tags = append(tags, fresh)
			break
		}
	}
	var out []Obstacle
	for _, tag := range tags {
		out = append(out, Obstacle{tag, m.groupStops(measure.GroupClearance, tag)})
	}
	return out
}

// EnterObstacle goes to the stops of one obstacle.
func (m *Model) EnterObstacle(tag string) { m.enter(m.groupStops(measure.GroupClearance, tag)) }

// stops are those that the stop at hand belongs to: of its group, else of the shaft line.
func (m *Model) stops() []route.Stop {
	if g, ok := m.Walking(); ok {
		return m.groupStops(g, m.stop.Tag)
	}
	return m.log.Stops()
}

// LeftOfGroup counts the open stops of the group at hand, of obstacles those of the one at hand.
func (m *Model) LeftOfGroup() int {
	n := 0
	for _, s := range m.stops() {
		if !s.Done() {
			n++
		}
	}
	return n
}

// begunGroup is the first open stop of the groups on the route.
func (m *Model) begunGroup() (route.Stop, bool) {
	for _, g := range m.chosen {
		for _, tag := range m.tagsOf(g) {
			if next, ok := route.Next(m.groupStops(g, tag), "", measure.State{}); ok {
				return next, true
			}
		}
	}
	return route.Stop{}, false
}
