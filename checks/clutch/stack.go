package clutch

import (
	"fmt"
	"math"
)

// Stack places the release bearing against the fingers.
type Stack struct {
	AdapterMM  float64 // between block and bellhousing; 0 for none
	FlywheelMM float64 // u of the friction face
	FingersMM  float64 // friction face to finger tips, cover bolted up
	DepthMM    float64 // bellhousing: engine-side face to gearbox front face
	BearingMM  float64 // gearbox front face to the bearing's contact face, fully back
}

// GapMM is the way of the bearing from fully back to the finger tips; negative where it pushes them
// already.
//
//	gap = (adapter + depth − bearing) − (flywheel + fingers)
//
// Source: common practice, no source: two depths from one face.
func (s Stack) GapMM() float64 {
	return s.AdapterMM + s.DepthMM - s.BearingMM - s.FlywheelMM - s.FingersMM
}

// Push is what a push type clutch asks of the bearing's way.
type Push struct {
	StrokeMM    float64 // the bearing's whole way from fully back
	WearMM      float64 // how far the worn disc lets the finger tips come toward the bearing
	ReserveMM   float64 // gap that stays at full wear
	TravelMM    float64 // of the fingers until the disc is free
	TravelMaxMM float64 // that they stand
}

// Window returns the gaps that suit a push type clutch: no less than wear and reserve, and such that
// the rest of the stroke lies between the fingers' travel and the most that they stand. It errs where
// no gap does: the stroke is too short, or the cover stands too little.
func (p Push) Window() (leastMM, mostMM float64, err error) {
	for _, x := range []float64{p.StrokeMM, p.WearMM, p.ReserveMM, p.TravelMM, p.TravelMaxMM} {
		if math.IsNaN(x) || math.IsInf(x, 0) || x < 0 {
			return 0, 0, fmt.Errorf("length %g mm is none; enter it again", x)
		}
	}
	leastMM = math.Max(p.WearMM+p.ReserveMM, p.StrokeMM-p.TravelMaxMM)
	mostMM = p.StrokeMM - p.TravelMM
	if leastMM > mostMM {
		return 0, 0, fmt.Errorf("a stroke of %g mm leaves no gap that suits; it takes %g mm and more", p.StrokeMM, p.TravelMM+p.WearMM+p.ReserveMM)
	}
	return leastMM, mostMM, nil
}

// CentreMM returns by how much the bearing has to come toward the engine so that the gap stands in
// the middle of its window: the thickness of a spacer behind the bearing, or by how much the friction
// face has to come toward the gearbox. Negative: the other way.
func CentreMM(gapMM, leastMM, mostMM float64) float64 { return gapMM - (leastMM+mostMM)/2 }

// Span is what a part takes up along the axis, in u.
type Span struct{ FromMM, ToMM float64 }

// OverlapMM is the length that two spans have in common; negative: the gap between them.
func (s Span) OverlapMM(o Span) float64 {
	return math.Min(s.ToMM, o.ToMM) - math.Max(s.FromMM, o.FromMM)
}

// Moved is the span by mm nearer to the gearbox.
func (s Span) Moved(mm float64) Span { return Span{s.FromMM + mm, s.ToMM + mm} }

// Nose is the tip of the input shaft against the crank, all from the block's face.
type Nose struct {
	AdapterMM float64
	TipMM     float64 // how far the tip stands out of the bellhousing's engine-side face
	NoseMM    float64 // length of the diameter that runs in the spigot bearing
	FaceMM    float64 // block face to the bearing's near end, toward the engine positive
	BearingMM float64 // its length
	BottomMM  float64 // block face to the bottom of the crank's bore
}

// tip is the place of the very tip in u.
func (n Nose) tip() float64 { return n.AdapterMM - n.TipMM }

// EngagedMM is the length over which the nose runs in the bearing; negative where it falls short.
func (n Nose) EngagedMM() float64 {
	nose := Span{n.tip(), n.tip() + n.NoseMM}
	return nose.OverlapMM(Span{-n.FaceMM - n.BearingMM, -n.FaceMM})
}

// BottomGapMM is the room between the tip and the bottom of the bore.
func (n Nose) BottomGapMM() float64 { return n.BottomMM + n.tip() }

// StepGapMM is the room between the step behind the nose and the bearing's near end.
func (n Nose) StepGapMM() float64 { return n.tip() + n.NoseMM + n.FaceMM }
