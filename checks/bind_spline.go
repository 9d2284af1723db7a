package checks

import (
	"math"

	"yokebook/checks/spline"
	"yokebook/measure"
)

// splinePair is a male and a female part that go together.
type splinePair struct{ male, female string }

var (
	inputPair  = splinePair{"input_shaft", "disc_hub"}
	outputPair = splinePair{"output_shaft", "slip_yoke"}
	slipPair   = splinePair{"slip_male", "slip_female"}
)

// pointsOf lists dimensions of both parts.
func (p splinePair) pointsOf(dimensions ...string) []string {
	var keys []string
	for _, d := range dimensions {
		keys = append(keys, p.male+"."+d, p.female+"."+d)
	}
	return keys
}

// in reports whether a layout has both parts.
func (p splinePair) in(l measure.Layout) bool {
	a, _ := measure.PointOf(p.male + ".splines")
	b, _ := measure.PointOf(p.female + ".splines")
	return a.In(l) && b.In(l)
}

var splineRows = []Check{
	{Key: "spline.input", Group: "spline", Points: inputPair.pointsOf("splines", "major", "minor", "length"), Unit: "mm", whole: matched(inputPair)},
	{Key: "spline.output", Group: "spline", Points: outputPair.pointsOf("splines", "major", "minor", "length"), Unit: "mm", whole: matched(outputPair)},
	{Key: "spline.slip", Group: "spline", Points: slipPair.pointsOf("splines", "major", "minor", "length"), Unit: "mm", whole: matched(slipPair)},
	{Key: "spline.capacity", Group: "spline", Points: capacityPoints(), Limit: "spline.capacity", perPart: splineCapacity,
		subjects: malesOf, advise: always(MsgStrongerSpline)},
	{Key: "spline.identity", Group: "spline", Points: identityPoints(), Unit: "count", perPart: splineIdentity, subjects: splineParts},
}

// malesOf names the male half of every pair of a layout.
func malesOf(l measure.Layout) []string {
	var names []string
	for _, p := range []splinePair{inputPair, outputPair, slipPair} {
		if p.in(l) {
			names = append(names, p.male)
		}
	}
	return names
}

func pairOf(male string) splinePair {
	for _, p := range []splinePair{inputPair, outputPair} {
		if p.male == male {
			return p
		}
	}
	return slipPair
}

// matched compares the two halves of a pair. Equal counts and agreeing diameters prove no fit: the
// lash between the flanks is not measured, which the finding always says.
func matched(p splinePair) func(*engine, *Check) []Finding {
	return func(e *engine, c *Check) []Finding {
		if !p.in(e.build.Layout) {
			return nil
		}
		a := &asked{e: e}
		counts, counted := a.readAll(p.pointsOf("splines")...)
		unequal := counted && counts[0].best != counts[1].best
		if unequal {
			a.counts(counts)
		}
		sized := a.diameters(p)
		a.engagement(p)
		if counted && !unequal {
			a.counts(counts)
		}
		f := a.finding(c, "")
		if counted && !unequal && sized && f.Verdict != Out {
			f.Notes = append(f.Notes, Message{Key: MsgTryByHand})
		}
		if counted && int(counts[0].best)%2 == 1 {
			f.Notes = append(f.Notes, Message{MsgOddCount, []any{p.male + ".major"}})
		}
		return []Finding{f}
	}
}

// counts demands equal counts.
func (a *asked) counts(counts []*quantity) {
	differ := a.e.combine("counts differ", 1, func(x, out []float64) { out[0] = x[0] - x[1] }, counts...)[0]
	a.ask(differ, "spline.count", Message{MsgOtherSpline, []any{counts[0].best, counts[1].best}})
}

// diameters demands that tips clear roots by something, and by no more than one size of spline has.
func (a *asked) diameters(p splinePair) bool {
	sizes, whole := a.readAll(p.pointsOf("major", "minor")...)
	overlap := a.e.setting("spline.overlap")
	for i, d := range []string{"major", "minor"} {
		male, female := sizes[2*i], sizes[2*i+1]
		if male == nil || female == nil {
			continue
		}
		room := a.e.combine("room", 1, func(x, out []float64) { out[0] = x[1] - x[0] }, male, female)[0]
		names := []any{p.male + "." + d, p.female + "." + d}
		a.askWorked(room, "spline.overlap", "mm", "min", exact(-overlap), Message{MsgSplineTight, names})
		if sizes[0] == nil || sizes[2] == nil {
			continue
		}
		share, worn := a.e.setting("spline.loose"), a.e.setting("spline.made_under")
		most := a.e.combine("loosest", 1, func(x, out []float64) {
			out[0] = float64(x[2]*math.Max(0, x[0]-x[1])) + x[3]
		}, sizes[0], sizes[2], exact(share), exact(worn))[0]
		a.askWorked(room, "spline.loose", "mm", "max", most, Message{MsgSplineLoose, names})
	}
	return whole
}

// engagement demands that the shorter half is long enough for its teeth to be as strong as the shaft;
// where a length was not read it asks for nothing.
func (a *asked) engagement(p splinePair) {
	e := a.e
	male, female := e.bench(p.male+".length"), e.bench(p.female+".length")
	root, pitch := e.bench(p.male+".minor"), e.pitchOf(p)
	if male == nil || female == nil || root == nil || pitch == nil {
		return
	}
	engaged := e.combine("shorter", 1, func(x, out []float64) { out[0] = math.Min(x[0], x[1]) }, male, female)[0]
	least := e.combine("equal shear", 1, func(x, out []float64) {
		out[0] = orNone(spline.EqualShearLength(x[0], x[1], x[2]))
	}, root, pitch, exact(e.setting("spline.share")))[0]
	a.askWorked(engaged, "spline.share", "mm", "min", least, Message{MsgSplineShort, []any{math.Max(0, least.best-engaged.best)}})
}

// pitchOf is the diameter at which the flanks of a pair meet on average: between the male's tips and
// the female's, else the male's roots. Nil until the male's tips and one of these were read.
func (e *engine) pitchOf(p splinePair) *quantity {
	tip, other := e.bench(p.male+".major"), e.bench(p.female+".minor")
	if other == nil {
		other = e.bench(p.male + ".minor")
	}
	if tip == nil || other == nil {
		return nil
	}
	return e.combine("pitch", 1, func(x, out []float64) { out[0] = (x[0] + x[1]) / 2 }, tip, other)[0]
}
