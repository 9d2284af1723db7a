package checks

import (
	"slices"

	"yokebook/checks/travel"
	"yokebook/measure"
)

// windUpKeys name the wind-up of a case as a person states it.
var windUpKeys = map[measure.Case]string{measure.Drive: "pinion.windup_drive", measure.Coast: "pinion.windup_coast"}

// woundBy is how far torque turns the pinion, degrees, front end up in drive, down on the overrun.
type woundBy struct {
	q    *quantity
	note []Message
}

// windUp is the wind-up of a case: as stated, else worked out from torque and springs; nil when
// neither is known.
func (e *engine) windUp(of measure.Case) *woundBy {
	key, ok := windUpKeys[of]
	if !ok {
		return nil
	}
	if w, known := e.wound[of]; known {
		return w
	}
	w := e.windUpWorked(of, key)
	if q := e.bench(key); q != nil {
		w = &woundBy{q: q}
	}
	if e.wound == nil {
		e.wound = map[measure.Case]*woundBy{}
	}
	e.wound[of] = w
	return w
}

// windUpWorked is the wind-up on leaf springs under the torque on the axle. Clamps, bushes and the
// leaves' friction are not in it, so it counts as estimated.
func (e *engine) windUpWorked(of measure.Case, key string) *woundBy {
	front, rear, rate := e.bench("spring.front_half"), e.bench("spring.rear_half"), e.bench("spring.rate")
	torque := e.axleTorque()
	if e.build.Layout.Axle != "leaf" || front == nil || rear == nil || rate == nil || torque == nil {
		return nil
	}
	share := 1.0
	if of == measure.Coast {
		share = e.setting("windup.coast_share")
	}
	springs := e.setting("windup.springs")
	c := &cause{key: "estimated|" + key, shape: rectangular, input: key}
	off := e.number(0, []term{{c, given("estimated.angle")}}, origin{restsOn: []string{key}})
	out := e.combine("wound on springs", 3, func(x, out []float64) {
		one, err := travel.Spring{FrontHalfMM: x[0], RearHalfMM: x[1], RateNPerMM: x[2]}.WindUpStiffness()
		out[1], out[2] = float64(x[3]*x[4]), orNone(one, err)*x[5]
		out[0] = max(0, orNone(travel.WindUp(out[1], out[2]))+x[6])
	}, front, rear, rate, torque, exact(share), exact(springs), off)
	note := Message{MsgWindUpWorked, []any{out[0].best, out[1].best, out[2].best}}
	return &woundBy{q: out[0], note: []Message{note}}
}

// axleTorque is the torque that the housing must hold, N·m: the greatest on the shaft, at the wheels.
// Nil when it is not known, or where the shaft leads to a transfer box instead of an axle.
func (e *engine) axleTorque() *quantity {
	ratio := e.bench("axle.ratio")
	if ratio == nil || e.build.Layout.Drives == "transfer" {
		return nil
	}
	onShaft := e.torqueCase().q
	if onShaft == nil {
		return nil
	}
	return e.combine("axle torque", 1, func(x, out []float64) { out[0] = float64(x[0] * x[1]) }, onShaft, ratio)[0]
}

// restsOnWindUp reports whether a number of a wound-up line rests on the wind-up at all.
func (e *engine) restsOnWindUp(of measure.Case, q *quantity) bool {
	w := e.windUp(of)
	if w == nil {
		return false
	}
	key := windUpKeys[of]
	return e.rests(q, key) || slices.Contains(q.from.restsOn, key)
}
