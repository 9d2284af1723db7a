package draw

import (
	"math"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

func pictureOf(t *testing.T, name string, v View) (named, Drawing, []checks.Finding) {
	t.Helper()
	s, findings := sceneOf(t, buildOf(t, name))
	d := s.View(v, nil)
	return readSVG(t, d.Lay(Options{}).SVG(Light)), d, findings
}

func findingOf(t *testing.T, list []checks.Finding, check, subject string) checks.Finding {
	t.Helper()
	for _, f := range list {
		if f.Check == check && f.Subject == subject && f.Value != nil {
			return f
		}
	}
	t.Fatalf("no finding %s %s", check, subject)
	return checks.Finding{}
}

// Worked apart from this code, from the readings: (12.02 + 165.2 − 115.0) − (22.1 + 34.3) = 5.82 mm;
// hub 14.5 … 47.5 lies within the splines 7.02 … 56.02: 33.0 mm; the nose from −19.48 lies in a
// bearing that begins at −22.3 and ends at −6.2: 13.28 mm.
func TestTheClutchIsToScaleAlongTheShaft(t *testing.T) {
	svg, d, findings := pictureOf(t, "gearbox-slip", StackView)
	for _, c := range []struct {
		name string
		mm   float64
	}{{"gap", 5.82}, {"stroke", 16}, {"hub on splines", 33}, {"nose in spigot", 13.28}} {
		p := svg.lines[c.name]
		if len(p) != 2 || math.Abs(p[0].minus(p[1]).length()/svg.scale-c.mm) > 0.02 {
			t.Errorf("%s: %v at %.3f per mm, want %.2f mm", c.name, p, svg.scale, c.mm)
		}
	}
	if f := findingOf(t, findings, "clutch.release", ""); f.Unit == "mm" && math.Abs(*f.Value-5.82) > 0.005 {
		t.Errorf("the finding says %.3f mm", *f.Value)
	}
	if !said(d, "gap 5.8") || !said(d, "if what was stated is true") {
		t.Errorf("the gap is not lettered with its verdict")
	}
}

func TestMountsStandWhereTheyWereRead(t *testing.T) {
	svg, d, findings := pictureOf(t, "gearbox-slip", MountsView)
	p := svg.lines["triangle of mounts"]
	if len(p) != 3 {
		t.Fatalf("the triangle has %d corners", len(p))
	}
	for _, c := range []struct {
		a, b int
		mm   float64 // between the places read, worked apart from this code
	}{{0, 1, math.Hypot(-20+24, 252+247)}, {0, 2, math.Hypot(-20+812, 252)}, {1, 2, math.Hypot(-24+812, -247)}} {
		if mm := p[c.a].minus(p[c.b]).length() / svg.scale; math.Abs(mm-c.mm) > 0.05 {
			t.Errorf("side %d-%d is %.2f mm on paper, want %.2f", c.a, c.b, mm, c.mm)
		}
	}
	if svgLeft, right := p[0], p[1]; svgLeft.Y < right.Y {
		t.Error("the left mount stands above: seen from above with the front on the left it is below")
	}
	if f := findingOf(t, findings, "mount.load", "mount_left"); f.Verdict == checks.Out && !said(d, "out") {
		t.Error("a mount that is out is not lettered so")
	}
}

// A chord of 58.0 mm between four holes: 58.0/sin(45°) = 82.02 mm, worked apart from this code.
func TestFlangeFacesAreToScale(t *testing.T) {
	s, _ := sceneOf(t, buildOf(t, "links-two-piece"))
	d := s.View(EndsView, nil)
	for name, mm := range map[string]float64{"pilot of front_end": 56.98, "pilot of rear_mate": 74.95,
		"bolt circle of front_end": 82.024, "bolt circle of rear_end": 95.2, "hole of rear_end": 10} {
		found := false
		for _, shape := range d.Shapes {
			if shape.Name == name {
				found = true
				if math.Abs(2*shape.Arc.Radius-mm) > 0.005 {
					t.Errorf("%s: %.3f mm, want %.3f", name, 2*shape.Arc.Radius, mm)
				}
			}
		}
		if !found {
			t.Errorf("no %s", name)
		}
	}
	if !said(d, "⌀ 74.95") {
		t.Error("the pilot is not lettered")
	}
}

func TestTheChartDotsWhatWasReadAndOnlyThat(t *testing.T) {
	s, _ := sceneOf(t, buildOf(t, "links-two-piece"))
	d := s.View(TravelView, nil)
	dots := map[string]int{}
	for _, sign := range d.Signs {
		if sign.Kind == DotSign {
			dots[strings.TrimPrefix(sign.Name, "read ")]++
		}
	}
	// three angles, residual and length at each height; the bump stops were computed
	if len(dots) != 2 || dots["droop/none"] != 5 || dots["ride/kerb"] != 5 {
		t.Errorf("dots %v", dots)
	}
	bars := 0
	for _, shape := range d.Shapes {
		if shape.Name == "bar" && shape.Points[0].X == shape.Points[1].X { // its ends lie across
			bars++
		}
	}
	if bars != 10 {
		t.Errorf("%d bars on 10 dots", bars)
	}
}

// The curve of the chart and the moved shaft line are two ways to one number.
func TestTheSliderAndTheChartAgree(t *testing.T) {
	for _, name := range []string{"links-two-piece", "gearbox-slip"} {
		b := buildOf(t, name)
		sight := checks.Look(b, nil)
		rows := 0
		for _, r := range checks.Sweep(b).Rows {
			st, ok := sight.At(r.HeightMM)
			if !ok {
				t.Errorf("%s: no line at %.0f mm", name, r.HeightMM)
				continue
			}
			// Readings pull the line over, the sweep leaves its curve as computed: apart by no more
			// than the readings differ from what was computed.
			for i, a := range r.Angles {
				if a != nil && math.Abs(a.Value-st.AnglesDeg[i]) > 0.4 {
					t.Errorf("%s at %.0f mm, joint %d: sweep %.2f°, slider %.2f°", name, r.HeightMM, i, a.Value, st.AnglesDeg[i])
				}
			}
			if !r.Predicted && r.State != (measure.State{}) && math.Abs(r.Residual.Value-st.Residual) > 1e-6 {
				t.Errorf("%s at %.0f mm, which was read: sweep %.4f°, slider %.4f°", name, r.HeightMM, r.Residual.Value, st.Residual)
			}
			rows++
		}
		if rows < 10 {
			t.Errorf("%s: only %d rows", name, rows)
		}
	}
}

// What is out or unsure is ringed in its own ink: the place over the travel where a joint's angle lies
// furthest beyond its limit, and the obstacle that the findings call out.
func TestTheWorstPlaceIsRinged(t *testing.T) {
	s, findings := sceneOf(t, buildOf(t, "gearbox-slip"))
	rings := func(d Drawing) (list []Sign) {
		for _, sign := range d.Signs {
			if sign.Kind == RingSign && sign.Name == "worst" {
				list = append(list, sign)
			}
		}
		return list
	}
	chart := s.View(TravelView, nil)
	for _, ring := range rings(chart) {
		if ring.Style != Worst || ring.At.X != 0 { // hanging, where both angle and residual are largest
			t.Errorf("chart: %+v", ring)
		}
	}
	if n := len(rings(chart)); n != 2 {
		t.Errorf("%d rings on the chart, want one for the angles and one for the residual", n)
	}
	if f := findingOf(t, findings, "shaft.clearance", "tunnel"); f.Verdict != checks.Out {
		t.Fatalf("the tunnel is %s: nothing to try", f.Verdict)
	}
	side := s.View(SideView, nil)
	if n := len(rings(side)); n != 1 || !said(side, "least room over the travel") {
		t.Errorf("%d rings on the side view", n)
	}
}

// No band of a chart reaches below its panel: angles end at 0.
func TestBandsOfAnglesEndAtTheAxis(t *testing.T) {
	s, _ := sceneOf(t, buildOf(t, "gearbox-slip"))
	bands, touched := 0, false
	for _, shape := range s.View(TravelView, nil).Shapes {
		if shape.Style != Doubt {
			continue
		}
		bands++
		floor := -panelHigh
		if bands == 3 {
			floor -= panelHigh + panelGap
		}
		for _, p := range shape.Points {
			if bands <= 3 && p.Y < floor-1e-9 {
				t.Errorf("band %d reaches %.2f below its panel", bands, floor-p.Y)
			}
			touched = touched || bands <= 3 && p.Y < floor+1e-9
		}
	}
	if bands != 4 || !touched {
		t.Errorf("%d bands, down to the axis: %v; nothing was tried", bands, touched)
	}
}
