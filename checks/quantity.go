package checks

import (
	"crypto/sha256"
	"encoding/binary"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"

	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// cause is one thing that may be off: a finder's zero in one setup, the placing of one reading, a
// plan angle that nobody read. Its key names its column of draws, so the same cause used twice
// moves both uses together.
type cause struct {
	key     string
	shape   uncertain.Shape
	input   string     // what weakest calls it: a point key or "<instrument>.zero"
	reading measure.ID // "" when shared by several readings or assumed
	assumed bool
}

var (
	rectangular = uncertain.Shape{Kind: uncertain.Rectangular}
	normal      = uncertain.Shape{Kind: uncertain.Normal}
)

func studentT(freedom int) uncertain.Shape {
	return uncertain.Shape{Kind: uncertain.Student, Freedom: freedom}
}

func shapeText(s uncertain.Shape) string {
	return strconv.Itoa(int(s.Kind)) + "/" + strconv.Itoa(s.Freedom)
}

// shift is the value of a quantity when one cause stands one standard deviation up and down.
type shift struct {
	cause    *cause
	up, down float64
}

// quantity is a number with its draws and with what it rests on. It never changes once made.
type quantity struct {
	best   float64
	draws  []float64 // nil: exact
	shifts []shift
	from   origin
	sig    [16]byte // same signature, same quantity to the last bit
	bad    bool     // some draw is not a finite number
	lean   bool     // made for a glance: it has no draws, and its causes say how far it goes

	once      sync.Once
	low, high float64
	sigma     *float64 // of a lean quantity, once asked for
}

// origin is what a quantity rests on; all lists are sorted.
type origin struct {
	used    []measure.ID
	restsOn []string // points stated or estimated
	assumed []string // points not read
}

func (o origin) join(p origin) origin {
	return origin{union(o.used, p.used), union(o.restsOn, p.restsOn), union(o.assumed, p.assumed)}
}

// union is what stands in either of two sorted lists, sorted; where one holds the other it is that one.
func union[T ~string](a, b []T) []T {
	switch {
	case holdsAll(a, b):
		return a
	case holdsAll(b, a):
		return b
	}
	out := make([]T, 0, len(a)+len(b))
	i, j := 0, 0
	for i < len(a) && j < len(b) {
		switch c := strings.Compare(string(a[i]), string(b[j])); {
		case c < 0:
			out, i = append(out, a[i]), i+1
		case c > 0:
			out, j = append(out, b[j]), j+1
		default:
			out, i, j = append(out, a[i]), i+1, j+1
		}
	}
	return slices.Clip(append(append(out, a[i:]...), b[j:]...))
}

// holdsAll reports whether every one of part is in list; both are sorted.
func holdsAll[T ~string](list, part []T) bool {
	for i := 0; len(part) > 0; i++ {
		if i == len(list) || len(list)-i < len(part) || list[i] > part[0] {
			return false
		}
		if list[i] == part[0] {
			part = part[1:]
		}
	}
	return true
}

// interval returns the 5 % and 95 % points, widened to hold the best value.
func (q *quantity) interval() (low, high float64) {
	q.once.Do(func() {
		q.low, q.high = q.best, q.best
		switch {
		case q.lean:
			half := float64(oneSided * q.std())
			q.low, q.high = q.best-half, q.best+half
		case q.draws != nil:
			q.low, q.high = uncertain.Interval(q.draws, q.best)
		}
	})
	return q.low, q.high
}

func (q *quantity) at(k int) float64 {
	switch {
	case k < len(q.draws):
		return q.draws[k]
	case q.draws != nil:
		return q.draws[k%len(q.draws)] // a sketch has fewer
	case q.lean:
		return q.best + float64(q.std()*bell()[k])
	}
	return q.best
}

// shifted returns the value with cause c up and down; the best value where c plays no part.
func (q *quantity) shifted(c *cause) (up, down float64) {
	for _, s := range q.shifts {
		if s.cause.key == c.key {
			return s.up, s.down
		}
	}
	return q.best, q.best
}

// exact is a number without doubt.
func exact(value float64) *quantity {
	q := &quantity{best: value}
	q.sig = signature("exact", []float64{value})
	return q
}

// share is one input's part in the variance of a quantity.
type share struct {
	input   string
	reading measure.ID
	assumed bool
	part    float64
}

// shares splits the variance of q over its inputs, largest first. Near a kink, where a value can
// only grow, the mean of both sides counts, so an input that matters there is never taken for nothing.
func (q *quantity) shares() []share {
	var list []share
	total, scale := 0.0, q.squarable()
	for _, s := range q.shifts {
		up, down := float64((s.up-q.best)*scale), float64((s.down-q.best)*scale)
		part := (float64(up*up) + float64(down*down)) / 2
		if part == 0 {
			continue
		}
		total += part
		i := slices.IndexFunc(list, func(h share) bool { return h.input == s.cause.input && h.reading == s.cause.reading })
		if i < 0 {
			list = append(list, share{s.cause.input, s.cause.reading, s.cause.assumed, 0})
			i = len(list) - 1
		}
		list[i].part += part
	}
	for i := range list {
		list[i].part /= total
	}
	slices.SortStableFunc(list, func(a, b share) int {
		switch {
		case a.part > b.part:
			return -1
		case a.part < b.part:
			return 1
		}
		return 0
	})
	return list
}

// squarable is the factor that keeps the squares of q's shifts finite: 1 but for sizes that no part has.
func (q *quantity) squarable() float64 {
	widest := 0.0
	for _, s := range q.shifts {
		widest = max(widest, math.Abs(s.up-q.best), math.Abs(s.down-q.best))
	}
	switch {
	case !finite(widest):
		return 0
	case widest > 1e150:
		return 1 / widest
	}
	return 1
}

// signature names a quantity by everything that it was made from.
func signature(name string, numbers []float64, parts ...[16]byte) [16]byte {
	text := append([]byte(name), 0)
	for _, f := range numbers {
		text = binary.LittleEndian.AppendUint64(text, math.Float64bits(f))
	}
	for _, p := range parts {
		text = append(text, p[:]...)
	}
	sum := sha256.Sum256(text)
	var sig [16]byte
	copy(sig[:], sum[:])
	return sig
}

func finite(f float64) bool { return f-f == 0 } // false for NaN and both infinities
