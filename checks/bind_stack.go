package checks

import (
	"math"

	"yokebook/checks/clutch"
)

// clutchHub asks whether the disc's hub stands on the shaft's splines over its length, with the disc
// new and worn, and clears the heads of the flywheel bolts.
func clutchHub(e *engine, c *Check) []Finding {
	if e.clutchless() {
		return nil
	}
	a := &asked{e: e}
	wear := e.setting("clutch.facing_wear")
	if args, whole := a.readAll(hubPoints...); whole {
		length := e.bench("disc_hub.length")
		if length == nil {
			length = exact(math.MaxFloat64)
		}
		args = append(args, length, exact(e.setting("clutch.hub")), exact(wear))
		out := e.combine("hub", 2, hubOnSpline, args...)
		a.askWorked(out[0], "clutch.hub", "mm", "min", out[1], Message{MsgHubOff, []any{math.Max(0, out[1].best-out[0].best)}})
		a.notes = append(a.notes, Message{MsgWornDisc, []any{wear}})
	}
	front, bolts := e.bench("disc_hub.front"), a.read("flywheel.bolt_clear")
	if front != nil && bolts != nil {
		room := e.combine("boss", 1, func(x, out []float64) { out[0] = x[0] + x[1] - x[2] }, front, bolts, exact(wear))[0]
		a.ask(room, "clutch.boss", Message{Key: MsgBossOnBolts})
	}
	return []Finding{a.finding(c, "")}
}

// hubOnSpline works out one draw: how much of the hub is on the splines at the worse of new and worn,
// and how much is asked for.
func hubOnSpline(x, out []float64) {
	hub := clutch.Span{FromMM: x[0] + x[1], ToMM: x[0] + x[2]}
	shaft := clutch.Span{FromMM: x[3] + x[4], ToMM: x[3] + x[5]}
	long := math.Min(hub.ToMM-hub.FromMM, x[6])
	engaged := func(h clutch.Span) float64 { return math.Min(shaft.OverlapMM(h), x[6]) }
	out[0] = math.Min(engaged(hub), engaged(hub.Moved(-x[8])))
	out[1] = float64(x[7] * long)
	if long <= 0 { // rear end read ahead of the front end
		out[0], out[1] = math.NaN(), math.NaN()
	}
}

// clutchSpigot asks whether the input shaft's nose runs in its bearing over enough of it, with the
// right play, and touches neither the crank with its tip nor the bearing with its step.
func clutchSpigot(e *engine, c *Check) []Finding {
	if e.clutchless() {
		return nil
	}
	a := &asked{e: e}
	args, whole := a.readAll(nosePoints...)
	bottom := a.read("spigot.bore_depth")
	if whole {
		depth := bottom
		if depth == nil {
			depth = exact(0)
		}
		out := e.combine("nose", 4, func(x, out []float64) {
			n := clutch.Nose{AdapterMM: x[0], TipMM: x[1], NoseMM: x[2], FaceMM: x[3], BearingMM: x[4], BottomMM: x[5]}
			out[0], out[1], out[2], out[3] = n.EngagedMM(), float64(x[6]*x[4]), n.StepGapMM(), n.BottomGapMM()
		}, append(args, depth, exact(e.setting("clutch.spigot")))...)
		a.askWorked(out[0], "clutch.spigot", "mm", "min", out[1], Message{MsgNoseShort, []any{math.Max(0, out[1].best-out[0].best)}})
		a.keepOff(out[2], "clutch.spigot_step")
		if bottom != nil {
			a.keepOff(out[3], "clutch.spigot_end")
		}
	}
	if sizes, read := a.readAll("spigot.bore", "input_shaft.tip_dia"); read {
		play := e.combine("play", 1, func(x, out []float64) { out[0] = x[0] - x[1] }, sizes...)[0]
		a.ask(play, "clutch.spigot_play", Message{Key: MsgOtherSpigot})
	}
	return []Finding{a.finding(c, "")}
}

// keepOff demands room lengthwise, else the tip is too far in by what lacks.
func (a *asked) keepOff(room *quantity, key string) {
	a.ask(room, key, Message{MsgNoseLong, []any{math.Max(0, a.e.setting(key)-room.best)}})
}
