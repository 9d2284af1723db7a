package checks

import (
	"math"
	"slices"

	"yokebook/checks/joint"
	"yokebook/measure"
)

// Sight is what a drawing or a chart sees of a build: numbers and the shaft line at the best values,
// with their intervals where they were worked out already. It is not safe for concurrent use.
type Sight struct{ e *engine }

// Look makes the sight of a build. prev, which may be nil, only saves work. b is not changed.
func Look(b *measure.Build, prev *Result) *Sight { return &Sight{newEngine(b, prev)} }

// Number is what is known of one point, in the base unit of its quantity.
type Number struct {
	Value     float64
	Low, High float64 // 5 % and 95 % points
	Stated    bool    // rests on a stated or estimated value
}

// StancePart is one axis of the shaft line.
type StancePart struct {
	Name      string // "gearbox", "front_shaft", "shaft", "pinion"
	Known     bool   // its slope was read, or follows from what was
	PlanRead  bool   // its plan angle was read; otherwise 0 is assumed
	SlopeDeg  float64
	PlanDeg   float64
	SlopeHalf float64 // half the width of the interval of SlopeDeg; 0: not worked out
	PlanHalf  float64
}

// Stance is the shaft line in one state or at one height, at the best values.
type Stance struct {
	State     measure.State // zero between states
	HeightMM  *float64      // hub centre to arch edge; nil where nobody read it
	Parts     []StancePart  // front to rear
	AnglesDeg []float64     // of the joints, front to rear; NaN where a side is not known
	Residual  float64       // deg; NaN until every part is known
	ShaftMM   *float64      // between the joint centres of the part named shaft; nil: nobody read a length
	FrontMM   *float64      // of a two-piece line's front shaft, likewise; with a pinion in front it is the one that moves
	OutMM     float64       // slip in the gearbox: how far the joint stands out against where lengths count from
	Predicted bool          // not read in this state or at this height
}

// Axis is the forward direction of a part.
func (p StancePart) Axis() joint.Axis { return joint.AxisOf(p.SlopeDeg, p.PlanDeg) }

// Number returns what is known of a point in a state, as read or worked out from other readings.
func (s *Sight) Number(point string, state measure.State) (Number, bool) {
	t := s.e.take(point, state)
	if t == nil || t.q.bad {
		return Number{}, false
	}
	low, high := t.q.interval()
	return Number{t.q.best, low, high, len(t.q.from.restsOn) > 0}, true
}

// Height is how far the hub stands below the arch in a state; false where nothing says it.
func (s *Sight) Height(state measure.State) (Number, bool) {
	q := s.e.heightOf(state)
	if q == nil || q.bad {
		return Number{}, false
	}
	low, high := q.interval()
	return Number{q.best, low, high, len(q.from.restsOn) > 0}, true
}

// Stances lists the shaft line in every state that it was read in or computed for, without wind-up.
// A state of which only some parts were read is listed too.
func (s *Sight) Stances() []Stance {
	var all []Stance
	for _, ln := range s.e.lines {
		if ln.state.Case == "" {
			all = append(all, s.stance(ln))
		}
	}
	return all
}

// Empty is the line of the layout with nothing read.
func (s *Sight) Empty() Stance { return s.stance(s.e.lineOf(measure.RideKerb)) }

func (s *Sight) stance(ln *line) Stance {
	st := Stance{State: ln.state, Predicted: ln.predicted}
	for _, p := range ln.parts {
		st.Parts = append(st.Parts, s.stancePart(p))
	}
	if h := s.e.heightOf(ln.state); h != nil && !h.bad {
		at := h.best
		st.HeightMM = &at
		if ln.complete() {
			if to, ok := s.At(at); ok {
				st.ShaftMM, st.FrontMM, st.OutMM = to.ShaftMM, to.FrontMM, to.OutMM
			}
		}
	}
	if st.ShaftMM == nil {
		s.measureShaft(&st, ln.state)
	}
	if st.FrontMM == nil {
		s.measureFront(&st)
	}
	s.joints(&st, ln)
	return st
}

func (s *Sight) stancePart(p part) StancePart {
	out := StancePart{Name: p.name}
	_, out.PlanRead = s.Number(p.name+".plan", measure.RideKerb)
	if p.plan != nil && !p.plan.bad {
		low, high := p.plan.interval()
		out.PlanDeg, out.PlanHalf = p.plan.best, (high-low)/2
	}
	if p.slope == nil || p.slope.bad {
		return out
	}
	low, high := p.slope.interval()
	out.Known, out.SlopeDeg, out.SlopeHalf = true, p.slope.best, (high-low)/2
	if p.turn != nil {
		out.SlopeDeg, out.PlanDeg = joint.AxisOf(out.SlopeDeg, out.PlanDeg).Pitched(p.turn.best).SlopePlan()
	}
	return out
}

// measureShaft takes the shaft's length as read in the state, else as read in another.
func (s *Sight) measureShaft(st *Stance, state measure.State) {
	for _, in := range []measure.State{state, measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump} {
		if n, ok := s.Number("shaft.length", in); ok {
			st.ShaftMM = &n.Value
			return
		}
	}
}

func (s *Sight) measureFront(st *Stance) {
	if n, ok := s.Number("front_shaft.length", measure.RideKerb); ok && s.e.build.Layout.Shafts == 2 {
		st.FrontMM = &n.Value
	}
}

// joints works out the angles and the residual of a stance with the phases of a line.
func (s *Sight) joints(st *Stance, ln *line) {
	chain := joint.Chain{Double: ln.double, PhaseDeg: make([]float64, len(ln.phases))}
	for i, p := range ln.phases {
		chain.PhaseDeg[i] = p.best
	}
	whole := true
	for _, p := range st.Parts {
		chain.Axes = append(chain.Axes, p.Axis())
		whole = whole && p.Known
	}
	st.AnglesDeg = chain.Angles(nil)
	for i := range st.AnglesDeg {
		if !st.Parts[i].Known || !st.Parts[i+1].Known {
			st.AnglesDeg[i] = math.NaN()
		}
	}
	st.Residual = math.NaN()
	if whole {
		st.Residual = chain.Residual(0, len(st.AnglesDeg)-1)
	}
}

// At is the shaft line at a height of the hub below the arch, in mm. At the height of a state that was
// read it gives back what was read there; between them it follows the axle's path. False where
// neither reaches.
func (s *Sight) At(heightMM float64) (Stance, bool) {
	m := s.e.lineModelOver(heightMM)
	if m == nil {
		return Stance{}, false
	}
	x := bestOf(m.args)
	to := &stand{}
	if !m.set(x) || !m.at(heightMM, to) {
		return Stance{}, false
	}
	read := s.e.linesRead()
	st := Stance{HeightMM: &heightMM, Predicted: true}
	ln := s.e.blankLine(measure.State{})
	ln.phases = read[0].line.phases
	slopes := make([]float64, len(to.axes))
	for i, a := range to.axes {
		slopes[i], _ = a.SlopePlan()
	}
	for i, p := range read[0].line.parts {
		part := s.stancePart(p)
		_, part.PlanDeg = to.axes[i].SlopePlan()
		part.SlopeDeg = slopes[i]
		st.Parts = append(st.Parts, part)
	}
	s.throughReadings(&st, m, read)
	for _, r := range read {
		if math.Abs(r.height.best-heightMM) <= given("state.height") {
			st.Predicted, st.State = false, r.line.state
		}
	}
	if st.Predicted {
		s.widthsAt(&st, heightMM)
	}
	s.measureFront(&st)
	s.slideAt(&st, heightMM)
	s.joints(&st, ln)
	return st, finite(st.Residual)
}

// widthsAt puts in the doubt of the slopes where a line was computed for this height with it; between
// heights nobody works it out, and 0 stands for not known.
func (s *Sight) widthsAt(st *Stance, heightMM float64) {
	for i := range st.Parts {
		st.Parts[i].SlopeHalf = 0
	}
	for _, ln := range s.e.lines {
		h := s.e.heightOf(ln.state)
		if ln.state.Case != "" || h == nil || math.Abs(h.best-heightMM) > 1e-9 {
			continue
		}
		for i, p := range ln.parts {
			st.Parts[i].SlopeHalf = s.stancePart(p).SlopeHalf
		}
	}
}

func bestOf(args []*quantity) []float64 {
	x := make([]float64, len(args))
	for i, q := range args {
		x[i] = q.best
	}
	return x
}

// throughReadings bends what a model gives so that it passes through what was read: the difference at
// each height read, in a straight line between them and unchanged beyond.
func (s *Sight) throughReadings(st *Stance, m *model, read []readLine) {
	var heights []float64
	off, aside := make([][]float64, len(st.Parts)), make([][]float64, len(st.Parts))
	wide := make([][]float64, len(st.Parts))
	to := &stand{}
	for _, r := range read {
		if !m.at(r.height.best, to) {
			continue
		}
		heights = append(heights, r.height.best)
		for i, p := range r.line.parts {
			have := s.stancePart(p)
			slope, plan := to.axes[i].SlopePlan()
			off[i], aside[i] = append(off[i], have.SlopeDeg-slope), append(aside[i], have.PlanDeg-plan)
			wide[i] = append(wide[i], have.SlopeHalf)
		}
	}
	if len(heights) == 0 {
		return
	}
	for i := range st.Parts {
		st.Parts[i].SlopeDeg += level(*st.HeightMM, heights, off[i])
		st.Parts[i].PlanDeg += level(*st.HeightMM, heights, aside[i])
		st.Parts[i].SlopeHalf = level(*st.HeightMM, heights, wide[i])
	}
}

// level is a value in a straight line between neighbouring x, and the outermost one beyond them.
func level(at float64, x, y []float64) float64 {
	last := len(x) - 1
	switch {
	case at <= x[0]:
		return y[0]
	case at >= x[last]:
		return y[last]
	}
	i := 0
	for at > x[i+1] {
		i++
	}
	return y[i] + float64((y[i+1]-y[i])*((at-x[i])/(x[i+1]-x[i])))
}

// slideAt puts in the shaft's length at a height, or how far its joint runs out of the gearbox.
func (s *Sight) slideAt(st *Stance, heightMM float64) {
	st.ShaftMM = nil
	s.measureShaft(st, measure.RideKerb)
	if !s.e.swings() && s.e.build.Layout.Slip == "shaft" {
		s.slideFront(st, heightMM)
		return
	}
	m := s.e.slideModel(heightMM, heightMM)
	if m == nil || st.ShaftMM == nil {
		return
	}
	to := &stand{}
	if !m.set(bestOf(m.args)) || !m.at(heightMM, to) || !finite(to.slide) {
		return
	}
	if s.e.build.Layout.Slip == "gearbox" {
		st.OutMM = to.slide
		return
	}
	slide := to.slide
	heights, off := s.lengthsRead(m)
	if len(heights) > 0 {
		slide += level(heightMM, heights, off)
	} else if !m.lengths {
		return
	}
	st.ShaftMM = &slide
}

// slideFront moves the front shaft of a line whose pinion is in front: by how much further its slip is
// drawn out than at the height that its length was read at. Where that is not known it stays as read.
func (s *Sight) slideFront(st *Stance, heightMM float64) {
	m, _ := s.e.drawnSlide()
	if m == nil || m.lengths || st.FrontMM == nil || !m.covers(heightMM) || !m.set(bestOf(m.args)) {
		return
	}
	for _, r := range slices.Backward(s.e.readings) {
		h := s.e.heightOf(r.State())
		if r.Point != "front_shaft.length" || h == nil {
			continue
		}
		now, then := &stand{}, &stand{}
		if m.at(heightMM, now) && m.at(h.best, then) && finite(now.slide) && finite(then.slide) {
			long := *st.FrontMM + now.slide - then.slide
			st.FrontMM = &long
		}
		return
	}
}

// lengthsRead lists the heights at which the shaft's length was read, rising, and what a model of the
// sliding part leaves to it there.
func (s *Sight) lengthsRead(m *model) (heights, off []float64) {
	type at struct{ height, length float64 }
	var list []at
	for _, state := range measure.States {
		n, h := s.e.here("shaft.length", state), s.e.heightOf(state)
		if n != nil && h != nil {
			list = append(list, at{h.best, n.best})
		}
	}
	slices.SortStableFunc(list, func(a, b at) int {
		switch {
		case a.height < b.height:
			return -1
		case a.height > b.height:
			return 1
		}
		return 0
	})
	to := &stand{}
	for _, r := range list {
		if m.at(r.height, to) && finite(to.slide) {
			heights, off = append(heights, r.height), append(off, r.length-to.slide)
		}
	}
	return heights, off
}

// Ends are the heights of the axle's travel that are known: on the bump stops or the least read, and
// with the wheels hanging or the greatest read. False where no height is known.
func (s *Sight) Ends() (bumpMM, droopMM float64, ok bool) {
	var st stroke
	bump, droop := s.e.travelEnds(&st)
	if bump == nil || droop == nil || bump.bad || droop.bad {
		return 0, 0, false
	}
	return bump.best, droop.best, true
}
