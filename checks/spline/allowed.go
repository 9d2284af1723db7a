package spline

// Allowed are the stresses that a hardness is good for, MPa.
type Allowed struct {
	FromHRC  float64 // holds from this hardness up to the next row
	Steel    string
	ShearMPa float64
	SideMPa  float64 // straight teeth; crowned ones are allowed four times as much
}

// AllowedStresses, soft to hard; beside each row what the source prints. Between two rows the softer
// one counts.
//
// Source: Dudley, When Splines Need Stress Control, Product Engineering 1957, tables of allowable
// shear and compressive stress; the two Brinell rows turned into Rockwell C from memory.
var AllowedStresses = []Allowed{
	{0, "160-200 HB", 138, 10.3},                   // 20 000 and 1 500 psi
	{20.5, "230-260 HB", 207, 13.8},                // 30 000 and 2 000 psi
	{33, "33-38 HRC", 276, 20.7},                   // 40 000 and 3 000 psi
	{48, "48-53 HRC, surface hardened", 276, 27.6}, // 40 000 and 4 000 psi
	{58, "58-63 HRC, case hardened", 345, 34.5},    // 50 000 and 5 000 psi
}

// AllowedAt returns the row of a hardness, in Rockwell C degrees.
func AllowedAt(hrc float64) Allowed {
	best := AllowedStresses[0]
	for _, a := range AllowedStresses[1:] {
		if hrc >= a.FromHRC {
			best = a
		}
	}
	return best
}
