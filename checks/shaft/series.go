package shaft

import "slices"

// Size is one size that tube is sold in.
type Size struct {
	OuterMM, WallMM float64
	Series          string // SeriesMetric or SeriesInch
}

// The two series.
const (
	SeriesMetric = "EN 10305"
	SeriesInch   = "inch"
)

// Series lists sizes that shaft tube is usually sold in, smallest outside diameter first, then the
// thinner wall: general sizes, no maker's list, and not every shop has each of them.
//
// Source: EN 10305-1 to -3, preferred outside diameters and walls of precision steel tube (from
// memory); inch diameters by halves and quarters with walls of the Birmingham gauge, 16 to 10
// (ASTM A513 and others; from memory).
var Series = func() []Size {
	var all []Size
	for _, d := range []float64{40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 110, 120} {
		for _, t := range []float64{1.5, 2, 2.5, 3, 4, 5} {
			all = append(all, Size{d, t, SeriesMetric})
		}
	}
	for _, d := range []float64{1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 4, 4.5, 5} {
		for _, t := range []float64{0.065, 0.083, 0.095, 0.109, 0.120, 0.134} {
			all = append(all, Size{float64(inch * d), float64(inch * t), SeriesInch})
		}
	}
	slices.SortStableFunc(all, func(a, b Size) int {
		switch {
		case a.OuterMM < b.OuterMM || a.OuterMM == b.OuterMM && a.WallMM < b.WallMM:
			return -1
		case a == b:
			return 0
		}
		return 1
	})
	return all
}()
