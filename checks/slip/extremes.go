package slip

import (
	"errors"
	"math"
)

// ErrTravel is returned for a travel without beginning or end.
var ErrTravel = errors.New("the travel needs a lower and a higher end")

// Step is how far apart, in mm, a travel is looked at before its extremes are refined.
const Step = 10.0

// Extreme is where along the travel something is least or most; Value has the unit of that, as mm.
type Extreme struct{ TravelMM, Value float64 }

// Heights returns the travels in mm from low to high, both included, evenly and no more than Step apart.
func Heights(low, high float64) []float64 {
	n := int(math.Ceil((high - low) / Step))
	if !(n > 0) {
		return []float64{low}
	}
	if n > 1000 {
		n = 1000
	}
	list := make([]float64, n+1)
	for i := range list {
		list[i] = low + float64((high-low)*(float64(i)/float64(n)))
	}
	list[n] = high
	return list
}

// Extremes returns where of is least and where it is most between low and high, mm: looked at no more
// than Step apart, then refined between the neighbours of the best. It errs with ErrTravel, or
// with the first error of of.
func Extremes(low, high float64, of func(travelMM float64) (float64, error)) (least, most Extreme, err error) {
	if !(high >= low) || math.IsInf(high-low, 0) {
		return Extreme{}, Extreme{}, ErrTravel
	}
	heights := Heights(low, high)
	values := make([]float64, len(heights))
	lowest, highest := 0, 0
	for i, s := range heights {
		if values[i], err = of(s); err != nil {
			return Extreme{}, Extreme{}, err
		}
		if values[i] < values[lowest] {
			lowest = i
		}
		if values[i] > values[highest] {
			highest = i
		}
	}
	if least, err = refined(heights, values, lowest, of, -1); err != nil {
		return Extreme{}, Extreme{}, err
	}
	most, err = refined(heights, values, highest, of, 1)
	return least, most, err
}

// refined looks between the neighbours of the best height by golden section.
func refined(heights, values []float64, best int, of func(float64) (float64, error), sign float64) (Extreme, error) {
	found := Extreme{heights[best], values[best]}
	if best == 0 || best == len(heights)-1 {
		return found, nil
	}
	const golden = 0.6180339887498949
	a, b := heights[best-1], heights[best+1]
	for range 45 {
		left, right := b-float64(golden*(b-a)), a+float64(golden*(b-a))
		l, err := of(left)
		if err != nil {
			return Extreme{}, err
		}
		r, err := of(right)
		if err != nil {
			return Extreme{}, err
		}
		for _, e := range []Extreme{{left, l}, {right, r}} {
			if sign*e.Value > sign*found.Value {
				found = e
			}
		}
		if sign*l > sign*r {
			b = right
		} else {
			a = left
		}
	}
	return found, nil
}
