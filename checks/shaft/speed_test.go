package shaft

import (
	"math"
	"strings"
	"testing"
)

const (
	etrto = "size code and rolling factor: ETRTO Standards Manual (from memory); worked apart from this code"
	turns = "v/3.6/circumference·60·ratio, worked apart from this code"
)

func TestShaftSpeedFromTheRoad(t *testing.T) {
	for _, row := range []struct {
		code               string
		kmPerH, axle, want float64
	}{
		{"205/55 R16", 100, 3.73, 3225.6},
		{"235/85 R16", 110, 4.10, 3058.0},
		{"195/65 R15", 80, 3.07, 2115.2},
		{"265/70 R17", 120, 3.909, 3192.9},
	} {
		tyre, err := ParseTyre(row.code)
		if err != nil {
			t.Fatal(err)
		}
		got, err := SpeedFromRoad(RoadDrive{KmPerH: row.kmPerH, RadiusMM: tyre.RadiusMM(), AxleRatio: row.axle, RoadFactor: 1})
		if err != nil || math.Abs(got-row.want) > 0.06 {
			t.Errorf("%s at %g km/h, %g: got %.2f (%v), want %g (%s)", row.code, row.kmPerH, row.axle, got, err, row.want, turns)
		}
		faster, _ := SpeedFromRoad(RoadDrive{KmPerH: row.kmPerH, RadiusMM: tyre.RadiusMM(), AxleRatio: row.axle, RoadFactor: 1.1})
		if math.Abs(faster-1.1*got) > 1e-9 {
			t.Errorf("a tenth faster gives %g, not a tenth more than %g", faster, got)
		}
	}
	// With half the diameter as radius, π·OD for the circumference, the first row would be 3 % low.
	free, _ := SpeedFromRoad(RoadDrive{KmPerH: 100, RadiusMM: 631.90 / 2, AxleRatio: 3.73, RoadFactor: 1})
	if math.Abs(free-3131.6) > 0.06 {
		t.Errorf("free radius: got %.2f, want 3131.6 (%s)", free, turns)
	}
}

func TestShaftSpeedFromTheEngine(t *testing.T) {
	for _, row := range []struct {
		name string
		d    EngineDrive
		want float64
	}{
		{"direct top gear", EngineDrive{4500, 1, 1}, 4500},
		{"overdrive turns the shaft faster than the engine", EngineDrive{4500, 0.75, 1}, 6000},
		{"transfer box", EngineDrive{4400, 1, 1.1}, 4000},
	} {
		if got, err := SpeedFromEngine(row.d); err != nil || math.Abs(got-row.want) > 1e-9 {
			t.Errorf("%s: got %g (%v), want %g (division, by hand)", row.name, got, err, row.want)
		}
	}
}

func TestSpeedsThatAreNone(t *testing.T) {
	good := RoadDrive{100, 300, 4, 1}
	if _, err := SpeedFromRoad(good); err != nil {
		t.Fatalf("control: %v", err)
	}
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		for _, err := range []error{
			second(SpeedFromRoad(RoadDrive{bad, 300, 4, 1})), second(SpeedFromRoad(RoadDrive{100, bad, 4, 1})),
			second(SpeedFromRoad(RoadDrive{100, 300, bad, 1})), second(SpeedFromRoad(RoadDrive{100, 300, 4, bad})),
			second(SpeedFromEngine(EngineDrive{bad, 1, 1})), second(SpeedFromEngine(EngineDrive{4500, bad, 1})),
			second(SpeedFromEngine(EngineDrive{4500, 1, bad})),
		} {
			if err == nil || !strings.Contains(err.Error(), "must be above 0") {
				t.Errorf("%g: %v", bad, err)
			}
		}
	}
	for _, err := range []error{
		second(SpeedFromEngine(EngineDrive{1e300, 1e-300, 1})),
		second(SpeedFromRoad(RoadDrive{5e-324, 1e300, 1, 1})),
	} {
		if err == nil || !strings.Contains(err.Error(), "too large or too small") {
			t.Errorf("beyond numbers: %v", err)
		}
	}
}

func second(_ float64, err error) error { return err }
