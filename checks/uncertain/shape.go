package uncertain

import (
	"math"
	"sync"
)

// N is the number of draws of every column.
const N = 4096

// Kind is the kind of a distribution.
type Kind int

// The distributions that causes of doubt have.
const (
	Rectangular Kind = iota // flat between −1 and 1: a display step, a maker's ± limit
	Normal                  // standard deviation 1: laying a tool on again
	Student                 // t with Shape.Freedom, not rescaled: the mean of a few repeats
)

// Shape is a distribution with centre 0 and unit size.
type Shape struct {
	Kind    Kind
	Freedom int // degrees of freedom, Student only; below 1 counts as 1
}

// normalised makes shapes that draw alike equal.
func (s Shape) normalised() Shape {
	switch {
	case s.Kind != Student:
		s.Freedom = 0
	case s.Freedom < 1:
		s.Freedom = 1
	}
	return s
}

// Std returns the standard deviation of a unit draw:
//
//	rectangular 1/√3,   normal 1,   Student √(ν/(ν−2)) for ν > 2
//
// With ν ≤ 2 a Student draw has none; then it is that of the normal with the same 5 % and 95 %
// points, 3.838 (ν = 1) and 1.775 (ν = 2), which is what counts when causes are put in order.
//
// Source: JCGM 100:2008, 4.3.7 and G.3 (from memory).
func (s Shape) Std() float64 {
	s = s.normalised()
	switch {
	case s.Kind == Rectangular:
		return 1 / math.Sqrt(3)
	case s.Kind == Normal:
		return 1
	case s.Freedom <= 2:
		return StudentQuantile(0.95, s.Freedom) / NormalQuantile(0.95)
	}
	nu := float64(s.Freedom)
	return math.Sqrt(nu / (nu - 2))
}

// quantile is the inverse distribution at p.
func (s Shape) quantile(p float64) float64 {
	switch s.Kind {
	case Normal:
		return NormalQuantile(p)
	case Student:
		return StudentQuantile(p, s.Freedom)
	}
	return float64(2*p) - 1
}

// grid is the sorted column of a shape, made when it is first wanted.
type grid struct {
	once   sync.Once
	points [N]float64
}

var grids sync.Map // Shape → *grid

// gridOf returns the N points of a shape in rising order; they are shared and not to be changed.
// The lower half mirrors the upper, so that a column sums to nothing.
func gridOf(s Shape) *[N]float64 {
	s = s.normalised()
	kept, ok := grids.Load(s)
	if !ok {
		kept, _ = grids.LoadOrStore(s, new(grid))
	}
	g := kept.(*grid)
	g.once.Do(func() {
		for i := N / 2; i < N; i++ {
			x := s.quantile((float64(i) + 0.5) / N)
			g.points[i], g.points[N-1-i] = x, -x
		}
	})
	return &g.points
}
