package checks

import (
	"fmt"
	"math"
	"slices"
)

// pilot demands that two pilots are of one size: as near as two calipers can tell, and where the highest
// shaft speed is known no further apart than its balance bears. A shaft that sits off by half the play
// has at that end an unbalance of its share of the mass times that offset, so that the play may be
//
//	2 · G / ω    G: balance grade, mm/s; ω: highest speed, rad/s
//
// Source: the permissible offset of a balance grade, ISO 21940-11 (from memory): e = G/ω; the offset of
// loose pilots worked apart from this code.
func (m *matching) pilot(a, b string) {
	x, y := m.both(a, b, ".pilot")
	if x == nil {
		return
	}
	d := m.e.combine("differ", 1, func(v, out []float64) { out[0] = math.Abs(v[0] - v[1]) }, x, y)[0]
	most := exact(m.e.setting("match.pilot"))
	if s := m.e.speedOf(); s.q != nil {
		grade := m.e.setting("shaft.balance")
		most = m.e.combine(fmt.Sprintf("play of pilots, grade %g", grade), 1, func(v, out []float64) {
			out[0] = math.Min(v[0], 2*grade/float64(v[1]*math.Pi/30))
		}, most, s.q)[0]
		m.notes = append(m.notes, Message{MsgPilotPlay, []any{most.best, s.q.best, grade}})
	}
	m.notes = append(m.notes, Message{Key: MsgPilotByHand})
	key := a + ".pilot"
	m.list = append(m.list, demand{pass: m.e.meets(d, &Limit{Value: most.best, Sense: "max"}, most), q: d, from: d.from.join(most.from),
		says: Message{MsgSizesDiffer, []any{key, b + ".pilot", d.best, most.best}}, finer: Message{MsgPilotFiner, []any{key, b + ".pilot"}}})
}

// bolts demands that the bolts which two faces were made for are of one size and pitch, where both were
// read: a flange that stays on keeps its threads or its holes. Both are names of sizes, whatever the
// caliper's doubt.
func (m *matching) bolts(a, b string) {
	for _, d := range []struct{ dimension, limit string }{{".bolt_size", "match.bolt"}, {".bolt_pitch", "match.pitch"}} {
		x, y := m.e.bench(a+d.dimension), m.e.bench(b+d.dimension)
		if x == nil || y == nil {
			continue
		}
		most := m.e.setting(d.limit)
		apart := math.Abs(x.best - y.best)
		m.list = append(m.list, demand{pass: slices.Repeat([]bool{apart <= most}, drawCount), from: x.from.join(y.from),
			says: Message{MsgSizesDiffer, []any{a + d.dimension, b + d.dimension, apart, most}}})
	}
}
