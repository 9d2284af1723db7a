package shaft

import (
	"fmt"
	"math"
)

// EngineDrive is what turns the shaft from the engine's side.
type EngineDrive struct {
	RevPerMin float64 // highest engine speed
	Gear      float64 // ratio of the highest gear; below 1 for an overdrive
	Transfer  float64 // high ratio of the transfer box; 1 where there is none
}

// SpeedFromEngine returns the highest shaft speed in rev/min: n/(gear·transfer). It errs when a
// number is not above 0 and finite, or the result is not.
func SpeedFromEngine(d EngineDrive) (revPerMin float64, err error) {
	if err := positive(part{"engine speed", d.RevPerMin}, part{"gear ratio", d.Gear}, part{"transfer ratio", d.Transfer}); err != nil {
		return 0, err
	}
	return result(d.RevPerMin / d.Gear / d.Transfer)
}

// RoadDrive is what turns the shaft from the road's side; no gear enters.
type RoadDrive struct {
	KmPerH     float64
	RadiusMM   float64 // rolled circumference / 2π, less than half the tyre's diameter
	AxleRatio  float64
	RoadFactor float64 // how much faster than KmPerH is reckoned with; 1 for none
}

// SpeedFromRoad returns the shaft speed in rev/min at a road speed:
//
//	n = f·v/3.6 / (2π·r) · 60 · i,   v in km/h, r in m
//
// It errs when a number is not above 0 and finite, or the result is not.
func SpeedFromRoad(d RoadDrive) (revPerMin float64, err error) {
	if err := positive(part{"road speed", d.KmPerH}, part{"tyre radius", d.RadiusMM}, part{"axle ratio", d.AxleRatio}, part{"road factor", d.RoadFactor}); err != nil {
		return 0, err
	}
	around := 2 * math.Pi * d.RadiusMM / 1000
	return result(d.RoadFactor * d.KmPerH / 3.6 / around * 60 * d.AxleRatio)
}

type part struct {
	name  string
	value float64
}

func positive(parts ...part) error {
	for _, p := range parts {
		if !(p.value > 0) || math.IsInf(p.value, 0) {
			return fmt.Errorf("%s %g must be above 0; enter it again", p.name, p.value)
		}
	}
	return nil
}

func result(revPerMin float64) (float64, error) {
	if !(revPerMin > 0) || math.IsInf(revPerMin, 0) {
		return 0, fmt.Errorf("shaft speed is too large or too small for a number; check the speeds, the ratios and the tyre")
	}
	return revPerMin, nil
}
