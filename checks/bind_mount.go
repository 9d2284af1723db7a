package checks

import (
	"fmt"
	"math"
	"slices"

	"yokebook/checks/mass"
	"yokebook/checks/uncertain"
)

var mounts = []string{"mount_left", "mount_right", "mount_rear"}

// mountLoads are the greatest loads on the three mounts, standing still or at full torque in the
// lowest gear. A centre of mass outside the triangle of mounts is out whatever they are rated for.
func (e *engine) mountLoads(c *Check) []Finding {
	var args []*quantity
	var missing []Missing
	points := []string{"engine_gearbox.mass", "engine_gearbox.x", "engine_gearbox.y"}
	for _, m := range mounts {
		points = append(points, m+".x", m+".y")
	}
	for _, p := range points {
		if q := e.bench(p); q != nil {
			args = append(args, q)
			continue
		}
		missing = append(missing, need(p))
	}
	twist, lacking := e.mountTorque()
	var out []Finding
	for i, m := range mounts {
		f := Finding{Check: c.Key, Subject: m, Unit: c.Unit, Notes: []Message{{Key: MsgStaticAndTorque}}}
		if len(missing) > 0 {
			f.Verdict, f.Missing, f.Advice = Waiting, slices.Concat(missing, lacking), Message{Key: MsgTakeMissing}
			out = append(out, f)
			continue
		}
		out = append(out, e.mountLoad(f, i, args, twist, lacking))
	}
	return out
}

// mountTorque is what the unit's mounts hold: the torque of its output in the lowest gear, with
// nothing lost.
func (e *engine) mountTorque() (*quantity, []Missing) {
	engine, gear, converter := e.bench("engine.torque_max"), e.bench("gear.lowest"), e.bench("converter.ratio")
	var missing []Missing
	if engine == nil {
		missing = append(missing, need("engine.torque_max"))
	}
	if gear == nil {
		missing = append(missing, need("gear.lowest"))
	}
	if len(missing) > 0 {
		return exact(0), missing
	}
	if converter == nil {
		converter = exact(1)
	}
	return e.combine("mount torque", 1, func(x, out []float64) { out[0] = float64(x[0]*x[1]) * x[2] }, engine, gear, converter)[0], nil
}

func (e *engine) mountLoad(f Finding, i int, args []*quantity, twist *quantity, missing []Missing) Finding {
	all := e.combine(fmt.Sprintf("mount %d", i), 3, func(x, out []float64) {
		var at [3]mass.Place
		for n := range at {
			at[n] = mass.Place{X: x[3+2*n], Y: x[4+2*n]}
		}
		unit := mass.Unit{Kg: x[0], X: x[1], Y: x[2]}
		still, err := mass.Mounts(unit, at)
		unit.TorqueNm = x[9]
		one, _ := mass.Mounts(unit, at)
		unit.TorqueNm = -x[9]
		other, _ := mass.Mounts(unit, at)
		out[0] = orNone(math.Max(one[i], other[i]), err)
		out[1] = orNone(math.Min(one[i], other[i]), err)
		out[2] = orNone(slices.Min(still[:]), err)
	}, append(slices.Clone(args), twist)...)
	most, least, still := all[0], all[1], all[2]
	f.fill(most)
	if most.bad || least.bad || still.bad {
		f.Verdict, f.Advice = Waiting, Message{Key: MsgNoNumber}
		return f
	}
	if least.best < 0 && still.best >= 0 {
		f.Notes = append(f.Notes, Message{MsgMountPulled, []any{-least.best}})
	}
	pass := make([]bool, drawCount)
	for k := range pass {
		pass[k] = still.at(k) >= 0
	}
	advice := Message{Key: MsgStrongerMount}
	if verdictOf(uncertain.Chance(pass)) == Out {
		advice = Message{Key: MsgOutsideMounts}
	}
	rating := e.bench(f.Subject + ".rating")
	if rating == nil {
		missing = append(slices.Clone(missing), need(f.Subject+".rating"))
	} else {
		f.Limit = statedLimit(f.Subject+".rating", rating, "kg")
		f.rests(rating.from)
		for k, ok := range e.meets(most, f.Limit, rating) {
			pass[k] = pass[k] && ok
		}
	}
	e.conclude(&f, pass, missing, advice)
	return f
}
