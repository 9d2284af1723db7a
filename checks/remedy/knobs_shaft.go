package remedy

import (
	"math"
	"slices"

	"yokebook/checks"
	"yokebook/checks/shaft"
	"yokebook/measure"
)

var sliding = []string{"slip.travel", "slip.engaged", "slip.closing", "slip.seal"}

// shaftKnobs are what a shaft builder can make otherwise.
var shaftKnobs = []Knob{
	{Key: "shaft.longer", Unit: "mm", Step: 0.5, Least: -150, Most: 150, Usual: 20, Source: practice, Serves: sliding,
		usable: func(v *vehicle) bool { return v.has("slip.exposed") },
		change: func(v *vehicle, e *edit, mm float64) {
			v.carry(e, func(measure.State) moved { return moved{longerMM: mm} })
			if !v.has(slipShaft(v) + ".slope") { // no line to swing: it is drawn out by that much less
				e.shiftAll("slip.exposed", -mm)
			}
		}, costs: costsOfLonger},
	{Key: "slip.spline", Unit: "mm", Step: 0.5, Least: 0, Most: 150, Usual: 20, Source: practice, Serves: append([]string{"spline.capacity"}, sliding...),
		usable: func(v *vehicle) bool { return v.build.Layout.Slip == "shaft" && v.has("slip.usable") },
		change: func(_ *vehicle, e *edit, mm float64) {
			for _, p := range []string{"slip.usable", "slip_male.length", "slip_female.length"} {
				e.shiftAll(p, mm)
			}
		}, costs: func(*vehicle, float64) []checks.Message {
			return []checks.Message{{Key: MsgLongerSpline}, {Key: MsgShaftMade}}
		}},
	tubeKnob("shaft.tube", "tube.od", "tube.wall", "shaft.length"),
	tubeKnob("front_shaft.tube", "front_shaft.tube_od", "front_shaft.tube_wall", "front_shaft.length"),
}

// slipShaft names the shaft that the sliding spline belongs to.
func slipShaft(v *vehicle) string {
	gear, axle := v.shafts()
	if v.build.Layout.Slip == "gearbox" {
		return gear
	}
	return axle
}

func costsOfLonger(v *vehicle, mm float64) []checks.Message {
	out := []checks.Message{{Key: MsgShaftMade}}
	if now, ok := v.read("slip.exposed", measure.RideKerb); ok {
		out = append(out, checks.Message{Key: MsgOutAtRide, Args: []any{now - mm}})
	}
	return out
}

// tubeKnob is another outside diameter from the series that tube is sold in, with the wall of the
// series nearest to the present one. What the ends weigh stays.
func tubeKnob(key, outer, wall, length string) Knob {
	size := func(v *vehicle, amount float64) (shaft.Size, bool) {
		od, _ := v.bench(outer)
		thick, _ := v.bench(wall)
		return sizeNear(od+amount, thick)
	}
	weight := func(v *vehicle, s shaft.Size) float64 {
		m := shaft.Material{KgPerM3: given("shaft.steel_density")}
		if kind, ok := v.bench("tube.material"); ok && kind == 2 {
			m.KgPerM3 = given("shaft.aluminium_density")
		}
		od, _ := v.bench(outer)
		thick, _ := v.bench(wall)
		tube := shaft.Tube{LengthMM: v.reach(partOf(length), measure.RideKerb), OuterMM: od, WallMM: thick}
		was := tube.MassKg(m)
		tube.OuterMM, tube.WallMM = s.OuterMM, s.WallMM
		return tube.MassKg(m) - was
	}
	return Knob{Key: key, Unit: "mm", Usual: 15, Source: series,
		Serves: []string{"shaft.critical_speed", "shaft.half_critical", "shaft.stress", "shaft.clearance"},
		usable: func(v *vehicle) bool { return v.has(outer, wall) },
		amounts: func(_ *Knob, v *vehicle) []float64 {
			od, _ := v.bench(outer)
			list := []float64{0}
			for _, s := range shaft.Series {
				list = append(list, s.OuterMM-od)
			}
			slices.Sort(list)
			return slices.Compact(list)
		},
		change: func(v *vehicle, e *edit, amount float64) {
			s, ok := size(v, amount)
			if !ok {
				e.broken = true
				return
			}
			e.setAll(outer, s.OuterMM)
			e.setAll(wall, s.WallMM)
			if key == "shaft.tube" {
				e.shiftAll("shaft.mass", weight(v, s))
			}
		},
		costs: func(v *vehicle, amount float64) []checks.Message {
			s, _ := size(v, amount)
			out := []checks.Message{{Key: MsgTube, Args: []any{s.OuterMM, s.WallMM, weight(v, s)}}, {Key: MsgShaftMade}}
			if amount > 0 {
				out = append(out, checks.Message{Key: MsgTubeRoom, Args: []any{amount / 2}})
			}
			return out
		}}
}

// sizeNear is the size of an outside diameter whose wall is nearest to one, the thicker of equals.
func sizeNear(outerMM, wallMM float64) (best shaft.Size, ok bool) {
	for _, s := range shaft.Series {
		if math.Abs(s.OuterMM-outerMM) > 1e-6 {
			continue
		}
		if !ok || math.Abs(s.WallMM-wallMM) <= math.Abs(best.WallMM-wallMM) {
			best, ok = s, true
		}
	}
	return best, ok
}

// partOf is the part that a point belongs to.
func partOf(point string) string {
	for i, c := range point {
		if c == '.' {
			return point[:i]
		}
	}
	return point
}
