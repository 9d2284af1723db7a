package flange

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestCircleFromOneChord(t *testing.T) {
	for _, row := range []struct {
		name        string
		holes       int
		chord, want float64
		from        string
	}{
		{"hexagon: chord is the radius", 6, 50, 100, "Euclid, Elements IV.15"},
		{"square: chord·√2", 4, 60, 84.8528, "diagonal of the square, by hand"},
		{"triangle: chord·2/√3", 3, 60, 69.2820, "circumcircle of the equilateral triangle, by hand"},
		{"two holes", 2, 80, 80, "the chord is the diameter"},
		{"eight holes, 38.27 mm", 8, 38.2683, 100, "table of chords: 0.382683 of the diameter for 8 (Machinery's Handbook, from memory)"},
		{"five holes, 58.78 mm", 5, 58.7785, 100, "table of chords: 0.587785 of the diameter for 5 (Machinery's Handbook, from memory)"},
	} {
		if got, err := Circle(row.holes, row.chord); err != nil || math.Abs(got-row.want) > 1e-3 {
			t.Errorf("%s: got %.4f (%v), want %.4f (%s)", row.name, got, err, row.want, row.from)
		}
	}
}

func TestCircleFromTwoChords(t *testing.T) {
	for _, row := range []struct {
		name         string
		holes        int
		wide, narrow float64
		want         float64
		from         string
	}{
		{"rectangle 80 × 60", 4, 80, 60, 100, "Pythagoras, 3-4-5"},
		{"rectangle 96.6 × 25.9", 4, 96.5926, 25.8819, 100, "sides D·cos 15°, D·sin 15°, by hand"},
		{"six holes 40° and 80° apart", 6, 64.2788, 34.2020, 100, "chords D·sin 40°, D·sin 20°, by hand"},
	} {
		if got, err := CircleOfPairs(row.holes, row.wide, row.narrow); err != nil || math.Abs(got-row.want) > 1e-3 {
			t.Errorf("%s: got %.4f (%v), want %.4f (%s)", row.name, got, err, row.want, row.from)
		}
	}
}

// Equal chords give the same circle either way, order of the chords and unit do not matter, and
// holes laid out on a circle are found on it again.
func TestCirclesAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		holes := 2 * rapid.IntRange(2, 8).Draw(t, "pairs")
		half := math.Pi / float64(holes) // half the mean angle between neighbours
		d := rapid.Float64Range(40, 300).Draw(t, "circle")
		turn := half * rapid.Float64Range(-0.9, 0.9).Draw(t, "uneven")
		a, b := d*math.Sin(half+turn), d*math.Sin(half-turn)
		got, err := CircleOfPairs(holes, a, b)
		back, _ := CircleOfPairs(holes, b, a)
		inch, _ := CircleOfPairs(holes, a/25.4, b/25.4)
		if err != nil || math.Abs(got-d) > 1e-6 || math.Abs(back-got) > 1e-9 || math.Abs(inch*25.4-got) > 1e-9 {
			t.Errorf("holes on %g are found on %g, the other way round %g, in inches %g (%v)", d, got, back, inch*25.4, err)
		}
		even, _ := CircleOfPairs(holes, d*math.Sin(half), d*math.Sin(half))
		one, _ := Circle(holes, d*math.Sin(half))
		if math.Abs(even-one) > 1e-6 {
			t.Errorf("equal chords: %g from two, %g from one", even, one)
		}
	})
}

func TestPatternsThatAreNone(t *testing.T) {
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if _, err := Circle(4, bad); err == nil {
			t.Errorf("chord %g has a circle", bad)
		}
		if _, err := CircleOfPairs(4, 50, bad); err == nil {
			t.Errorf("second chord %g has a circle", bad)
		}
	}
	for _, holes := range []int{5, 2, 1, 0, -4} {
		if _, err := CircleOfPairs(holes, 50, 40); err == nil {
			t.Errorf("%d holes alternate", holes)
		}
	}
	if _, err := Circle(1, 50); err == nil {
		t.Error("one hole has a circle")
	}
}

func TestNeedleShowsTwiceTheOffset(t *testing.T) {
	// 0.005 in of needle are 0.0025 in of offset (any bellhousing alignment sheet; from memory).
	if got := Offset(0.127); got != 0.0635 {
		t.Errorf("0.127 mm of needle: offset %g", got)
	}
}
