package uncertain

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

func TestIntervalOfKnownShapes(t *testing.T) {
	for _, row := range []struct {
		s         Shape
		want, tol float64
		source    string
	}{
		{Shape{Kind: Rectangular}, 0.9, 3e-4, "90 % of a flat distribution"},
		{Shape{Kind: Normal}, 1.6449, 2e-3, "Abramowitz & Stegun table 26.1 (from memory)"},
		{Shape{Student, 3}, 2.3534, 4e-3, "Abramowitz & Stegun table 26.10 (from memory)"},
	} {
		low, high := Interval(Column("any", row.s), 0)
		if math.Abs(high-row.want) > row.tol || low != -high {
			t.Errorf("%+v: %g … %g, want ±%g (%s)", row.s, low, high, row.want, row.source)
		}
	}
}

func TestIntervalIsTheSortedOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draws := rapid.SliceOfN(rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{-1, 0, 1})), 1, 300).Draw(t, "draws")
		best := rapid.Float64Range(-2, 2).Draw(t, "best")
		before := slices.Clone(draws)
		low, high := Interval(draws, best)
		if !slices.Equal(draws, before) {
			t.Fatal("the draws were changed")
		}
		slices.Sort(before)
		k := len(before) / 20
		if wantLow, wantHigh := min(before[k], best), max(before[len(before)-1-k], best); low != wantLow || high != wantHigh {
			t.Errorf("%g … %g, sorted %g … %g", low, high, wantLow, wantHigh)
		}
	})
}

func TestIntervalAgreesWithTheChance(t *testing.T) {
	// high ≤ limit and a chance of at least 95 % are one statement.
	source := rand.New(rand.NewPCG(1, 2))
	for range 50 {
		draws := Column("agree", Shape{Kind: Normal})
		source.Shuffle(len(draws), func(i, j int) { draws[i], draws[j] = draws[j], draws[i] })
		_, high := Interval(draws, math.Inf(-1))
		for _, limit := range []float64{high, math.Nextafter(high, -10)} {
			pass := make([]bool, len(draws))
			for i, d := range draws {
				pass[i] = d <= limit
			}
			if (Chance(pass) >= 0.95) != (high <= limit) {
				t.Fatalf("limit %g: chance %g, high %g", limit, Chance(pass), high)
			}
		}
	}
}

func TestIntervalHoldsTheBestEstimate(t *testing.T) {
	if low, high := Interval([]float64{1, 2, 3}, 7); low != 1 || high != 7 {
		t.Errorf("%g … %g", low, high)
	}
	if low, high := Interval([]float64{1, 2, 3}, -7); low != -7 || high != 3 {
		t.Errorf("%g … %g", low, high)
	}
	if low, high := Interval(nil, 4); low != 4 || high != 4 {
		t.Errorf("no draws: %g … %g", low, high)
	}
	if low, high := Interval([]float64{math.NaN(), math.NaN(), 5}, 4); low != 4 || high != 5 {
		t.Errorf("draws that are no numbers: %g … %g", low, high)
	}
	zero := math.Copysign(0, -1)
	if low, high := Interval([]float64{zero, 0, zero}, zero); math.Signbit(low) || math.Signbit(high) {
		t.Errorf("%g … %g", low, high)
	}
}

func TestIntervalOfAwkwardOrders(t *testing.T) {
	for name, make := range map[string]func(i int) float64{
		"rising": func(i int) float64 { return float64(i) }, "falling": func(i int) float64 { return float64(-i) },
		"all one": func(int) float64 { return 3 }, "two values": func(i int) float64 { return float64(i % 2) },
		"there and back": func(i int) float64 { return math.Abs(float64(i - N/2)) },
	} {
		var draws []float64
		for i := range N {
			draws = append(draws, make(i))
		}
		low, high := Interval(draws, draws[0])
		slices.Sort(draws)
		if wantLow, wantHigh := min(draws[204], low), max(draws[N-1-204], high); low != wantLow || high != wantHigh {
			t.Errorf("%s: %g … %g, want %g … %g", name, low, high, wantLow, wantHigh)
		}
	}
}

func TestChance(t *testing.T) {
	for _, row := range []struct {
		pass []bool
		want float64
	}{{nil, 0}, {[]bool{true}, 1}, {[]bool{false}, 0}, {[]bool{true, false, true, true}, 0.75}} {
		if got := Chance(row.pass); got != row.want {
			t.Errorf("%v: %g, want %g (counted)", row.pass, got, row.want)
		}
	}
}
