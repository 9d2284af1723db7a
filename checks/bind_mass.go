package checks

import (
	"slices"

	"yokebook/checks/mass"
	"yokebook/measure"
)

var massRows = []Check{
	{Key: "mass.axles", Group: "mass", Points: []string{"front_axle.mass", "rear_axle.mass", "front_axle.limit", "rear_axle.limit", "wheelbase.length",
		"engine_gearbox.mass", "engine_gearbox.x", "lift_front.mass", "lift_front.x", "lift_rear.mass", "lift_rear.x",
		"old_engine_gearbox.mass", "old_engine_gearbox.x"}, Unit: "kg", perPart: axleLoad,
		subjects: func(measure.Layout) []string { return []string{"front_axle", "rear_axle"} }},
	{Key: "mount.load", Group: "mass", Points: []string{"engine_gearbox.mass", "engine_gearbox.x", "engine_gearbox.y", "mount_left.x", "mount_left.y",
		"mount_right.x", "mount_right.y", "mount_rear.x", "mount_rear.y", "mount_left.rating", "mount_right.rating", "mount_rear.rating",
		"engine.torque_max", "gear.lowest", "converter.ratio"}, Unit: "kg", whole: (*engine).mountLoads},
	{Key: "lift.slings", Group: "mass", Points: []string{"engine_gearbox.mass", "sling.legs", "sling.angle", "sling.limit"}, Unit: "kg",
		whole: (*engine).slings},
}

// afterSwap is what an axle carries once the new engine and gearbox stand in the old ones' place.
type afterSwap struct {
	q       *quantity
	missing []Missing // what would make it a laden one, or it at all
}

// axleAfter computes that from the axle's mass before, laden where it was weighed so.
func (e *engine) axleAfter(axle string) afterSwap {
	before := e.take(axle+".mass", measure.RideLaden)
	var args []*quantity
	var a afterSwap
	if before == nil {
		a.missing = append(a.missing, Missing{Point: axle + ".mass", State: measure.RideLaden})
	} else {
		args = append(args, before.q)
	}
	for _, p := range []string{"wheelbase.length", "engine_gearbox.mass", "engine_gearbox.x", "old_engine_gearbox.mass", "old_engine_gearbox.x"} {
		q := e.bench(p)
		if q == nil {
			a.missing = append(a.missing, need(p))
			continue
		}
		args = append(args, q)
	}
	if len(a.missing) > 0 {
		return a
	}
	a.q = e.combine("after swap "+axle, 1, func(x, out []float64) {
		out[0] = orNone(axleWith(axle, x))
	}, args...)[0]
	if e.emptyOnly(before.q) {
		a.missing = append(a.missing, Missing{Point: axle + ".mass", State: measure.RideLaden})
	}
	return a
}

// axleWith is the load on an axle after the swap; x holds its load before, the wheelbase, and mass
// and place of what comes and of what goes.
func axleWith(axle string, x []float64) (float64, error) {
	front, rear, err := mass.Axles(mass.Load{Kg: x[2], AheadMM: x[3]}, x[1])
	if err != nil {
		return 0, err
	}
	frontOff, rearOff, err := mass.Axles(mass.Load{Kg: x[4], AheadMM: x[5]}, x[1])
	if axle == "front_axle" {
		return x[0] + front - frontOff, err
	}
	return x[0] + rear - rearOff, err
}

// emptyOnly reports a mass that was read on the vehicle's own weight: what it carries comes on top.
func (e *engine) emptyOnly(q *quantity) bool {
	for _, r := range e.readings {
		if r.Load == measure.Kerb && slices.Contains(q.from.used, r.ID) {
			return true
		}
	}
	return false
}

// axleLoad judges an axle by what it may carry. From own weight alone it is never clear: the load
// comes on top.
func axleLoad(e *engine, axle string) answer {
	after, limit := e.axleAfter(axle), e.bench(axle+".limit")
	a := answer{q: after.q, missing: after.missing, advice: Message{Key: MsgAxleOverloaded}}
	if limit == nil {
		a.missing = append(a.missing, need(axle+".limit"))
		return a
	}
	a.against, a.own = limit, statedLimit(axle+".limit", limit, "kg")
	if after.q != nil && len(after.missing) > 0 {
		a.notes = []Message{{Key: MsgOwnWeightOnly}}
	}
	return a
}
