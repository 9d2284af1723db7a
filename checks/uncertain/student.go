package uncertain

import "math"

// seriesFrom is the freedom from which the expansion about the normal is exact enough.
const seriesFrom = 100

// StudentQuantile returns the value that a Student t draw with freedom ν stays below with chance
// p, 0 < p < 1; a p outside counts as the nearest number inside, a ν below 1 as 1. Relative error
// below 1e-8 for 1e-4 < p < 1 − 1e-4; further out less is left.
//
// With θ = atan(t/√ν) the distribution is a finite sum of sines and cosines, solved here for θ by
// Newton's steps kept between bounds. From ν = 100 the expansion about the normal is used.
//
// Source: Abramowitz & Stegun 26.7.3, 26.7.4 (closed forms) and 26.7.5 (expansion), from memory;
// the test compares them with another program.
func StudentQuantile(p float64, freedom int) float64 {
	p = inside(p)
	freedom = max(freedom, 1)
	if freedom >= seriesFrom {
		return studentSeries(NormalQuantile(p), float64(freedom))
	}
	nu := float64(freedom)
	central := 1 - float64(2*math.Min(p, 1-p))
	theta := solveCentral(central, freedom, math.Atan(math.Abs(NormalQuantile(p))/math.Sqrt(nu)))
	return math.Copysign(math.Sqrt(nu)*math.Tan(theta), p-0.5)
}

// solveCentral finds the θ in [0, π/2) with centralChance(θ) = want.
func solveCentral(want float64, freedom int, theta float64) float64 {
	low, high := 0.0, math.Pi/2
	atZero := centralRate(freedom)
	for range 80 {
		have, cosine := centralChance(theta, freedom)
		if have < want {
			low = theta
		} else {
			high = theta
		}
		rate := atZero
		for range freedom - 1 {
			rate *= cosine
		}
		next := theta - (have-want)/rate
		if !(next > low && next < high) {
			next = float64(low/2) + float64(high/2)
		}
		if math.Abs(next-theta) <= 1e-16*theta {
			return next
		}
		theta = next
	}
	return theta
}

// centralChance is the chance that |t| ≤ √ν·tan θ, and cos θ:
//
//	ν odd:   2/π·(θ + sin θ·(cos θ + 2/3·cos³θ + … + 2·4…(ν−3)/(3·5…(ν−2))·cos^(ν−2) θ))
//	ν even:  sin θ·(1 + 1/2·cos²θ + … + 1·3…(ν−3)/(2·4…(ν−2))·cos^(ν−2) θ)
func centralChance(theta float64, freedom int) (chance, cosine float64) {
	sine, cosine := math.Sincos(theta)
	sum := seriesSum(float64(cosine*cosine), freedom)
	if freedom%2 == 0 {
		return float64(sine * sum), cosine
	}
	return float64(2 / math.Pi * (theta + float64(sine*cosine*sum))), cosine
}

// centralRate is the slope of centralChance at θ = 0; elsewhere it is cos^(ν−1) θ times as steep.
func centralRate(freedom int) float64 {
	sum := seriesSum(1, freedom)
	if freedom%2 == 0 {
		return sum
	}
	return 2 / math.Pi * (1 + sum)
}

// seriesSum sums the cosine series of centralChance, nested, without its leading cos θ when ν is odd.
func seriesSum(square float64, freedom int) float64 {
	if freedom == 1 {
		return 0
	}
	sum := 1.0
	for k := freedom - 2; k >= 2; k -= 2 {
		sum = 1 + float64(sum*square*float64(k-1)/float64(k))
	}
	return sum
}

// studentSeries widens a normal quantile z to freedom ν.
func studentSeries(z, nu float64) float64 {
	s := float64(z * z)
	g1 := float64(z*(s+1)) / 4
	g2 := float64(z*(float64(s*(float64(5*s)+16))+3)) / 96
	g3 := float64(z*(float64(s*(float64(s*(float64(3*s)+19))+17))-15)) / 384
	g4 := float64(z*(float64(s*(float64(s*(float64(s*(float64(79*s)+776))+1482))-1920))-945)) / 92160
	return z + float64(float64(g1+float64(float64(g2+float64(float64(g3+g4/nu)/nu))/nu))/nu)
}
