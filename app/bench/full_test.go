package bench

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// fullSize is how many readings a build has at least in which everything was read, some of it several times.
const fullSize = 300

// sane overrides the middle of the plausible range where the middle would be no vehicle.
var sane = map[string]string{
	"gearbox.slope": "3.0", "shaft.slope": "5.6", "pinion.slope": "2.6", "datum.slope": "0.2", "shaft.phase": "0.0",
	"gearbox.plan": "0.0", "shaft.plan": "0.4", "pinion.plan": "0.0", "engine.rpm_max": "3800", "gear.highest": "0.85",
	"joint.angle_limit": "20", "pinion.windup_drive": "1.5", "pinion.windup_coast": "0.8", "shaft.length": "1210",
	"slip.usable": "90", "slip.exposed": "30", "tube.od": "76.2", "tube.wall": "2.1", "slip_male.splines": "16", "slip_female.splines": "16",
	"tyre.code": "235/85 R16",
}

// standing are the states that a full build was read in, each with the hub's height in mm.
var standing = []struct {
	state  measure.State
	height string
}{{measure.Hanging, "612"}, {measure.RideKerb, "518"}, {measure.RideLaden, "489"}}

// full is a one-piece build in which every point was read: what moves in three states, the slopes
// again and again until there are enough. Every number in it is invented.
func full(tb testing.TB) *measure.Build {
	tb.Helper()
	b := &measure.Build{ID: "019d2a00-0000-7000-8000-0000000f0000", Title: "Invented: everything read", Layout: measure.NewLayout()}
	resolution, _ := measure.NumberValue("0.1")
	b.Instruments = []measure.Instrument{{ID: "finder", Kind: "angle", Resolution: resolution, Accuracy: resolution, Unit: "deg"}}
	b.Layout.Clutch = "push"
	for _, p := range measure.Points {
		switch {
		case !p.In(b.Layout), strings.HasPrefix(p.Key, "as_built."): // the order is not back yet
		case p.Moves:
			for i, s := range standing {
				add(tb, b, p, s.state, s.height, i+2)
			}
		default:
			add(tb, b, p, measure.OffBench, "", 1)
		}
	}
	for i := 0; len(b.Readings) < fullSize; i++ {
		slopes := []string{"gearbox.slope", "shaft.slope", "pinion.slope", "datum.slope"}
		p, _ := measure.PointOf(slopes[i%len(slopes)])
		s := i / len(slopes) % len(standing)
		add(tb, b, p, standing[s].state, standing[s].height, s+2)
	}
	if err := b.Validate(); err != nil {
		tb.Fatal(err)
	}
	return b
}

func add(tb testing.TB, b *measure.Build, p measure.Point, s measure.State, height string, setup int) {
	tb.Helper()
	r := measure.Reading{ID: measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-0000000f%04x", len(b.Readings)+1)), Point: p.Key,
		Unit: p.Quantity.Base(), Basis: measure.Measured, Ride: s.Ride, Load: s.Load, Setup: setup}
	if p.Basis != "" && s.Ride == measure.Bench {
		r.Basis = p.Basis
	}
	if p.Quantity == measure.Angle {
		r.Instrument = "finder"
	}
	r.Height, _ = measure.NumberValue(height)
	token := sane[p.Key]
	switch {
	case p.Key == "hub.height" || p.Key == "hub_left.height" || p.Key == "hub_right.height":
		token = height
	case token != "":
	case len(p.Codes) > 0:
		token = strconv.Itoa(p.Codes[0].Value)
	case p.Quantity == measure.Text:
		token = p.Example()
	case p.Quantity == measure.Count:
		token = strconv.Itoa(int(p.Low+p.High) / 2)
	default:
		token = strconv.FormatFloat(math.Round((p.Low+p.High)*5)/10, 'f', -1, 64)
	}
	if p.Quantity == measure.Text {
		r.Value = measure.TextValue(token)
	} else if v, err := measure.NumberValue(token); err == nil {
		r.Value = v
	} else {
		tb.Fatalf("%s: %v", p.Key, err)
	}
	b.Readings = append(b.Readings, r)
}

// TestFullBuildIsFull looks that the build that is measured makes nearly every check speak: a
// benchmark of checks that wait would be fast.
func TestFullBuildIsFull(t *testing.T) {
	b := full(t)
	if len(b.Readings) < fullSize {
		t.Errorf("%d readings, want %d or more", len(b.Readings), fullSize)
	}
	waiting := 0
	list := checks.Run(b, nil).Findings
	for _, f := range list {
		if f.Verdict == checks.Waiting {
			waiting++
		}
	}
	if len(list) < 120 || waiting > len(list)/5 {
		t.Errorf("%d findings, %d of them waiting: most checks say nothing", len(list), waiting)
	}
}
