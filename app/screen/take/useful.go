package take

import (
	"context"

	"yokebook/checks/remedy"
	"yokebook/measure"
	"yokebook/measure/route"
)

// useful is the order in which readings settle most. It is reckoned for one build and kept until that
// changes.
type useful struct {
	on    bool // the route goes by it
	build *measure.Build
	list  []remedy.Reading
}

// ByUse reports that the route goes by what settles most, else by its own order.
func (m *Model) ByUse() bool { return m.useful.on }

// TurnUse changes between the two orders.
func (m *Model) TurnUse() { m.useful.on = !m.useful.on }

// Ranked reports that what settles most is known for the build as it is now.
func (m *Model) Ranked() bool { return m.useful.build != nil && m.useful.build == m.log.Build() }

// Ranking is the task of reckoning it for the build as it is now. The task changes nothing, so that it may
// run beside; it errs with its context's error.
func (m *Model) Ranking() (of *measure.Build, task func(context.Context) ([]remedy.Reading, error)) {
	b := m.log.Build()
	return b, func(ctx context.Context) ([]remedy.Reading, error) { return remedy.Next(ctx, b) }
}

// SetRanking keeps what was reckoned for a build.
func (m *Model) SetRanking(of *measure.Build, list []remedy.Reading) {
	m.useful.build, m.useful.list = of, list
}

// Useful are the readings that settle something, the most useful first; nil until it is known.
func (m *Model) Useful() []remedy.Reading {
	if !m.Ranked() {
		return nil
	}
	return m.useful.list
}

// GoUseful goes to the stop of such a reading, or to finding a finder's zero where that is it.
func (m *Model) GoUseful(r remedy.Reading) {
	if r.Kind == remedy.ReadTurned {
		m.OpenReversal(r.Instrument)
		return
	}
	if s, ok := m.findTagged(r.Point, r.State, m.tagOf(r.Point)); ok {
		m.Go(s)
	}
}

// mostUseful is the stop of the reading that settles most with the tools at hand, where the route goes by
// that and it is known. What takes a better tool stands in the list: it would lead here again and again.
func (m *Model) mostUseful() (route.Stop, bool) {
	if !m.useful.on {
		return route.Stop{}, false
	}
	for _, r := range m.Useful() {
		if r.Kind == remedy.ReadBetter {
			continue
		}
		if s, ok := m.findTagged(r.Point, r.State, m.tagOf(r.Point)); ok && s.Skipped == nil {
			return s, true
		}
	}
	return route.Stop{}, false
}

// ReasonOf is the reading that a stop is gone to for its use; false where it is gone to by the route.
func (m *Model) ReasonOf(s route.Stop) (remedy.Reading, bool) {
	if !m.useful.on {
		return remedy.Reading{}, false
	}
	for _, r := range m.Useful() {
		if r.Point == s.Point.Key && r.State == s.State && r.Kind != remedy.ReadBetter {
			return r, true
		}
	}
	return remedy.Reading{}, false
}

// tagOf is the tag of the newest obstacle, for what is still to be read of it.
func (m *Model) tagOf(point string) string {
	if p, _ := measure.PointOf(point); p.Group != measure.GroupClearance {
		return ""
	}
	tag := ""
	for _, r := range m.log.Build().Readings {
		if p, _ := measure.PointOf(r.Point); p.Group == measure.GroupClearance {
			tag = r.Tag
		}
	}
	return tag
}
