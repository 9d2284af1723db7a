package checks

import (
	"cmp"
	"math"
	"slices"

	"yokebook/checks/limits"
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// repeat is one point read several times over in one state, setup and height.
type repeat struct {
	point measure.Point
	state measure.State
	list  []measure.Reading
}

// repeatsOf gathers what was measured at least twice; of several setups the newest counts, as it
// does for the other checks.
func (e *engine) repeatsOf() []repeat {
	var out []repeat
	for _, p := range measure.Points {
		if len(e.byPoint[p.Key]) < 2 {
			continue
		}
		var states []measure.State
		byState := map[measure.State][]measure.Reading{}
		for _, r := range e.byPoint[p.Key] {
			if r.Basis != measure.Measured || r.Tag != "" || p.Quantity == measure.Text {
				continue
			}
			if byState[r.State()] == nil {
				states = append(states, r.State())
			}
			byState[r.State()] = append(byState[r.State()], r)
		}
		for _, s := range states {
			list := byState[s]
			newest := slices.MaxFunc(list, func(a, b measure.Reading) int { return cmp.Compare(a.Setup, b.Setup) }).Setup
			list = slices.DeleteFunc(list, func(r measure.Reading) bool { return r.Setup != newest })
			if list, _ = e.sameHeight(list, s); len(list) > 1 {
				out = append(out, repeat{p, s, list})
			}
		}
	}
	return out
}

// readingSpread asks whether repeats agree. Two may differ by the repeatability limit of the tool;
// of three to ten the one that stands apart is marked by Dixon's test and still counts: nothing is
// ever left out unless a person strikes it. A build without repeats has no such finding.
func (e *engine) readingSpread(c *Check) []Finding {
	var out []Finding
	for _, g := range e.repeatsOf() {
		out = append(out, e.spreadOf(c, g))
	}
	return out
}

func (e *engine) spreadOf(c *Check, g repeat) Finding {
	f := Finding{Check: c.Key, Subject: g.point.Key, State: g.state, Unit: string(g.point.Quantity.Base()), Verdict: Clear}
	var values []float64
	step := 0.0
	for _, r := range g.list {
		values = append(values, e.along(r))
		f.Used = union(f.Used, []measure.ID{r.ID})
		step = math.Max(step, e.toolOf(r, g.point.Quantity).resolution)
	}
	span := slices.Max(values) - slices.Min(values)
	f.Value, f.Low, f.High = &span, &span, &span
	if len(values) == 2 {
		e.pairOf(&f, g, span, step)
		return f
	}
	if i, _ := uncertain.Outlier(values, step); i >= 0 {
		id := g.list[i].ID
		f.Verdict = Unsure
		f.Weakest = &Weakest{Input: g.point.Key, Reading: &id, Share: 1}
		f.Shares = []Weakest{*f.Weakest}
		f.Advice = Message{MsgOutlier, []any{g.point.Key, values[i], string(id)}}
	}
	return f
}

// pairOf compares the difference of two readings with the repeatability limit: 2.8 standard
// deviations of one reading, nothing within two display steps.
func (e *engine) pairOf(f *Finding, g repeat, span, step float64) {
	a, b := e.ownDoubt(g.list[0]), e.ownDoubt(g.list[1])
	most := math.Max(float64(given("reading.spread")*math.Sqrt((float64(a*a)+float64(b*b))/2)), 2*step)
	row, _ := limits.Of("reading.spread")
	f.Limit = &Limit{Key: row.Key, Value: most, Unit: f.Unit, Sense: string(limits.Max), Source: row.Source}
	if span > most+float64(rounding*most) {
		f.Verdict = Unsure
		f.Advice = Message{MsgThirdReading, []any{g.point.Key}}
	}
}
