package checks

import (
	"math"
	"testing"

	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// The end gauge of GUM H.1 through the engine: l = l_s + d − l_s·(δα·θ + α_s·δθ), in nm. Inputs,
// the combined 32 nm to first order and 34 nm with second-order terms: JCGM 100:2008, H.1, as read in
// the GTC documentation (Measurement Standards Laboratory of New Zealand), page "GUM H1".
func TestEndGauge(t *testing.T) {
	e := &engine{build: &measure.Build{}, memo: newMemo()}
	number := func(name string, best float64, shape uncertain.Shape, scales ...float64) *quantity {
		var terms []term
		for i, s := range scales {
			c := &cause{key: name + string(rune('a'+i)), shape: shape, input: name}
			terms = append(terms, term{c, s})
		}
		return e.number(best, terms, origin{})
	}
	l := e.combine("end gauge", 1, func(x, out []float64) {
		out[0] = x[0] + x[1] - float64(x[0]*(float64(x[2]*x[3])+float64(x[4]*x[5])))
	},
		number("standard", 50000623, normal, 25),
		number("difference", 215, normal, 5.8, 3.9, 6.7),
		number("expansion difference", 0, rectangular, 1e-6),
		number("temperature", -0.1, normal, 0.406),
		number("expansion", 11.5e-6, rectangular, 2e-6),
		number("temperature difference", 0, rectangular, 0.05),
	)[0]
	if l.best != 50000838 {
		t.Errorf("l = %.1f nm, want 50 000 838", l.best)
	}
	firstOrder := 0.0
	for _, s := range l.shifts {
		half := (s.up - s.down) / 2
		firstOrder += half * half
	}
	if u := math.Sqrt(firstOrder); math.Abs(u-31.66) > 0.01 {
		t.Errorf("to first order u = %.3f nm, want 31.66", u)
	}
	square := 0.0
	for _, d := range l.draws {
		square += (d - l.best) * (d - l.best)
	}
	if u := math.Sqrt(square / uncertain.N); math.Abs(u-33.8) > 0.7 {
		t.Errorf("by sampling u = %.2f nm, want 33.8 with second-order terms", u)
	}
	if top := l.shares()[0]; top.input != "standard" || math.Abs(top.part-625/31.66/31.66) > 1e-3 {
		t.Errorf("largest part %+v, want that of the standard, 25² of 31.66²", top)
	}
}
