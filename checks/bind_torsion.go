package checks

import (
	"fmt"

	"yokebook/checks/shaft"
	"yokebook/measure"
)

// stressOf is the shear stress in a tube under a torque, MPa.
func (e *engine) stressOf(t tubeSizes, torque *quantity) *quantity {
	return e.combine("stress", 1, func(x, out []float64) {
		out[0] = orNone(shaft.Shear(shaft.Tube{LengthMM: x[0], OuterMM: x[1], WallMM: x[2]}, x[3]))
	}, t.length, t.outer, t.wall, torque)[0]
}

// twistOf is the twist of a tube under a torque, deg.
func (e *engine) twistOf(t tubeSizes, torque *quantity) *quantity {
	m, _ := e.material()
	return e.combine(fmt.Sprintf("twist %v", m), 1, func(x, out []float64) {
		out[0] = orNone(shaft.Twist(shaft.Tube{LengthMM: x[0], OuterMM: x[1], WallMM: x[2]}, m, x[3]))
	}, t.length, t.outer, t.wall, torque)[0]
}

// allowedStress is the share of the tube's yield strength that its shear may reach; nil until that
// strength is stated.
func (e *engine) allowedStress() (*quantity, *Limit) {
	yield := e.bench("tube.yield")
	if yield == nil {
		return nil, nil
	}
	share := e.setting("shaft.stress")
	q := e.combine(fmt.Sprintf("yield × %g", share), 1, func(x, out []float64) { out[0] = float64(share * x[0]) }, yield)[0]
	return q, e.workedLimit("shaft.stress", q, "MPa", "max")
}

func shaftStress(e *engine, subject string) answer {
	t, c := e.tubeOf(subject), e.torqueCase()
	if missing := append(t.missing, c.missing...); len(missing) > 0 {
		return answer{missing: missing}
	}
	a := answer{q: e.stressOf(t, c.q), notes: c.notes(), advice: Message{Key: MsgStrongerTube}}
	if a.against, a.own = e.allowedStress(); a.own == nil {
		a.missing = []Missing{need("tube.yield")}
	}
	return a
}

// shaftTwist is a number to know, without a verdict: it adds to the phase of the yokes under torque,
// and no source gives a limit for shafts between joints.
func shaftTwist(e *engine, subject string) answer {
	t, c := e.tubeOf(subject), e.torqueCase()
	if missing := append(t.missing, c.missing...); len(missing) > 0 {
		return answer{missing: missing}
	}
	_, notes := e.material()
	return answer{q: e.twistOf(t, c.q), silent: true, notes: append(append(notes, c.notes()...), Message{Key: MsgTwistNoVerdict})}
}

// weighedShaft is the shaft that shaft.mass weighs: the whole one, of two pieces the rear.
func weighedShaft(l measure.Layout) []string {
	if l.Shafts == 2 {
		return []string{"shaft"}
	}
	return []string{""}
}

// shaftBalance is what the balancer may leave at each end, for the order: nothing read is judged.
func shaftBalance(e *engine, _ string) answer {
	weight, s := e.bench("shaft.mass"), e.speedOf()
	var a answer
	if weight == nil {
		a.missing = append(a.missing, need("shaft.mass"))
	}
	if a.missing = append(a.missing, s.missing...); len(a.missing) > 0 {
		return a
	}
	grade := e.setting("shaft.balance")
	a.q = e.combine(fmt.Sprintf("unbalance per end, G %g", grade), 1, func(x, out []float64) {
		out[0] = orNone(shaft.Unbalance(shaft.Rotor{Kg: x[0], RevPerMin: x[1], GradeMMs: grade})) / 2
	}, weight, s.q)[0]
	a.silent = true
	a.notes = []Message{s.note(), {MsgBalanceGrade, []any{grade}}}
	return a
}
