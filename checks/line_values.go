package checks

import (
	"fmt"
	"slices"

	"yokebook/checks/joint"
	"yokebook/measure"
)

// complete reports a line of which every slope was read and every setup can be compared.
func (ln *line) complete() bool { return len(ln.missing) == 0 && len(ln.datums) == 0 }

// args lists slope, plan and turn of the parts from..to, as axis reads them.
func (ln *line) args(from, to int) []*quantity {
	var args []*quantity
	for _, p := range ln.parts[from : to+1] {
		turn := p.turn
		if turn == nil {
			turn = exact(0)
		}
		args = append(args, p.slope, p.plan, turn)
	}
	return args
}

func axis(x []float64, i int) joint.Axis {
	a := joint.AxisOf(x[3*i], x[3*i+1])
	if x[3*i+2] != 0 {
		a = a.Pitched(x[3*i+2])
	}
	return a
}

// angle is the working angle of one joint, nil until both its axes can be compared.
func (e *engine) angle(ln *line, j int) *quantity {
	if ln.complete() {
		return e.valuesOf(ln).angles[j]
	}
	if ln.parts[j].slope == nil || ln.parts[j+1].slope == nil || len(ln.datums) > 0 {
		return nil
	}
	return e.combine("angle", 1, func(x, out []float64) {
		out[0] = joint.Angle(axis(x, 0), axis(x, 1))
	}, ln.args(j, j+1)...)[0]
}

// valuesOf computes a complete line in one pass over the draws.
func (e *engine) valuesOf(ln *line) *lineValues {
	if ln.values != nil {
		return ln.values
	}
	n, joints, shafts := len(ln.parts), len(ln.parts)-1, len(ln.parts)-2
	name := fmt.Sprintf("line %v gearbox %d", ln.double, ln.gearAt)
	args := append(ln.args(0, n-1), ln.phases...)
	all := e.combineOwn(name, ln.uses(), func() formula {
		chain := joint.Chain{Axes: make([]joint.Axis, n), PhaseDeg: make([]float64, shafts), Double: ln.double}
		buf := make([]float64, 0, joints)
		return func(x, out []float64) {
			for i := range chain.Axes {
				chain.Axes[i] = axis(x, i)
			}
			copy(chain.PhaseDeg, x[3*n:])
			copy(out, chain.Angles(buf[:0]))
			out[joints] = chain.Residual(0, joints-1)
			for s := 0; s < shafts; s++ {
				front, rear := chain.Residual(0, s), chain.Residual(s+1, joints-1)
				if ln.gearAt > 0 {
					front, rear = rear, front
				}
				out[joints+1+s], out[joints+1+shafts+s] = front, rear
			}
		}
	}, args...)
	ln.values = &lineValues{all[:joints], all[joints], all[joints+1 : joints+1+shafts], all[joints+1+shafts:]}
	return ln.values
}

// uses lists for each number of valuesOf the args that it rests on: slope, plan and turn of the parts
// that meet in its joints, and the phases of the shafts between these.
func (ln *line) uses() [][]int {
	joints, shafts := len(ln.parts)-1, len(ln.parts)-2
	run := func(first, last int) []int {
		var list []int
		for i := 3 * first; i < 3*(last+2); i++ {
			list = append(list, i)
		}
		for s := first; s < last; s++ {
			list = append(list, 3*len(ln.parts)+s)
		}
		return list
	}
	var uses [][]int
	for j := 0; j < joints; j++ {
		uses = append(uses, run(j, j))
	}
	uses = append(uses, run(0, joints-1))
	var fronts, rears [][]int
	for s := 0; s < shafts; s++ {
		fronts, rears = append(fronts, run(0, s)), append(rears, run(s+1, joints-1))
	}
	if ln.gearAt > 0 {
		fronts, rears = rears, fronts
	}
	return slices.Concat(uses, fronts, rears)
}

// changedByWindUp reports whether a number of a wound-up line rests on the wind-up at all; one that
// does not is the same as in the state itself and is said there.
func (e *engine) changedByWindUp(ln *line, q *quantity) bool {
	return e.restsOnWindUp(ln.state.Case, q)
}

// rests reports whether a reading of a point went into a quantity.
func (e *engine) rests(q *quantity, key string) bool {
	return slices.ContainsFunc(e.byPoint[key], func(r measure.Reading) bool { return slices.Contains(q.from.used, r.ID) })
}
