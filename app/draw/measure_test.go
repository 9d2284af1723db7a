package draw

import (
	"math"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// slopeIn is the slope of a named axis as a person would measure it on the paper, front end high
// positive: the front of the vehicle is on the left.
func (n named) slopeIn(t *testing.T, axis string) float64 {
	t.Helper()
	p := n.lines["axis of "+axis]
	if len(p) != 2 {
		t.Fatalf("no axis of %s", axis)
	}
	a, b := p[0], p[1]
	if a.X > b.X {
		a, b = b, a
	}
	return math.Atan2(b.Y-a.Y, b.X-a.X) * 180 / math.Pi
}

// flattened is a build whose plan angles are all read as 0, so that angles seen from the side are
// true.
func flattened(b *measure.Build) *measure.Build {
	flat := *b
	flat.Readings = nil
	zero, _ := measure.NumberValue("0")
	for _, r := range b.Readings {
		if r.Point == "gearbox.plan" || r.Point == "shaft.plan" || r.Point == "pinion.plan" || r.Point == "front_shaft.plan" {
			r.Value = zero
		}
		flat.Readings = append(flat.Readings, r)
	}
	return &flat
}

// Source: the findings, which take another way from the same readings.
func TestAnglesOnThePaperAreTheFindings(t *testing.T) {
	for _, name := range demos(t) {
		b := flattened(buildOf(t, name))
		s, findings := sceneOf(t, b)
		svg := readSVG(t, s.View(SideView, nil).Lay(Options{}).SVG(Light))
		st := s.stance(nil)
		seen := 0
		for i, part := range st.Parts[1:] {
			on := svg.slopeIn(t, part.Name) - svg.slopeIn(t, st.Parts[i].Name)
			subject := []string{"front", "rear"}[min(i, 1)]
			if len(st.Parts) == 4 {
				subject = []string{"front", "centre", "rear"}[i]
			}
			for _, f := range findings {
				if f.Check == "joint.angle" && f.Subject == subject && f.State == st.State && f.Value != nil {
					seen++
					if math.Abs(math.Abs(on)-*f.Value) > 0.02 {
						t.Errorf("%s, %s joint: %.3f° on paper, %.3f° found", name, subject, on, *f.Value)
					}
				}
			}
		}
		if seen < 2 {
			t.Errorf("%s: only %d joints compared", name, seen)
		}
	}
}

func TestLengthsOnThePaperAreToScale(t *testing.T) {
	for _, c := range []struct {
		name, axis string
		mm         float64 // as read, in testdata/builds
	}{
		{"links-two-piece", "shaft", 1046},
		{"links-two-piece", "front_shaft", 812},
		{"gearbox-slip", "shaft", 1324},
	} {
		for _, wide := range []float64{411, 1280} {
			s, _ := sceneOf(t, flattened(buildOf(t, c.name)))
			svg := readSVG(t, s.View(SideView, nil).Lay(Options{Wide: wide}).SVG(Light))
			p := svg.lines["axis of "+c.axis]
			if mm := p[0].minus(p[1]).length() / svg.scale; math.Abs(mm-c.mm) > 0.02/svg.scale {
				t.Errorf("%s %s at %.0f: %.2f mm on paper, %.0f read", c.name, c.axis, wide, mm, c.mm)
			}
		}
	}
}

func TestTubesAndGapsOnThePaperAreToScale(t *testing.T) {
	s, _ := sceneOf(t, flattened(buildOf(t, "gearbox-slip")))
	svg := readSVG(t, s.View(SideView, nil).Lay(Options{}).SVG(Light))
	tube := svg.lines["tube of shaft"]
	if mm := tube[0].minus(tube[3]).length() / svg.scale; math.Abs(mm-76.1) > 0.05 {
		t.Errorf("tube of %.2f mm on paper, 76.1 read", mm)
	}
	gap := svg.lines["gap of obstacle"]
	if mm := gap[0].minus(gap[1]).length() / svg.scale; math.Abs(mm-82) > 0.05 {
		t.Errorf("gap of %.2f mm on paper, 82 read", mm)
	}
}

// The finder showed these slopes at these heights: moved there, the picture shows them again.
func TestMovedToAReadStateThePictureShowsItsReadings(t *testing.T) {
	for _, name := range demos(t) {
		b := flattened(buildOf(t, name))
		s, _ := sceneOf(t, b)
		compared := 0
		for _, r := range checks.Look(b, nil).Stances() {
			if r.Predicted || r.HeightMM == nil {
				continue
			}
			svg := readSVG(t, s.View(SideView, r.HeightMM).Lay(Options{}).SVG(Light))
			for _, part := range r.Parts {
				if on := svg.slopeIn(t, part.Name); math.Abs(on-part.SlopeDeg) > 0.02 {
					t.Errorf("%s at %.0f mm, %s: %.3f° on paper, %.3f° read", name, *r.HeightMM, part.Name, on, part.SlopeDeg)
				}
				compared++
			}
		}
		if compared < 3 {
			t.Errorf("%s: only %d slopes compared", name, compared)
		}
	}
}

// Without a shaft's length the picture must say so, and draw no dimension of it as a number.
func TestWhatWasNotReadIsNamed(t *testing.T) {
	b := buildOf(t, "demo")
	s, _ := sceneOf(t, b)
	d := s.View(SideView, nil)
	if !said(d, "length not read") || !noted(d, "shaft length") {
		t.Errorf("the length was not read and is not named: %v %q", d.Labels, d.Notes)
	}
	var none measure.Build
	none.ID, none.Layout = b.ID, b.Layout
	s, _ = sceneOf(t, &none)
	for _, v := range Views {
		d := s.View(v, nil)
		if len(d.Notes) == 0 {
			t.Errorf("%s of an empty build says nothing", v)
		}
		for _, shape := range d.Shapes {
			if shape.Style == Read || shape.Style == Body {
				t.Errorf("%s of an empty build draws %q as read", v, shape.Name)
			}
		}
		d.Lay(Options{Wide: 411})
	}
}

// Between the heights that were read no doubt was worked out: no number there may carry a ±.
func TestComputedNumbersCarryNoDoubtThatNobodyWorkedOut(t *testing.T) {
	s, _ := sceneOf(t, buildOf(t, "links-two-piece"))
	between := 577.0
	d := s.View(SideView, &between)
	for _, l := range d.Labels {
		if strings.Contains(l.Text, "±") && !strings.Contains(l.Text, "least room over the travel") { // a finding
			t.Errorf("%q", l.Text)
		}
	}
	for _, shape := range d.Shapes {
		if shape.Style == Doubt {
			t.Errorf("a band: %s", shape.Name)
		}
	}
	if !strings.Contains(d.Title, "computed and not read") {
		t.Errorf("title %q", d.Title)
	}
}
