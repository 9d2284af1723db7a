package checks

import (
	"fmt"
	"math"

	"yokebook/checks/shaft"
	"yokebook/measure"
)

var (
	sizes  = []string{"shaft.length", "tube.od", "tube.wall", "tube.material", "front_shaft.length", "front_shaft.tube_od", "front_shaft.tube_wall"}
	torque = []string{"engine.torque_max", "gear.lowest", "transfer.low", "converter.ratio", "axle.ratio", "tyre.radius", "tyre.code", "tyre.friction",
		"rear_axle.mass", "front_axle.mass", "rear_axle.limit", "front_axle.limit"}
)

var shaftRows = []Check{
	{Key: "shaft.critical_speed", Group: "shaft", Points: append(append([]string{"shaft.mass"}, sizes...), speeds...), Unit: "rev/min",
		perPart: criticalSpeed, subjects: shaftNames},
	{Key: "shaft.half_critical", Group: "shaft", Points: append(append([]string{"shaft.mass"}, sizes...), speeds...), Unit: "rev/min",
		perPart: halfCritical, subjects: shaftNames},
	{Key: "shaft.stress", Group: "shaft", Points: append(append([]string{"tube.yield"}, sizes...), torque...), Unit: "MPa",
		perPart: shaftStress, subjects: shaftNames},
	{Key: "shaft.twist", Group: "shaft", Points: append(sizes[:len(sizes):len(sizes)], torque...), Unit: "deg",
		perPart: shaftTwist, subjects: shaftNames},
	{Key: "shaft.balance", Group: "shaft", Points: append([]string{"shaft.mass"}, speeds...), Unit: "g·mm",
		perPart: shaftBalance, subjects: weighedShaft},
	{Key: "shaft.clearance", Group: "shaft", Points: append([]string{"obstacle.gap", "obstacle.station", "obstacle.side"}, sizes...), Unit: "mm",
		whole: (*engine).clearances},
}

// tubeSizes are length, outside diameter and wall of one shaft's tube, as far as they are known.
type tubeSizes struct {
	length, outer, wall *quantity
	missing             []Missing
}

// tubeOf reads the tube of a shaft. Its length is the longest that it runs at.
func (e *engine) tubeOf(subject string) tubeSizes {
	length, outer, wall := "shaft.length", "tube.od", "tube.wall"
	if subject == "front_shaft" {
		length, outer, wall = "front_shaft.length", "front_shaft.tube_od", "front_shaft.tube_wall"
	}
	var t tubeSizes
	if t.length = e.runningLength(length); t.length == nil {
		t.missing = append(t.missing, e.lacks(length, measure.RideKerb)...)
	}
	if t.outer = e.bench(outer); t.outer == nil {
		t.missing = append(t.missing, need(outer))
	}
	if t.wall = e.bench(wall); t.wall == nil {
		t.missing = append(t.missing, need(wall))
	} else if t.outer != nil {
		t.wall = e.wallOf(wall, t.wall, t.outer)
	}
	return t
}

// wallOf keeps the draws of a wall read with a coarse tool between what a tube can have: no thinner
// than the point's least, no thicker than a rod.
func (e *engine) wallOf(key string, wall, outer *quantity) *quantity {
	p, _ := measure.PointOf(key)
	least := math.Min(wall.best, p.Low)
	return e.combine(fmt.Sprintf("wall from %g", least), 1, func(x, out []float64) {
		out[0] = math.Min(math.Max(x[0], least), x[1]/2)
	}, wall, outer)[0]
}

// runningLength is the longest of the lengths at ride height; hanging wheels say nothing of it.
func (e *engine) runningLength(key string) *quantity {
	var longest *quantity
	for _, s := range []measure.State{measure.RideKerb, measure.RideLaden} {
		if t := e.take(key, s); t != nil && (longest == nil || t.q.best > longest.best) {
			longest = t.q
		}
	}
	return longest
}

// material is what the tubes are made of: steel unless aluminium was stated.
func (e *engine) material() (m shaft.Material, note []Message) {
	name := "steel"
	if q := e.bench("tube.material"); q == nil {
		note = []Message{{Key: MsgSteelTaken}}
	} else if q.best == 2 {
		name = "aluminium"
	}
	return shaft.Material{ModulusGPa: e.setting("shaft." + name + "_modulus"), ShearGPa: e.setting("shaft." + name + "_shear"),
		KgPerM3: e.setting("shaft." + name + "_density")}, note
}

// endMass is what a shaft weighs more than its tube, kg: known of a one-piece shaft that was weighed,
// else anywhere in the range of the table, and said so.
func (e *engine) endMass(subject string) (*quantity, []Message) {
	t, weight := e.tubeOf(subject), e.bench("shaft.mass")
	if subject != "" || weight == nil || len(t.missing) > 0 {
		low, high := e.rangeOf("shaft.end_mass")
		return e.unread("shaft.mass", "shaft.end_mass"), []Message{{MsgEndsTaken, []any{low, high}}}
	}
	m, _ := e.material()
	return e.combine(fmt.Sprintf("end mass %v", m), 1, func(x, out []float64) {
		out[0] = math.Max(0, x[3]-shaft.Tube{LengthMM: x[0], OuterMM: x[1], WallMM: x[2]}.MassKg(m))
	}, t.length, t.outer, t.wall, weight)[0], nil
}

// bendingSpeed is the first bending speed of a tube, rev/min, half of what else the shaft weighs
// near each end.
func (e *engine) bendingSpeed(t tubeSizes, ends *quantity) (*quantity, []Message) {
	m, notes := e.material()
	return e.combine(fmt.Sprintf("bending speed %v", m), 1, func(x, out []float64) {
		tube := shaft.Tube{LengthMM: x[0], OuterMM: x[1], WallMM: x[2]}
		out[0] = orNone(shaft.CriticalSpeed(tube, m, shaft.EndMass{Kg: x[3], StationMM: x[4]}))
	}, t.length, t.outer, t.wall, ends, e.contested("shaft.end_station"))[0], notes
}

func criticalSpeed(e *engine, subject string) answer {
	t := e.tubeOf(subject)
	if len(t.missing) > 0 {
		return answer{missing: t.missing}
	}
	a := answer{advice: Message{Key: MsgWiderTube}}
	ends, taken := e.endMass(subject)
	a.q, a.notes = e.bendingSpeed(t, ends)
	a.notes = append(a.notes, taken...)
	fraction := e.setting("shaft.critical_speed")
	return e.fastEnough(a, "shaft.critical_speed", fraction)
}

// halfCritical stays out of the build's chance: a shaft may pass through half its bending speed, it
// must not dwell there, and no reading says where it dwells.
func halfCritical(e *engine, subject string) answer {
	t := e.tubeOf(subject)
	if len(t.missing) > 0 {
		return answer{missing: t.missing}
	}
	var a answer
	ends, taken := e.endMass(subject)
	full, notes := e.bendingSpeed(t, ends)
	notes = append(notes, taken...)
	a.notes = notes
	a.q = e.combine("half", 1, func(x, out []float64) { out[0] = x[0] / 2 }, full)[0]
	band := e.setting("shaft.half_critical")
	a.gentle = !e.picked("shaft.half_critical")
	low, high := a.q.best*(1-band), a.q.best*(1+band)
	a.advice = Message{MsgDontDwell, []any{low, high}}
	if perKmH := e.turnsPerKmH(); perKmH > 0 {
		a.notes = append(a.notes, Message{MsgDwellRoad, []any{low / perKmH, high / perKmH}})
	}
	return e.fastEnough(a, "shaft.half_critical", 1-band)
}

// fastEnough judges a speed of the shaft by the highest that it runs at, as a share.
func (e *engine) fastEnough(a answer, key string, share float64) answer {
	s := e.speedOf()
	if s.q == nil {
		a.missing = s.missing
		return a
	}
	a.notes = append(a.notes, s.note())
	a.against = e.combine(fmt.Sprintf("highest speed / %g", share), 1, func(x, out []float64) { out[0] = x[0] / share }, s.q)[0]
	a.own = e.workedLimit(key, a.against, "rev/min", "min")
	return a
}

// workedLimit is a limit of the table turned into the finding's own unit.
func (e *engine) workedLimit(key string, at *quantity, unit, sense string) *Limit {
	l := e.limitOf(key)
	return &Limit{Key: key, Value: at.best, Unit: unit, Sense: sense, Source: l.Source, Reason: l.Reason}
}

// statedLimit is a limit that a maker or a plate states.
func statedLimit(key string, at *quantity, unit string) *Limit {
	return &Limit{Key: key, Value: at.best, Unit: unit, Sense: "max", Source: "stated for this part"}
}

// turnsPerKmH is the shaft's speed at 1 km/h; 0 where axle or tyre is not known.
func (e *engine) turnsPerKmH() float64 {
	axle, radius := e.axleToShaft(), e.rollingRadius()
	if axle == nil || radius == nil {
		return 0
	}
	n, err := shaft.SpeedFromRoad(shaft.RoadDrive{KmPerH: 1, RadiusMM: radius.best, AxleRatio: axle.best, RoadFactor: 1})
	if err != nil {
		return 0
	}
	return n
}
