package uncertain

import (
	"crypto/sha256"
	"math/rand/v2"
)

// Column returns the N unit draws of the cause named key:
//
//	draw k = inverse distribution of s at (π(k) + ½)/N
//
// π is a Fisher–Yates shuffle driven by the ChaCha8 stream whose seed is the SHA-256 of the key.
// Two shapes under one key share the order. The slice is the caller's own.
func Column(key string, s Shape) []float64 {
	out := make([]float64, N)
	copy(out, gridOf(s)[:])
	shuffle(out, sha256.Sum256([]byte(key)))
	return out
}

// shuffle puts x into the order that a seed stands for: from the last place down, each is swapped
// with one chosen at or below it. Written out here so that the order never depends on how a
// library shuffles.
func shuffle(x []float64, seed [32]byte) {
	var s stream
	s.source.Seed(seed)
	for i := len(x) - 1; i > 0; i-- {
		j := s.below(uint32(i) + 1)
		x[i], x[j] = x[j], x[i]
	}
}

// stream hands out the 64-bit words of a ChaCha8 source as 32-bit ones, low half first.
type stream struct {
	source rand.ChaCha8
	high   uint32
	half   bool
}

func (s *stream) next() uint32 {
	if s.half {
		s.half = false
		return s.high
	}
	word := s.source.Uint64()
	s.high, s.half = uint32(word>>32), true
	return uint32(word)
}

// below returns an unbiased whole number in [0, n) by multiplying and turning away the few words
// that would favour some results.
//
// Source: D. Lemire, Fast random integer generation in an interval, ACM Trans. Model. Comput.
// Simul. 29 (2019), algorithm 5 (from memory).
func (s *stream) below(n uint32) uint32 {
	product := uint64(s.next()) * uint64(n)
	if uint32(product) < n {
		for least := -n % n; uint32(product) < least; {
			product = uint64(s.next()) * uint64(n)
		}
	}
	return uint32(product >> 32)
}
