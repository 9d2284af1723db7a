package flange

import (
	"fmt"
	"math"
)

// Circle returns the diameter of the circle through n equally spaced holes, from the chord between
// two neighbours, mm:
//
//	D = c/sin(π/n)
//
// Two holes stand opposite each other, so their chord is the diameter. It errs for fewer than two
// holes and for a chord that is not above 0 and finite. Source: geometry of the regular polygon.
func Circle(holes int, chordMM float64) (mm float64, err error) {
	if err := check(holes, chordMM); err != nil {
		return 0, err
	}
	return chordMM / math.Sin(math.Pi/float64(holes)), nil
}

// CircleOfPairs returns the diameter of the circle through an even number n of holes whose spacing
// alternates between two chords, mm:
//
//	D = √(c₁² + c₂² + 2·c₁·c₂·cos γ)/sin γ,   γ = 2π/n
//
// With four holes that is the diagonal of their rectangle. It errs for an odd number of holes or
// fewer than four, and for a chord that is not above 0 and finite. Source: law of cosines and the
// inscribed angle over two neighbouring chords, which is π − γ; worked out here.
func CircleOfPairs(holes int, chordMM, chord2MM float64) (mm float64, err error) {
	if err := check(holes, chordMM, chord2MM); err != nil {
		return 0, err
	}
	if holes%2 != 0 || holes < 4 {
		return 0, fmt.Errorf("%d holes can't alternate between two chords; read every chord once round and count again", holes)
	}
	gamma := 2 * math.Pi / float64(holes)
	square := float64(chordMM*chordMM) + float64(chord2MM*chord2MM) + float64(2*chordMM*chord2MM*math.Cos(gamma))
	return math.Sqrt(square) / math.Sin(gamma), nil
}

// Offset returns how far two axes lie apart, mm, where a needle that is turned round one of them
// moves runoutMM in all on the other's bore: half of it. Source: a full turn shows the offset once
// on either side.
func Offset(runoutMM float64) (mm float64) { return runoutMM / 2 }

func check(holes int, chords ...float64) error {
	if holes < 2 {
		return fmt.Errorf("%d holes have no circle; count them again", holes)
	}
	for _, c := range chords {
		if !(c > 0) || math.IsInf(c, 0) {
			return fmt.Errorf("chord %g must be above 0; measure it again", c)
		}
	}
	return nil
}
