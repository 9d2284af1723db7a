package checks

import (
	"math"

	"yokebook/checks/spline"
	"yokebook/measure"
)

// splineParts names the splined parts of a layout.
func splineParts(l measure.Layout) []string {
	var names []string
	for _, p := range []splinePair{inputPair, outputPair, slipPair} {
		for _, part := range []string{p.male, p.female} {
			if point, _ := measure.PointOf(part + ".splines"); point.In(l) {
				names = append(names, part)
			}
		}
	}
	return names
}

func identityPoints() []string {
	var keys []string
	for _, p := range []splinePair{inputPair, outputPair, slipPair} {
		keys = append(keys, p.pointsOf("splines", "major", "minor", "over_pins", "pin_dia", "flank")...)
	}
	return keys
}

// SplineCandidates returns the standard splines that agree with what was read on a part such as
// "input_shaft", the nearest first; none where too little was read.
func SplineCandidates(b *measure.Build, part string) []spline.Candidate {
	e := newEngine(b, nil)
	seen, _, missing := e.seen(part)
	if len(missing) > 0 {
		return nil
	}
	list, err := spline.Identify(seen)
	if err != nil {
		return nil
	}
	return list
}

// seen gathers what was read on a part; the best that is missing for it.
func (e *engine) seen(part string) (spline.Seen, origin, []Missing) {
	var from origin
	var missing []Missing
	size := func(dimension string) (best, off float64) {
		q := e.bench(part + "." + dimension)
		if q == nil || q.bad {
			return 0, 0
		}
		from = from.join(q.from)
		low, high := q.interval()
		return q.best, math.Max(high-q.best, q.best-low)
	}
	s := spline.Seen{External: part == inputPair.male || part == outputPair.male || part == slipPair.male,
		MadeUnder: e.setting("spline.made_under")}
	count, _ := size("splines")
	if count < 3 || count != math.Trunc(count) { // repeats that don't agree are no count
		missing = append(missing, need(part+".splines"))
	}
	s.Count = int(count)
	s.MajorMM, s.MajorOff = size("major")
	s.MinorMM, s.MinorOff = size("minor")
	s.PinMM, _ = size("pin_dia")
	s.OverMM, s.OverOff = size("over_pins")
	if s.PinMM == 0 || s.OverMM == 0 {
		s.PinMM, s.OverMM = 0, 0
	}
	if q := e.bench(part + ".flank"); q != nil {
		s.FlankDeg, s.HasFlank = q.best, true
		from = from.join(q.from)
	}
	tips := ".minor"
	if s.External {
		tips = ".major"
	}
	if s.MajorMM == 0 && s.MinorMM == 0 {
		missing = append(missing, need(part+tips))
	}
	return s, from, missing
}

// splineIdentity counts the standards that a part may be and names them all; it never judges.
func splineIdentity(e *engine, part string) answer {
	seen, from, missing := e.seen(part)
	if len(missing) > 0 {
		return answer{missing: missing}
	}
	list, err := spline.Identify(seen)
	if err != nil {
		return answer{missing: []Missing{need(part + ".splines")}}
	}
	a := answer{q: e.number(float64(len(list)), nil, from), silent: true}
	for _, c := range list {
		a.notes = append(a.notes, candidateNote(seen, c))
	}
	if i := firstStraight(list); i >= 0 {
		a.notes = append(a.notes, Message{MsgSplineStraight, []any{list[i].Standard + " " + list[i].Designation, list[i].WidthMM}})
	}
	if len(list) == 0 {
		a.notes = append(a.notes, Message{Key: MsgSplineUnknown})
	}
	if seen.Count%2 == 1 && seen.External {
		a.notes = append(a.notes, Message{MsgOddCount, []any{part + ".major"}})
	}
	a.notes = append(a.notes, pinNotes(seen, list, part)...)
	a.notes = append(a.notes, settleNotes(seen, list, part)...)
	return a
}

func firstStraight(list []spline.Candidate) int {
	for i, c := range list {
		if c.WidthMM > 0 {
			return i
		}
	}
	return -1
}

func candidateNote(s spline.Seen, c spline.Candidate) Message {
	root := c.Root + "_root"
	switch {
	case c.WidthMM > 0:
		root = "straight_flanks"
	case c.Root == "":
		root = "any_root"
	}
	args := []any{c.Standard + " " + c.Designation, root, c.PressureDeg}
	tip, bottom := s.MajorMM, s.MinorMM
	if !s.External {
		tip, bottom = bottom, tip
	}
	switch {
	case tip > 0 && bottom > 0:
		return Message{MsgSplineCandidate, append(args, c.TipOffMM, c.RootOffMM)}
	case tip > 0:
		return Message{MsgSplineByTips, append(args, c.TipOffMM)}
	}
	return Message{MsgSplineByRoots, append(args, c.RootOffMM)}
}

// pinNotes says that pins were left out because they measure no candidate's flanks.
func pinNotes(s spline.Seen, list []spline.Candidate, part string) []Message {
	if s.OverMM == 0 || len(list) == 0 {
		return nil
	}
	for _, c := range list {
		if c.OverMM > 0 {
			return nil
		}
	}
	return []Message{{MsgPinsDontSit, []any{part + ".pin_dia"}}}
}

// settleNotes says which reading would tell several candidates apart.
func settleNotes(s spline.Seen, list []spline.Candidate, part string) []Message {
	if len(list) < 2 {
		return nil
	}
	var notes []Message
	by := spline.Settling(s, list)
	if by.Flank {
		notes = append(notes, Message{MsgSplineSettle, []any{part + ".flank"}})
	}
	if by.Over {
		notes = append(notes, Message{MsgSplineSettle, []any{part + ".over_pins"}})
	}
	if by.Root {
		roots := ".major"
		if s.External {
			roots = ".minor"
		}
		notes = append(notes, Message{MsgSplineSettle, []any{part + roots}})
	}
	if len(notes) == 0 {
		notes = append(notes, Message{Key: MsgSplineAlike})
	}
	return notes
}
