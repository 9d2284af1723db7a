package remedy

import (
	"slices"

	"yokebook/checks/limits"
	"yokebook/measure"
	"yokebook/measure/document"
)

// vehicle is a build with only what counts of it, so that a copy with other readings judges alike.
type vehicle struct {
	build *measure.Build
}

// vehicleOf leaves out what was replaced or struck. Disputed records stay as they are.
func vehicleOf(b *measure.Build) *vehicle {
	plain := *b
	plain.Strikes, plain.Readings = nil, nil
	for i, standing := range b.Standings(document.Hash) {
		r := b.Readings[i]
		switch standing {
		case measure.Current:
			r.Replaces = ""
		case measure.Disputed:
		default:
			continue
		}
		plain.Readings = append(plain.Readings, r)
	}
	return &vehicle{&plain}
}

// everywhere reports a reading that holds in every state.
func everywhere(r measure.Reading) bool {
	return r.Ride == measure.Bench || r.Basis == measure.Stated
}

// elsewhere is the order in which states stand in for one in which a point was not read.
var elsewhere = []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump, measure.OffBench}

// read is a point in a state, in its base unit and along the part: the mean there, else what holds
// everywhere, else the mean in another state. False where it was not read at all.
func (v *vehicle) read(point string, state measure.State) (float64, bool) {
	here := func(r measure.Reading) bool { return !everywhere(r) && r.State() == state }
	if x, ok := v.mean(point, here); ok {
		return x, true
	}
	if x, ok := v.mean(point, everywhere); ok {
		return x, true
	}
	for _, s := range elsewhere {
		if x, ok := v.mean(point, func(r measure.Reading) bool { return r.State() == s }); ok {
			return x, true
		}
	}
	return 0, false
}

// bench is a point that holds in every state.
func (v *vehicle) bench(point string) (float64, bool) { return v.read(point, measure.OffBench) }

// has reports whether all of these points were read in some state.
func (v *vehicle) has(points ...string) bool {
	return !slices.ContainsFunc(points, func(p string) bool { _, ok := v.bench(p); return !ok })
}

func (v *vehicle) mean(point string, fits func(measure.Reading) bool) (float64, bool) {
	sum, n := 0.0, 0
	for _, r := range v.build.Readings {
		if r.Point != point || !fits(r) {
			continue
		}
		if x, ok := r.Number(); ok {
			sum += r.Along(x)
			n++
		}
	}
	if n == 0 {
		return 0, false
	}
	return sum / float64(n), true
}

// given is a number of the table of limits, for what nobody read.
func given(key string) float64 {
	row, _ := limits.Of(key)
	return row.Value
}
