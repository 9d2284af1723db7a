package checks

import "yokebook/measure"

// SeenObstacle is something beside the shaft line as far as it was read.
type SeenObstacle struct {
	Tag       string  // how its readings name it
	StationMM float64 // behind the front joint, along the line
	Side      int     // 1 above, 2 below, 3 beside
	Gap       Number  // from the string between the joint centres
	State     measure.State
}

// Obstacles lists the obstacles of which station, side and a gap were read, by tag. The gap is that of
// the state that serves first, standing before hanging.
func (s *Sight) Obstacles() []SeenObstacle {
	var all []SeenObstacle
	for _, o := range s.e.obstacles() {
		if o.station == nil || o.side == nil || len(o.gaps) == 0 {
			continue
		}
		q := o.gaps[0].q
		low, high := q.interval()
		all = append(all, SeenObstacle{o.tag, o.station.best, int(o.side.best), Number{q.best, low, high, false}, o.gaps[0].state})
	}
	return all
}
