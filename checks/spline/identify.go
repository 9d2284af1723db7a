package spline

import (
	"cmp"
	"fmt"
	"math"
	"slices"
)

// Seen is what was read on one part; a size of 0 was not read. The doubts are how many
// mm a reading may be off either way.
type Seen struct {
	External  bool
	Count     int
	MajorMM   float64
	MinorMM   float64
	OverMM    float64 // over pins, or between them
	PinMM     float64
	FlankDeg  float64 // read only where HasFlank
	HasFlank  bool
	MajorOff  float64
	MinorOff  float64
	OverOff   float64
	MadeUnder float64 // how far a tip may lie below its nominal size from tolerance, chamfer and wear
}

// Candidate is one standard spline that agrees with all that was read.
type Candidate struct {
	Standard    string // "ANSI B92.1"
	Designation string // as the standard writes it: "12/24, 14 T"
	Root        string // "flat", "fillet" or "" where the standard does not tell
	PressureDeg float64
	ModuleMM    float64 // 0 for straight flanks
	TipMM       float64 // nominal size of the teeth's tips
	RootMM      float64 // of the gaps' bottoms
	OverMM      float64 // over or between the pins that were used; 0: none, or they would not touch its flanks
	WidthMM     float64 // tooth width of straight flanks
	TipOffMM    float64 // reading less nominal; 0 where not read
	RootOffMM   float64
	OverOffMM   float64
	score       float64
}

// Identify returns every standard spline within the band, the nearest first: never one name where
// several fit. What was not read rules nothing out. It errs without a count and one diameter.
//
// The band: tips lie at nominal or, from tolerance, chamfer and wear, up to MadeUnder short of it
// (external low, internal high); roots within MadeUnder either way, since cutters differ; sizes over
// pins up to half of MadeUnder toward looser. Each is widened by the reading's own doubt.
//
// Source: worked apart from this code from the standards' sizes; the width of the band is our
// judgement.
func Identify(s Seen) ([]Candidate, error) {
	if s.Count < 3 {
		return nil, fmt.Errorf("count %d is no spline; count twice from a mark", s.Count)
	}
	for _, size := range []float64{s.MajorMM, s.MinorMM, s.OverMM, s.PinMM, s.MajorOff, s.MinorOff, s.OverOff, s.MadeUnder} {
		if !(size >= 0) || math.IsInf(size, 0) {
			return nil, fmt.Errorf("size %g is none of a spline; measure again", size)
		}
	}
	if s.tip() == 0 && s.root() == 0 {
		return nil, fmt.Errorf("count alone names no spline; measure a diameter")
	}
	var found []Candidate
	for _, c := range slices.Concat(s.families(), s.references(), s.straights()) {
		if s.fits(&c) {
			found = append(found, c)
		}
	}
	slices.SortStableFunc(found, func(a, b Candidate) int { return cmp.Compare(a.score, b.score) })
	return found, nil
}

// tip and root are the diameters of the part's own tips and roots as read.
func (s Seen) tip() float64 {
	if s.External {
		return s.MajorMM
	}
	return s.MinorMM
}

func (s Seen) root() float64 {
	if s.External {
		return s.MinorMM
	}
	return s.MajorMM
}

// flankDiffers is how far a flank may read from its standard angle, degrees: by eye or thread gauge.
const flankDiffers = 3.5

func (s Seen) wantsFlank(deg float64) bool {
	return !s.HasFlank || math.Abs(s.FlankDeg-deg) <= flankDiffers
}

func (s Seen) families() []Candidate {
	var all []Candidate
	for _, f := range Families {
		if !s.wantsFlank(f.PressureDeg) {
			continue
		}
		for _, pitch := range f.Pitches {
			z := f.At(s.Count, pitch)
			named := fmt.Sprintf("m %g, %d T", pitch, s.Count)
			if f.Inch {
				named = fmt.Sprintf("%g/%g, %d T", pitch, 2*pitch, s.Count)
			}
			c := s.involute(z, f.Standard, named, f.Root)
			if s.External && z.ExtRootDeepMM != z.ExtRootMM && s.MinorMM > 0 &&
				math.Abs(s.MinorMM-z.ExtRootDeepMM) < math.Abs(s.MinorMM-z.ExtRootMM) {
				c.RootMM = z.ExtRootDeepMM
			}
			all = append(all, c)
		}
	}
	return all
}

// references are the sizes of DIN 5480 with a whole reference diameter near the one that was read.
func (s Seen) references() []Candidate {
	if !s.wantsFlank(30) {
		return nil
	}
	var all []Candidate
	for _, m := range modules {
		near := 0.0
		switch {
		case s.External && s.MajorMM > 0:
			near = s.MajorMM + float64(0.2*m)
		case s.External:
			near = s.MinorMM + float64(Hobbed*m)
		case s.MinorMM > 0:
			near = s.MinorMM + float64(2*m)
		default:
			near = s.MajorMM
		}
		for _, step := range []float64{-1, 0, 1} {
			r := Reference{math.Round(near) + step, m, s.Count}
			z, err := r.Sizes()
			if x := r.Shift() / m; err != nil || x < ShiftLeast-1e-9 || x > ShiftMost+1e-9 {
				continue
			}
			all = append(all, s.involute(z, "DIN 5480", r.Designation(), ""))
		}
	}
	return all
}

func (s Seen) involute(z Sizes, standard, named, root string) Candidate {
	c := Candidate{Standard: standard, Designation: named, Root: root, PressureDeg: z.Degrees, ModuleMM: z.ModuleMM,
		TipMM: z.ExtTipMM, RootMM: z.ExtRootMM}
	p := Pins{s.Count, z.PitchMM, z.Degrees, z.ToothMM, s.PinMM}
	size := Over
	if !s.External {
		c.TipMM, c.RootMM = z.IntTipMM, z.IntRootMM
		p.FlankMM, size = z.SpaceMM, Between
	}
	if s.PinMM > 0 && !(s.External && p.Sit(c.TipMM, c.RootMM) != nil) {
		if over, _, err := size(p); err == nil {
			c.OverMM = over
		}
	}
	return c
}

func (s Seen) straights() []Candidate {
	if !s.wantsFlank(0) {
		return nil
	}
	var all []Candidate
	add := func(standard, named string, z Straight) {
		c := Candidate{Standard: standard, Designation: named, TipMM: z.MajorMM, RootMM: z.MinorMM, WidthMM: z.ToothMM}
		if !s.External {
			c.TipMM, c.RootMM = z.MinorMM, z.MajorMM
		}
		all = append(all, c)
	}
	for _, series := range [][]Straight{ISO14Light, ISO14Medium} {
		for _, z := range series {
			if z.Count == s.Count {
				add("ISO 14", fmt.Sprintf("%d×%g×%g", z.Count, z.MinorMM, z.MajorMM), z)
			}
		}
	}
	for _, p := range J499 {
		if p.Count != s.Count {
			continue
		}
		for _, inches := range j499Inches {
			add("SAE J499", fmt.Sprintf("%d T, %g in, fit %s", p.Count, inches, p.Fit), p.At(float64(inches*25.4)))
		}
	}
	return all
}
