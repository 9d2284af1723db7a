package slip

// Exposed returns how far in mm a spline is drawn out from fully closed at a length, from what it is at
// another: C = C₀ + (L − L₀). It is also the room left before it bottoms.
//
// Source: the sliding halves are rigid; worked apart from this code.
func Exposed(exposedThereMM, thereMM, lengthMM float64) float64 {
	return exposedThereMM + (lengthMM - thereMM)
}

// Use is what a sliding spline has and what is asked of it, all in mm.
type Use struct {
	ShortestMM, LongestMM float64 // joint centre to joint centre over the travel
	UsableMM              float64 // from fully closed until the last tooth lets go
	ReserveMM             float64 // to be left before it bottoms
	EngagedMM             float64 // to stay engaged
}

// Spare returns the mm that the stroke has left beyond all that is asked of it; negative: no length of the
// shaft makes this spline do.
func (u Use) Spare() float64 {
	return u.UsableMM - (u.LongestMM - u.ShortestMM) - u.ReserveMM - u.EngagedMM
}

// BestClosed returns the length in mm, fully closed, at which the shaft should be made: what is spare is
// then the same at both ends of the stroke.
//
// Source: worked apart from this code. (A cardan shaft maker's rule for plants that hardly move,
// fully closed and a third of the stroke, knows nothing of where on its travel an axle stands.)
func (u Use) BestClosed() float64 { return u.ShortestMM - u.ReserveMM - u.Spare()/2 }
