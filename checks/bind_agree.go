package checks

import (
	"math"
	"slices"

	"yokebook/measure"
)

// agreement compares what was read with what springs or links say, in every state but the one that
// the computed line swings from: the shaft's length, and the pinion against the gearbox. A build
// without both ways has no such finding.
func (e *engine) agreement(c *Check) []Finding {
	m, anchor := e.motionOf(), e.anchor()
	if !m.sized() || m.way == wayFixed || anchor == nil {
		return nil
	}
	model := e.swing(m, *anchor)
	var out []Finding
	for _, s := range []measure.State{measure.Hanging, measure.RideKerb, measure.RideLaden, measure.OnBump} {
		h := e.heightOf(s)
		if s == anchor.line.state || h == nil {
			continue
		}
		var length, pinion *quantity
		if model.lengths && e.take("shaft.length", anchor.line.state) != nil {
			length = e.here("shaft.length", s)
		}
		for _, ln := range e.lines {
			if ln.state == s && !ln.predicted && ln.complete() {
				pinion = e.pinionRead(ln)
			}
		}
		if length == nil && pinion == nil {
			continue
		}
		computed := e.standing(model, h)
		if length != nil {
			out = append(out, e.agrees(c, model, s, "shaft", length, computed[0]))
		}
		if pinion != nil {
			out = append(out, e.agrees(c, model, s, "pinion", pinion, computed[1]))
		}
	}
	return out
}

// agrees judges one difference between reading and computation.
func (e *engine) agrees(c *Check, m *model, s measure.State, subject string, read, computed *quantity) Finding {
	f := Finding{Check: c.Key, Subject: subject, State: s, Unit: c.Unit, Notes: slices.Clone(m.notes)}
	f.Limit = e.limitOf("travel.agreement")
	if subject == "pinion" {
		f.Unit, f.Limit = "deg", e.limitOf("travel.agreement_angle")
	}
	q := e.combine("difference", 1, func(x, out []float64) { out[0] = math.Abs(x[0] - x[1]) }, read, computed)[0]
	f.fill(q)
	if q.bad {
		f.Verdict, f.Advice = Waiting, Message{Key: MsgNoNumber}
		f.Missing = []Missing{{Point: "hub.height", State: s}}
		return f
	}
	e.conclude(&f, e.meets(q, f.Limit, nil), nil, Message{Key: MsgPathDisputed})
	return f
}

// standing is the shaft's length at a height and the pinion's slope against the gearbox.
func (e *engine) standing(m *model, height *quantity) []*quantity {
	k := len(m.args)
	gear, pinion := e.endParts()
	return e.combineOwn("standing "+m.name, onAll(2, k+1), func() formula {
		m, to := m.open(), &stand{}
		return func(x, out []float64) {
			out[0], out[1] = math.NaN(), math.NaN()
			if m.set(x[:k]) && m.at(x[k], to) {
				a, _ := to.axes[pinion].SlopePlan()
				b, _ := to.axes[gear].SlopePlan()
				out[0], out[1] = to.length, a-b
			}
		}
	}, append(slices.Clone(m.args), height)...)
}

// pinionRead is the pinion's slope against the gearbox as read.
func (e *engine) pinionRead(ln *line) *quantity {
	gear, pinion := e.endParts()
	args := append(ln.args(gear, gear), ln.args(pinion, pinion)...)
	return e.combine("pinion against gearbox", 1, func(x, out []float64) {
		a, _ := axis(x, 1).SlopePlan()
		b, _ := axis(x, 0).SlopePlan()
		out[0] = a - b
	}, args...)[0]
}

// endParts are the places of gearbox and pinion in a line.
func (e *engine) endParts() (gear, pinion int) {
	last := len(partNames(e.build.Layout)) - 1
	if e.build.Layout.PinionInFront() {
		return last, 0
	}
	return 0, last
}
