package checks

import (
	"runtime"
	"sync"
)

// drawAll computes every one of n draws, a share of them by each worker. No draw rests on another, so
// that it makes no difference how many workers there are.
func drawAll(n int, result []*quantity, own func() formula, args []*quantity) {
	block := make([]float64, len(result)*n)
	for o, q := range result {
		q.draws = block[o*n : (o+1)*n]
	}
	workers := max(1, min(runtime.GOMAXPROCS(0), n/leastShare))
	bad := make([][]bool, workers)
	var all sync.WaitGroup
	for w := range workers {
		share := func() { bad[w] = drawShare(n*w/workers, n*(w+1)/workers, result, own(), args) }
		if w == workers-1 {
			share()
			continue
		}
		all.Go(share)
	}
	all.Wait()
	for _, list := range bad {
		for o, q := range result {
			q.bad = q.bad || list[o]
		}
	}
}

// leastShare is how many draws are worth a worker of their own.
const leastShare = 512

// drawShare computes draws from…to−1 and says which numbers weren't finite in one of them.
func drawShare(from, to int, result []*quantity, f formula, args []*quantity) []bool {
	x, y, bad := make([]float64, len(args)), make([]float64, len(result)), make([]bool, len(result))
	for k := from; k < to; k++ {
		for i, a := range args {
			x[i] = a.at(k)
		}
		f(x, y)
		for o, q := range result {
			q.draws[k] = y[o]
			bad[o] = bad[o] || !finite(y[o])
		}
	}
	return bad
}

// shift moves the causes one after the other, each in all args that rest on it.
func (e *engine) shift(result []*quantity, f formula, args []*quantity, x, y []float64) {
	up := make([]float64, len(y))
	for i, a := range args {
		x[i] = a.best
	}
	for _, m := range movesOf(args) {
		for _, at := range m.at {
			x[at.arg] = at.up
		}
		f(x, up)
		for _, at := range m.at {
			x[at.arg] = at.down
		}
		f(x, y)
		for _, at := range m.at {
			x[at.arg] = args[at.arg].best
		}
		for o, q := range result {
			if up[o] != q.best || y[o] != q.best {
				q.shifts = append(q.shifts, shift{m.cause, up[o], y[o]})
			}
		}
	}
}

// move is a cause with the args that it moves.
type move struct {
	cause *cause
	at    []movedArg
}

type movedArg struct {
	arg      int
	up, down float64
}

// movesOf lists the causes of args in the order in which they first appear.
func movesOf(args []*quantity) []move {
	var list []move
	index := map[string]int{}
	for i, a := range args {
		for _, s := range a.shifts {
			k, seen := index[s.cause.key]
			if !seen {
				k = len(list)
				index[s.cause.key] = k
				list = append(list, move{cause: s.cause})
			}
			if at := list[k].at; len(at) == 0 || at[len(at)-1].arg != i {
				list[k].at = append(at, movedArg{i, s.up, s.down})
			}
		}
	}
	return list
}
