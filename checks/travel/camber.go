package travel

import (
	"errors"
	"math"
)

// ErrCamber is returned for a spring without length, or with more camber than an arc can have.
var ErrCamber = errors.New("a spring needs a chord longer than 0 and a camber from 0 to half of it")

// ArcLength returns the length of a leaf that stands camberMM high over a chord of chordMM:
//
//	R = L²/(8c) + c/2,   S = 2R·asin(L/2R)
//
// It errs with ErrCamber.
//
// Source: circular arc, worked apart from this code.
func ArcLength(chordMM, camberMM float64) (float64, error) {
	if !positive(chordMM) || !(camberMM >= 0) || camberMM > chordMM/2 {
		return 0, ErrCamber
	}
	// S = 2R·asin(L/2R) with asin written by the half angle, which stays exact for a flat leaf.
	half := 2 * camberMM / chordMM
	if half < 1e-7 {
		return chordMM, nil
	}
	radius := float64(chordMM*chordMM)/(8*camberMM) + camberMM/2
	return 4 * float64(radius*math.Atan(half)), nil
}

// ChordAt returns the chord over which a leaf of lengthMM stands camberMM high: what the shackle has
// to follow. It errs with ErrCamber.
//
// Source: circular arc, worked apart from this code.
func ChordAt(lengthMM, camberMM float64) (float64, error) {
	if !positive(lengthMM) || !(camberMM >= 0) || camberMM > lengthMM/math.Pi {
		return 0, ErrCamber
	}
	low, high := 2*camberMM, lengthMM
	for range 100 {
		mid := (low + high) / 2
		arc, err := ArcLength(mid, camberMM)
		if err != nil {
			return 0, err
		}
		if arc < lengthMM {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2, nil
}
