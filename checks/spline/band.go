package spline

import "math"

// straightUnder is how far the tips of a straight-sided shaft lie below nominal at most: fit a11 of
// ISO 286-2 at 18 to 50 mm, 0.30 to 0.48 mm (from memory).
const straightUnder = 0.48

// fits works out how far the readings are off a candidate and reports whether all are in the band.
func (s Seen) fits(c *Candidate) bool {
	under := s.MadeUnder
	if c.ModuleMM == 0 {
		under += straightUnder
	}
	ok := true
	// within takes a part of the way into the band as score; below and above are its reaches.
	within := func(off, below, above float64) {
		reach := above
		if off < 0 {
			reach = below
		}
		if math.Abs(off) > reach {
			ok = false
			return
		}
		if reach > 0 {
			part := off / reach
			c.score += float64(part * part)
		}
	}
	if tip := s.tip(); tip > 0 {
		c.TipOffMM = tip - c.TipMM
		if s.External {
			rest, _ := OddTip(s.Count, c.TipMM, s.land(*c))
			within(c.TipOffMM, under+s.MajorOff+(c.TipMM-rest), s.MajorOff)
		} else {
			within(c.TipOffMM, s.MinorOff, s.MadeUnder+s.MinorOff)
		}
	}
	if root := s.root(); root > 0 {
		c.RootOffMM = root - c.RootMM
		off := s.MajorOff
		if s.External {
			off = s.MinorOff
		}
		within(c.RootOffMM, s.MadeUnder+off, under+off)
	}
	if s.OverMM > 0 && c.OverMM > 0 {
		c.OverOffMM = s.OverMM - c.OverMM
		looser := s.MadeUnder/2 + s.OverOff
		if s.External {
			within(c.OverOffMM, looser, s.OverOff)
		} else {
			within(c.OverOffMM, s.OverOff, looser)
		}
	}
	return ok
}

// land is half the angle that a tip takes on the tip circle, radians.
func (s Seen) land(c Candidate) float64 {
	if c.WidthMM > 0 {
		return c.WidthMM / c.TipMM
	}
	return TipLand(s.Count)
}

// Settle names the readings that would tell candidates apart and were not taken.
type Settle struct {
	Over  bool // over or between pins
	Root  bool // the diameter at the bottoms of the gaps
	Flank bool // the flank angle
}

// plainly is by how much two sizes must differ for a caliper to tell them apart, mm: twice its doubt.
const plainly = 0.1

// Settling says which readings would tell the candidates apart; none, and they can't be by any of
// these: a trial fit of a known part would.
func Settling(s Seen, list []Candidate) Settle {
	var out Settle
	for i, a := range list {
		for _, b := range list[i+1:] {
			out.Flank = out.Flank || !s.HasFlank && math.Abs(a.PressureDeg-b.PressureDeg) > flankDiffers
			out.Root = out.Root || s.root() == 0 && math.Abs(a.RootMM-b.RootMM) > 2*s.MadeUnder
			out.Over = out.Over || s.OverMM == 0 && overDiffers(s, a, b)
		}
	}
	return out
}

// overDiffers works out both candidates over one pair of pins that suits a: 1.92 modules over, 1.728
// between, the usual pins of handbooks (from memory).
func overDiffers(s Seen, a, b Candidate) bool {
	if a.ModuleMM == 0 || b.ModuleMM == 0 {
		return false
	}
	pin := s.PinMM
	if pin == 0 {
		pin = float64(1.92 * a.ModuleMM)
		if !s.External {
			pin = float64(1.728 * a.ModuleMM)
		}
	}
	sa, sb := s, s
	sa.PinMM, sb.PinMM = pin, pin
	one, two := sa.again(a), sb.again(b)
	return one > 0 && two > 0 && math.Abs(one-two) > plainly
}

// again finds a candidate once more, over the pins of s.
func (s Seen) again(c Candidate) float64 {
	list := s.families()
	if c.Standard == "DIN 5480" {
		list = s.references()
	}
	for _, o := range list {
		if o.Standard == c.Standard && o.Designation == c.Designation && o.PressureDeg == c.PressureDeg && o.Root == c.Root {
			return o.OverMM
		}
	}
	return 0
}
