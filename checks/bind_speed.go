package checks

import (
	"math"
	"slices"

	"yokebook/checks/shaft"
	"yokebook/measure"
)

// speed is the highest shaft speed in rev/min, with the note that says where it comes from.
type speed struct {
	q       *quantity
	note    func() Message
	missing []Missing
}

// speedOf takes the engine's figures. The road's serve where those are absent, with a factor for
// what a driver exceeds it by, or where a governed road speed is stated with its reason.
func (e *engine) speedOf() speed {
	rpm, gear := e.bench("engine.rpm_max"), e.bench("gear.highest")
	road, reason := e.roadSpeed()
	if road != nil && (reason != "" || rpm == nil || gear == nil) {
		factor := 1.0
		if reason == "" {
			factor = given("speed.road_factor")
		}
		q := e.shaftSpeed(road, factor)
		return speed{q: q, note: func() Message {
			if reason != "" {
				return Message{MsgSpeedGoverned, []any{q.best, reason}}
			}
			return Message{MsgSpeedRoad, []any{q.best, factor}}
		}}
	}
	var missing []Missing
	if rpm == nil {
		missing = append(missing, Missing{Point: "engine.rpm_max", State: measure.OffBench})
	}
	if gear == nil {
		missing = append(missing, Missing{Point: "gear.highest", State: measure.OffBench})
	}
	if len(missing) > 0 {
		return speed{missing: missing}
	}
	transfer := exact(1)
	if high := e.bench("transfer.high"); high != nil && !e.aheadOfTransfer() {
		transfer = high
	}
	q := e.combine("engine speed", 1, func(x, out []float64) {
		out[0] = orNone(shaft.SpeedFromEngine(shaft.EngineDrive{RevPerMin: x[0], Gear: x[1], Transfer: x[2]}))
	}, rpm, gear, transfer)[0]
	return speed{q: q, note: func() Message { return Message{MsgSpeedEngine, []any{q.best}} }}
}

// bench is a point that holds in every state.
func (e *engine) bench(key string) *quantity {
	if t := e.take(key, measure.OffBench); t != nil {
		return t.q
	}
	return nil
}

// aheadOfTransfer reports a shaft that leads to the transfer box: its box slows what is behind it.
func (e *engine) aheadOfTransfer() bool { return e.build.Layout.Drives == "transfer" }

// axleToShaft is how many turns of the shaft make one of the wheels in the fastest gear; nil where the
// axle's ratio is not known. A transfer box behind the shaft takes part.
func (e *engine) axleToShaft() *quantity {
	axle, high := e.bench("axle.ratio"), e.bench("transfer.high")
	if axle == nil || high == nil || !e.aheadOfTransfer() {
		return axle
	}
	return e.combine("axle and transfer box", 1, func(x, out []float64) { out[0] = float64(x[0] * x[1]) }, axle, high)[0]
}

// road is what turns the shaft from the road's side, each number as read.
type road struct{ kmPerH, axle, radius *quantity }

// roadSpeed returns the road's figures, nil until all are there, and the reason where that speed is
// governed: a reading of road.speed_max with the tag "governed" and a note.
func (e *engine) roadSpeed() (figures *road, reason string) {
	r := road{e.bench("road.speed_max"), e.axleToShaft(), e.rollingRadius()}
	if r.kmPerH == nil || r.axle == nil || r.radius == nil {
		return nil, ""
	}
	var governed []measure.Reading
	for _, reading := range e.readings {
		if reading.Point == "road.speed_max" && reading.Tag == "governed" && reading.Note != "" {
			governed, reason = append(governed, reading), reading.Note
		}
	}
	if point, ok := measure.PointOf("road.speed_max"); ok && len(governed) > 0 {
		r.kmPerH = e.repeats(point, governed, 0) // not the mean with a speed that nothing governs
	}
	return &r, reason
}

func (e *engine) shaftSpeed(r *road, factor float64) *quantity {
	return e.combine("road speed", 1, func(x, out []float64) {
		out[0] = orNone(shaft.SpeedFromRoad(shaft.RoadDrive{KmPerH: x[0], RadiusMM: x[1], AxleRatio: x[2], RoadFactor: x[3]}))
	}, r.kmPerH, r.radius, r.axle, exact(factor))[0]
}

// orNone marks what could not be computed; a quantity that holds it is never shown as a number.
func orNone(number float64, err error) float64 {
	if err != nil {
		return math.NaN()
	}
	return number
}

// rollingRadius is tyre.radius in mm, else worked out from tyre.code, with the range that the code
// leaves open.
func (e *engine) rollingRadius() *quantity {
	if e.tyre == nil {
		e.tyre = &rolling{e.findRadius()}
	}
	return e.tyre.radius
}

// rolling is the radius of the tyres, nil where nobody read them.
type rolling struct{ radius *quantity }

func (e *engine) findRadius() *quantity {
	if q := e.bench("tyre.radius"); q != nil {
		return q
	}
	for i := range slices.Backward(e.readings) {
		if e.readings[i].Point != "tyre.code" {
			continue
		}
		r := e.readings[i]
		tyre, err := shaft.ParseTyre(r.Value.Token())
		if err != nil {
			continue
		}
		low, high := tyre.RadiusRangeMM()
		c := &cause{key: "tyre|" + string(r.ID), shape: rectangular, input: r.Point, reading: r.ID}
		return e.number(tyre.RadiusMM(), []term{{c, (high - low) / 2}}, originOf(r))
	}
	return nil
}
