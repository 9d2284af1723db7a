package spline

// Straight is one size of a spline with straight, parallel flanks.
type Straight struct {
	Count   int
	MinorMM float64 // d
	MajorMM float64 // D
	ToothMM float64 // B
}

// ISO14Light and ISO14Medium are the two series of ISO 14, N×d×D with the tooth width. Shafts read
// under D: its fit a11 takes off 0.30 to 0.48 mm at 18 to 50 mm (from memory of ISO 286-2).
//
// Source: ISO 14 / BS 5686, one reprint. CONFLICT 3: it names the medium 56 size 8×56×66 and lists
// D = 65; 65 is the standard's (from memory) and is taken.
var (
	ISO14Light = []Straight{
		{6, 23, 26, 6}, {6, 26, 30, 6}, {6, 28, 32, 7}, {8, 32, 36, 6}, {8, 36, 40, 7}, {8, 42, 46, 8}, {8, 46, 50, 9},
		{8, 52, 58, 10}, {8, 56, 62, 10}, {8, 62, 68, 12}, {10, 72, 78, 12}, {10, 82, 88, 12}, {10, 92, 98, 14},
		{10, 102, 108, 16}, {10, 112, 120, 18},
	}
	ISO14Medium = []Straight{
		{6, 11, 14, 3}, {6, 13, 16, 3.5}, {6, 16, 20, 4}, {6, 18, 22, 5}, {6, 21, 25, 5}, {6, 23, 28, 6}, {6, 26, 32, 6},
		{6, 28, 34, 7}, {8, 32, 38, 6}, {8, 36, 42, 7}, {8, 42, 48, 8}, {8, 46, 54, 9}, {8, 52, 60, 10}, {8, 56, 65, 10},
		{8, 62, 72, 12}, {10, 72, 82, 12}, {10, 82, 92, 12}, {10, 92, 102, 14}, {10, 102, 112, 16}, {10, 112, 125, 18},
	}
)

// Proportion is one fit of SAE J499, as shares of the nominal diameter D: A for a permanent fit, B to
// slide without load, C to slide under load. They are those of the hole; the standard gives no shaft
// sizes, so a shaft reads under them.
type Proportion struct {
	Count                int
	Fit                  string
	Width, Height, Minor float64
	Source               string
}

const (
	j499       = "SAE J499, one-inch rows of a reprint; ratios worked apart from this code"
	j499Memory = "SAE J499 (from memory)"
)

// J499 holds the proportions; d = D − 2h in every row. The standard calls itself obsolete for new work.
var J499 = []Proportion{
	{4, "A", 0.241, 0.075, 0.850, j499Memory}, {4, "B", 0.241, 0.125, 0.750, j499Memory},
	{6, "A", 0.250, 0.050, 0.900, j499}, {6, "B", 0.250, 0.075, 0.850, j499}, {6, "C", 0.250, 0.100, 0.800, j499},
	{10, "A", 0.156, 0.045, 0.910, j499Memory}, {10, "B", 0.156, 0.070, 0.860, j499Memory}, {10, "C", 0.156, 0.095, 0.810, j499Memory},
	{16, "A", 0.098, 0.045, 0.910, j499Memory}, {16, "B", 0.098, 0.070, 0.860, j499Memory}, {16, "C", 0.098, 0.095, 0.810, j499Memory},
}

// j499Inches are the nominal diameters of SAE J499 that are looked for (from memory).
var j499Inches = []float64{0.75, 0.875, 1, 1.125, 1.25, 1.375, 1.5, 1.625, 1.75, 2, 2.25, 2.5, 3}

// At returns the size of a proportion at a nominal diameter.
func (p Proportion) At(nominalMM float64) Straight {
	return Straight{Count: p.Count, MajorMM: nominalMM, MinorMM: float64(p.Minor * nominalMM), ToothMM: float64(p.Width * nominalMM)}
}
