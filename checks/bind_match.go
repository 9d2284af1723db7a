package checks

import (
	"fmt"
	"math"

	"yokebook/checks/flange"
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

var flangeRows = []Check{
	{Key: "flange.match", Group: "flange", Points: append(endPoints(), speeds...), Unit: "", whole: (*engine).flangeMatch, subjects: flangeNames},
}

// engineRows: what meets between engine and gearbox.
var engineRows = []Check{
	{Key: "clutch.flywheel", Group: "clutch", Points: []string{"crank.bolts", "crank.bolt_circle", "crank.register", "flywheel.bolts",
		"flywheel.bolt_circle", "flywheel.register"}, Unit: "", whole: (*engine).flywheelMatch},
	{Key: "clutch.runout", Group: "clutch", Points: []string{"bellhousing.bore_runout", "bellhousing.face_runout", "flywheel.runout"}, Unit: "mm",
		perPart: runout, subjects: func(measure.Layout) []string { return []string{"bore", "face", "flywheel"} }},
}

func endPoints() []string {
	var all []string
	for _, part := range []string{"front_end", "front_mate", "rear_end", "rear_mate"} {
		for _, d := range []string{"bolts", "bolt_size", "bolt_pitch", "bolt_circle", "bolt_chord", "bolt_chord_2", "pilot", "pilot_kind", "pilot_depth", "cap_dia", "cap_span", "clip"} {
			all = append(all, part+"."+d)
		}
	}
	return all
}

// flangeNames are the ends that are bolted: not the one where a yoke slides into the gearbox.
func flangeNames(l measure.Layout) []string {
	switch {
	case l.Slip != "gearbox":
		return []string{"front", "rear"}
	case l.PinionInFront():
		return []string{"front"}
	}
	return []string{"rear"}
}

// demand is one thing about two faces that must be the same.
type demand struct {
	pass  []bool
	q     *quantity // how far they differ; nil for what is counted or looked at
	says  Message   // that they differ
	finer Message   // how to settle it where the readings can't; zero: by its weakest reading
	from  origin
}

// matching gathers what two parts must have the same, and what of it was not read.
type matching struct {
	e       *engine
	list    []demand
	missing []Missing
	notes   []Message
}

// both are the readings of one dimension on both parts; nil until both are there.
func (m *matching) both(a, b, dimension string) (x, y *quantity) {
	x, y = m.e.bench(a+dimension), m.e.bench(b+dimension)
	if x == nil {
		m.missing = append(m.missing, need(a+dimension))
	}
	if y == nil {
		m.missing = append(m.missing, need(b+dimension))
	}
	if x == nil || y == nil {
		return nil, nil
	}
	return x, y
}

// same demands that what was counted or looked at is alike, or with alike false is not.
func (m *matching) same(a, b, dimension string, alike bool, key string) {
	x, y := m.both(a, b, dimension)
	if x == nil || m.disputed(x, a+dimension) || m.disputed(y, b+dimension) {
		return
	}
	pass := make([]bool, drawCount)
	for k := range pass {
		pass[k] = (x.at(k) == y.at(k)) == alike
	}
	m.list = append(m.list, demand{pass: pass, says: Message{key, []any{a + dimension, b + dimension, x.best, y.best}}, from: x.from.join(y.from)})
}

// disputed notes a count or an answer as missing whose repeats don't agree.
func (m *matching) disputed(q *quantity, key string) bool {
	low, high := q.interval()
	if low != high {
		m.missing = append(m.missing, need(key))
	}
	return low != high
}

// near demands that two sizes differ by no more than the table's limit.
func (m *matching) near(x, y *quantity, limit, a, b string) {
	d := m.e.combine("differ", 1, func(v, out []float64) { out[0] = math.Abs(v[0] - v[1]) }, x, y)[0]
	m.list = append(m.list, demand{pass: m.e.meets(d, m.e.limitOf(limit), nil), q: d, from: d.from,
		says: Message{MsgSizesDiffer, []any{a, b, d.best, m.e.setting(limit)}}})
}

func (m *matching) size(a, b, dimension, limit string) {
	if x, y := m.both(a, b, dimension); x != nil {
		m.near(x, y, limit, a+dimension, b+dimension)
	}
}

func (m *matching) circle(a, b string) {
	x, y := m.e.circleOf(a), m.e.circleOf(b)
	if x == nil {
		m.missing = append(m.missing, need(a+".bolt_circle"))
	}
	if y == nil {
		m.missing = append(m.missing, need(b+".bolt_circle"))
	}
	if x != nil && y != nil {
		m.near(x, y, "match.circle", a+".bolt_circle", b+".bolt_circle")
	}
}

// circleOf is a part's bolt circle: as read, else from one chord or two and the number of holes.
func (e *engine) circleOf(part string) *quantity {
	if q := e.bench(part + ".bolt_circle"); q != nil {
		return q
	}
	bolts, one, two := e.bench(part+".bolts"), e.bench(part+".bolt_chord"), e.bench(part+".bolt_chord_2")
	if bolts == nil || one == nil {
		return nil
	}
	n := int(bolts.best)
	if two == nil {
		return e.combine(fmt.Sprintf("circle of %d", n), 1, func(x, out []float64) { out[0] = orNone(flange.Circle(n, x[0])) }, one, bolts)[0]
	}
	return e.combine(fmt.Sprintf("circle of pairs, %d", n), 1, func(x, out []float64) {
		out[0] = orNone(flange.CircleOfPairs(n, x[0], x[1]))
	}, one, two, bolts)[0]
}

// finding counts what differs: 0 is a match. All is judged by the same draws.
func (m *matching) finding(f Finding, out Message) Finding {
	f.Limit = m.e.limitOf("match.count")
	if len(m.list) == 0 {
		f.Verdict, f.Missing, f.Advice = Waiting, m.missing, Message{Key: MsgTakeMissing}
		return f
	}
	pass, count, best := allPass(), make([]float64, drawCount), 0.0
	least, finer := 1.1, Message{}
	f.Notes = append(f.Notes, m.notes...)
	for _, d := range m.list {
		f.rests(d.from)
		if d.q != nil && d.q.bad {
			f.Verdict, f.Advice = Waiting, Message{Key: MsgNoNumber}
			return f
		}
		for k, ok := range d.pass {
			if pass[k] = pass[k] && ok; !ok {
				count[k]++
			}
		}
		chance := uncertain.Chance(d.pass)
		if chance < 0.5 {
			best++
			f.Notes = append(f.Notes, d.says)
		}
		if d.q != nil && chance < least {
			least, finer = chance, d.finer
			f.decidedBy(d.q)
		}
	}
	low, high := uncertain.Interval(count, best)
	f.Value, f.Low, f.High = &best, &low, &high
	m.e.conclude(&f, pass, m.missing, out)
	if f.Verdict == Unsure && finer.Key != "" {
		f.Advice = finer
	}
	return f
}

// flangeMatch compares each end of the vehicle with its mate on the shaft: bolts, circle and pilot,
// or the caps of a joint where straps or U-bolts hold them.
func (e *engine) flangeMatch(c *Check) []Finding {
	var out []Finding
	for _, end := range flangeNames(e.build.Layout) {
		a, b := end+"_end", end+"_mate"
		m := &matching{e: e}
		if clip := e.bench(a + ".clip"); clip != nil && clip.best >= 3 {
			m.size(a, b, ".cap_dia", "match.cap")
			m.size(a, b, ".cap_span", "match.span")
			out = append(out, m.finding(Finding{Check: c.Key, Subject: end + "_end", Unit: c.Unit}, Message{Key: MsgOtherJointSize}))
			continue
		}
		m.same(a, b, ".bolts", true, MsgCountsDiffer)
		m.circle(a, b)
		m.same(a, b, ".pilot_kind", false, MsgPilotsAlike)
		m.pilot(a, b)
		m.seated(a, b)
		m.bolts(a, b)
		out = append(out, m.finding(Finding{Check: c.Key, Subject: end + "_end", Unit: c.Unit}, Message{Key: MsgAdapterFlange}))
	}
	return out
}

// seated demands that the standing pilot is no higher than the recess is deep, where both were read:
// else the faces never meet.
func (m *matching) seated(a, b string) {
	kind := m.e.bench(a + ".pilot_kind")
	if kind == nil {
		return
	}
	male, female := a, b
	if kind.best == 0 {
		male, female = b, a
	}
	high, deep := m.e.bench(male+".pilot_depth"), m.e.bench(female+".pilot_depth")
	if high == nil || deep == nil {
		return
	}
	over := m.e.combine("over", 1, func(v, out []float64) { out[0] = v[0] - v[1] }, high, deep)[0]
	m.list = append(m.list, demand{pass: m.e.meets(over, &Limit{Sense: "max"}, nil), q: over, from: over.from,
		says: Message{MsgPilotBottoms, []any{male + ".pilot_depth", female + ".pilot_depth", over.best}}})
}

func (e *engine) flywheelMatch(c *Check) []Finding {
	m := &matching{e: e}
	m.same("crank", "flywheel", ".bolts", true, MsgCountsDiffer)
	m.size("crank", "flywheel", ".bolt_circle", "match.circle")
	m.size("crank", "flywheel", ".register", "match.pilot")
	if len(m.list) > 0 {
		m.notes = []Message{{Key: MsgPilotByHand}}
	}
	return []Finding{m.finding(Finding{Check: c.Key, Unit: c.Unit}, Message{Key: MsgOwnFlywheel})}
}

// runout is the needle's whole way in one turn; on a bore it is twice the offset.
func runout(e *engine, subject string) answer {
	key, limit := "bellhousing."+subject+"_runout", "clutch.runout"
	if subject == "flywheel" {
		key, limit = "flywheel.runout", "clutch.flywheel_runout"
	}
	q := e.bench(key)
	if q == nil {
		return answer{missing: []Missing{need(key)}, limit: limit}
	}
	a := answer{q: q, limit: limit, advice: Message{Key: MsgTrueFace}}
	if subject == "bore" {
		a.notes = []Message{{MsgOffset, []any{flange.Offset(q.best)}}}
		a.advice = Message{MsgMoveDowels, []any{flange.Offset(q.best)}}
	}
	return a
}
