package travel

import "errors"

// ErrBetween is returned outside the heights that were read, or for fewer than two of them.
var ErrBetween = errors.New("nothing was read on both sides of this height")

// Between returns what was read at other heights, drawn through to height at, mm. x are the heights in
// rising or falling order, y what was read at each, of any unit.
//
// Two heights: a straight line. Three or more: in each gap the parabola through its ends and the
// nearer of the heights beside it, because joint centres run on arcs: a straight line would cut off
// the longest and the shortest shaft between two readings, and a curve of higher order would follow
// the doubt of each reading. Nothing is drawn beyond the outermost heights: that is ErrBetween.
func Between(at float64, x, y []float64) (float64, error) {
	i, err := gap(at, x)
	if err != nil || len(y) != len(x) {
		return 0, ErrBetween
	}
	line := chord(at, x, y, i, i+1)
	third := i + 2
	if third >= len(x) || i > 0 && far(at, x[i-1]) < far(at, x[third]) {
		third = i - 1
	}
	if third < 0 {
		return line, nil
	}
	other := chord(at, x, y, i+1, third)
	if x[third] == x[i] {
		return 0, ErrBetween
	}
	return line + float64((other-line)*(at-x[i]))/(x[third]-x[i]), nil
}

// gap finds the two heights around at.
func gap(at float64, x []float64) (int, error) {
	for i := 0; i+1 < len(x); i++ {
		if (at-x[i])*(at-x[i+1]) <= 0 && x[i] != x[i+1] {
			return i, nil
		}
	}
	return 0, ErrBetween
}

// chord is the straight line through two readings.
func chord(at float64, x, y []float64, i, j int) float64 {
	return y[i] + float64((y[j]-y[i])*((at-x[i])/(x[j]-x[i])))
}

func far(a, b float64) float64 {
	if a < b {
		return b - a
	}
	return a - b
}
