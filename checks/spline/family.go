package spline

import "math"

// Family is one column of a standard for involute splines that are sized by tooth count and module:
// each diameter is module·(count + offset). An inch pitch P, in 1/in, is the module
// 25.4/P; other pitches are modules in mm.
type Family struct {
	Standard    string // as said on screens
	Root        string // "flat" or "fillet"
	PressureDeg float64
	Inch        bool
	ExtTip      float64 // external major
	ExtRoot     float64 // external minor
	ExtRootDeep float64 // external minor by the other print of the standard; equal to ExtRoot where they agree
	IntRoot     float64 // internal major
	IntTip      float64 // internal minor
	WiderSpace  float64 // internal space width beyond half the circular pitch, modules
	Pitches     []float64
	Source      string
}

const (
	ansi = "ANSI B92.1-1970 (R1993), basic dimensions; two reprints compared"
	iso  = "ISO 4156 / ANSI B92.2M, one reprint; external diameters are maxima before the fit allowance"
)

// Standard pitches: diametral 1/in of the inch standard, modules in mm of the metric one. Of these
// lists only the ends of their ranges were seen in print; the rest is from memory.
var (
	inchPitches     = []float64{2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 40, 48}
	inchPitchesFine = []float64{10, 12, 16, 20, 24, 32, 40, 48, 64, 80, 128}
	modules         = []float64{0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5, 6, 8, 10}
)

// Families holds the involute families that are sized by count and module.
//
// CONFLICT 1: the external root of the 30° fillet column for 16/32 and finer is N − 2 in one reprint
// and N − 1.2 in the other; N − 2 fits the deeper root of that column, and N − 1.8 of the coarser
// pitches is accepted beside it. CONFLICT 2: one reprint repeats the 37.5° entries (0.8 and 0.1) in
// the 45° column; the other has 0.6 and 0.2, which agrees with the form diameter and is taken.
var Families = []Family{
	{Standard: "ANSI B92.1", Root: "flat", PressureDeg: 30, Inch: true, ExtTip: 1, ExtRoot: -1.35, ExtRootDeep: -1.35,
		IntRoot: 1.35, IntTip: -1, Pitches: inchPitches, Source: ansi},
	{Standard: "ANSI B92.1", Root: "fillet", PressureDeg: 30, Inch: true, ExtTip: 1, ExtRoot: -1.8, ExtRootDeep: -2,
		IntRoot: 1.8, IntTip: -1, Pitches: inchPitches, Source: ansi + "; CONFLICT 1"},
	{Standard: "ANSI B92.1", Root: "fillet", PressureDeg: 37.5, Inch: true, ExtTip: 1, ExtRoot: -1.3, ExtRootDeep: -1.3,
		IntRoot: 1.6, IntTip: -0.8, WiderSpace: 0.1, Pitches: inchPitches, Source: ansi},
	{Standard: "ANSI B92.1", Root: "fillet", PressureDeg: 45, Inch: true, ExtTip: 1, ExtRoot: -1, ExtRootDeep: -1,
		IntRoot: 1.4, IntTip: -0.6, WiderSpace: 0.2, Pitches: inchPitchesFine, Source: ansi + "; CONFLICT 2"},
	{Standard: "ISO 4156", Root: "flat", PressureDeg: 30, ExtTip: 1, ExtRoot: -1.5, ExtRootDeep: -1.5,
		IntRoot: 1.5, IntTip: -1, Pitches: modules, Source: iso},
	{Standard: "ISO 4156", Root: "fillet", PressureDeg: 30, ExtTip: 1, ExtRoot: -1.8, ExtRootDeep: -1.8,
		IntRoot: 1.8, IntTip: -1, Pitches: modules, Source: iso},
	{Standard: "ISO 4156", Root: "fillet", PressureDeg: 37.5, ExtTip: 0.9, ExtRoot: -1.4, ExtRootDeep: -1.4,
		IntRoot: 1.4, IntTip: -0.9, Pitches: modules, Source: iso},
	{Standard: "ISO 4156", Root: "fillet", PressureDeg: 45, ExtTip: 0.8, ExtRoot: -1.2, ExtRootDeep: -1.2,
		IntRoot: 1.2, IntTip: -0.8, Pitches: modules, Source: iso},
}

// Sizes are the diameters in mm of one spline, its pressure angle in degrees and its thickness at the
// pitch diameter.
type Sizes struct {
	PitchMM, BaseMM   float64
	ExtTipMM          float64
	ExtRootMM         float64
	ExtRootDeepMM     float64
	IntRootMM         float64
	IntTipMM          float64
	ToothMM, SpaceMM  float64 // along the arc at PitchMM: external tooth, internal space
	ModuleMM, Degrees float64
}

// At returns the sizes of a family's spline with count teeth of one pitch: 1/in where the family is
// an inch one, otherwise the module in mm.
func (f Family) At(count int, pitch float64) Sizes {
	m := pitch
	if f.Inch {
		m = 25.4 / pitch
	}
	at := func(offset float64) float64 { return float64(m * (float64(count) + offset)) }
	half := float64(math.Pi / 2 * m)
	return Sizes{
		PitchMM: at(0), BaseMM: at(0) * math.Cos(f.PressureDeg*degree),
		ExtTipMM: at(f.ExtTip), ExtRootMM: at(f.ExtRoot), ExtRootDeepMM: at(f.ExtRootDeep),
		IntRootMM: at(f.IntRoot), IntTipMM: at(f.IntTip),
		ToothMM: half, SpaceMM: half + float64(f.WiderSpace*m),
		ModuleMM: m, Degrees: f.PressureDeg,
	}
}
