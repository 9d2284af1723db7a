package checks

import (
	"fmt"
	"math"
	"slices"

	"yokebook/checks/joint"
	"yokebook/checks/mass"
	"yokebook/checks/shaft"
	"yokebook/measure"
)

var loadRows = []Check{
	{Key: "joint.torque", Group: "joint", Points: append([]string{"joint.torque_rating"}, torque...), Unit: "N·m", perPart: jointTorque},
	{Key: "joint.couple", Group: "joint", Points: append(append(torque[:len(torque):len(torque)], "shaft.length"), angles...), Unit: "N·m",
		perPart: couple, subjects: jointNames},
	{Key: "joint.life", Group: "joint", Points: append(append([]string{"shaft.torque_mean", "joint.life_torque"}, angles...), speeds...), Unit: "h",
		Limit: "joint.life", perPart: life, subjects: jointNames},
}

// torqueCase is the greatest torque on the shaft: what the engine can do in the lowest gear, on the
// road no more than what makes the wheels slip.
type torqueCase struct {
	q       *quantity
	missing []Missing
	notes   func() []Message
}

func (e *engine) torqueCase() torqueCase {
	low, missing := e.lowGear()
	if len(missing) > 0 {
		return torqueCase{missing: missing}
	}
	alone := func(key string) torqueCase {
		return torqueCase{q: low, notes: func() []Message { return []Message{{key, []any{low.best}}} }}
	}
	if e.build.Layout.Use == "offroad" {
		return alone(MsgTorqueOffroad)
	}
	slip := e.wheelSlip()
	if slip == nil {
		return alone(MsgTorqueNoGrip)
	}
	q := e.combine("lesser", 1, func(x, out []float64) { out[0] = math.Min(x[0], x[1]) }, low, slip)[0]
	return torqueCase{q: q, notes: func() []Message {
		notes := []Message{{MsgTorqueLesser, []any{low.best, slip.best}}}
		if e.bench("tyre.friction") == nil {
			notes = append(notes, Message{MsgGripTaken, []any{e.setting("torque.tyre_friction")}})
		}
		return notes
	}}
}

// lowGear is the torque of the lowest gear at the shaft. A transfer box counts where it stands ahead
// of the shaft, not where the shaft leads to it.
func (e *engine) lowGear() (*quantity, []Missing) {
	engine, gear := e.bench("engine.torque_max"), e.bench("gear.lowest")
	var missing []Missing
	if engine == nil {
		missing = append(missing, need("engine.torque_max"))
	}
	if gear == nil {
		missing = append(missing, need("gear.lowest"))
	}
	if len(missing) > 0 {
		return nil, missing
	}
	converter, share := e.bench("converter.ratio"), e.setting("torque.automatic_share")
	if converter == nil {
		converter, share = exact(1), e.setting("torque.manual_share")
	}
	transfer, passed := e.transferLow(), e.setting("torque.transfer_share")
	if transfer == nil {
		transfer, passed = exact(1), 1
	}
	return e.combine(fmt.Sprintf("low gear %g %g", share, passed), 1, func(x, out []float64) {
		out[0] = orNone(shaft.LowGearTorque(shaft.LowGear{EngineNm: x[0], NetShare: x[1], Gear: x[2], GearShare: share, Converter: x[3],
			Transfer: x[4], TransferEff: passed}))
	}, engine, e.contested("torque.net_share"), gear, converter, transfer)[0], nil
}

func (e *engine) transferLow() *quantity {
	if e.build.Layout.Drives == "transfer" {
		return nil
	}
	if q := e.bench("transfer.low"); q != nil {
		return q
	}
	return e.bench("transfer.high")
}

// wheelSlip is the shaft's torque at which the driven wheels slip; nil where the laden load on the
// driven axle, its ratio or the tyre is not known, or a transfer box stands between.
func (e *engine) wheelSlip() *quantity {
	layout := e.build.Layout
	axle := "rear_axle"
	if layout.PinionInFront() {
		axle = "front_axle"
	}
	load, ratio, radius := e.mostOn(axle), e.bench("axle.ratio"), e.rollingRadius()
	if layout.Drives == "transfer" || load == nil || ratio == nil || radius == nil {
		return nil
	}
	friction := e.bench("tyre.friction")
	if friction == nil {
		friction = exact(e.setting("torque.tyre_friction"))
	}
	share := e.setting("torque.axle_share")
	return e.combine(fmt.Sprintf("wheel slip %g", share), 1, func(x, out []float64) {
		out[0] = orNone(shaft.SlipTorque(shaft.Grip{AxleKg: x[0], Friction: x[1], RadiusMM: x[2], AxleRatio: x[3], AxleShare: share, G: mass.G}))
	}, load, friction, radius, ratio)[0]
}

// mostOn is the laden load on an axle after the swap, else what it may carry at most; nil where
// neither is known.
func (e *engine) mostOn(axle string) *quantity {
	if after := e.axleAfter(axle); after.q != nil && len(after.missing) == 0 {
		return after.q
	}
	return e.bench(axle + ".limit")
}

func jointTorque(e *engine, _ string) answer {
	c := e.torqueCase()
	if c.q == nil {
		return answer{missing: c.missing}
	}
	a := answer{q: c.q, notes: c.notes(), advice: Message{Key: MsgStrongerJoint}}
	rating := e.bench("joint.torque_rating")
	if rating == nil {
		a.missing = []Missing{need("joint.torque_rating")}
		return a
	}
	a.against, a.own = rating, statedLimit("joint.torque_rating", rating, "N·m")
	return a
}

// couple is the greatest secondary couple that a joint puts on its shafts at full torque, in the
// running state with its largest angle; a number for whoever makes mounts and bearings, without a
// verdict.
func couple(e *engine, subject string) answer {
	j := e.jointIndex(subject)
	c := e.torqueCase()
	a := e.workingAngle(j)
	if a.missing = append(a.missing, c.missing...); len(a.missing) > 0 {
		return answer{missing: a.missing}
	}
	a.q = e.combine("couple", 1, func(x, out []float64) { out[0], _ = joint.Couples(x[0], x[1]) }, c.q, a.q)[0]
	a.silent = true
	a.notes = append(a.notes, c.notes()...)
	length := "shaft.length"
	if j == 0 && e.build.Layout.Shafts == 2 {
		length = "front_shaft.length"
	}
	if l := e.runningLength(length); l != nil && l.best > 0 {
		a.notes = append(a.notes, Message{MsgCoupleForce, []any{a.q.best / l.best * 1000, l.best}})
	}
	return a
}

// workingAngle is a joint's largest angle of all states that the shaft runs in at ride height, on own
// weight or laden, wound up or not. A note names the state; where no state was read there is none, for
// slopes that are stated hold in every one.
func (e *engine) workingAngle(j int) answer {
	var list []*quantity
	var a answer
	var worst measure.State
	for _, s := range []measure.State{measure.RideKerb, measure.RideLaden} {
		for _, ln := range e.lines {
			if ln.state.Base() != s {
				continue
			}
			if q := e.angle(ln, j); q != nil {
				if len(list) == 0 || q.best > maxBest(list) {
					worst = ln.state
				}
				list = append(list, q)
				a.predicted = a.predicted || ln.predicted
			}
		}
	}
	if len(list) == 0 {
		return e.atJoint(e.lineOf(measure.RideKerb), j)
	}
	a.notes = []Message{{MsgWorstState, []any{worst.String()}}}
	a.q = e.combine("most", 1, func(x, out []float64) { out[0] = slices.Max(x) }, list...)[0]
	return a
}

// life is reckoned at the highest shaft speed, the mean torque and the largest angle that the joint runs
// at, so that the hours are no more than it is good for; each half of a double joint takes
// half the angle.
func life(e *engine, subject string) answer {
	j := e.jointIndex(subject)
	a := e.workingAngle(j)
	mean, rated, s := e.bench("shaft.torque_mean"), e.bench("joint.life_torque"), e.speedOf()
	if mean == nil {
		a.missing = append(a.missing, need("shaft.torque_mean"))
	}
	if rated == nil {
		a.missing = append(a.missing, need("joint.life_torque"))
	}
	if a.missing = append(a.missing, s.missing...); len(a.missing) > 0 {
		return answer{missing: a.missing}
	}
	halves := 1.0
	if e.lineOf(measure.RideKerb).double[j] {
		halves = 2
	}
	a.q = e.combine(fmt.Sprintf("life / %g", halves), 1, func(x, out []float64) {
		steep, flat := joint.Life(joint.Duty{AngleDeg: x[0] / halves, RevPerMin: x[1], MeanNm: x[2], RatedNm: x[3]})
		between := 3 * (x[4] - 3) // exponent 3 … 10/3
		out[0] = float64(between*steep) + float64((1-between)*flat)
	}, a.q, s.q, mean, rated, e.contested("joint.life_exponent"))[0]
	a.notes = append(a.notes, s.note(), Message{Key: MsgLifeFullSpeed})
	a.advice = Message{Key: MsgLongerLife}
	return a
}
