package measure

import (
	"fmt"
	"math"
)

// Sense says what the sign of a value means, so that a screen can ask with a picture which it is
// and never ask for a sign.
type Sense string

// The senses of a signed point. Unsigned points have none and take no negative value.
const (
	Unsigned    Sense = ""
	FrontHigh   Sense = "front high"   // positive: the part's front end is the higher one
	FrontLeft   Sense = "front left"   // positive: the part's front end is further left
	Clockwise   Sense = "clockwise"    // positive: clockwise when one looks forward along the shaft
	Above       Sense = "above"        // positive: above the reference
	LeftOf      Sense = "left of"      // positive: left of the reference
	ForwardOf   Sense = "forward of"   // positive: forward of the reference
	GearboxSide Sense = "gearbox side" // positive: toward the gearbox from the named face
	EngineSide  Sense = "engine side"  // positive: toward the engine from the named face
	Outward     Sense = "outward"      // positive: stands out from the named face
)

// Code is one answer of a point that takes a small code instead of a size.
type Code struct {
	Value int
	Means string
}

// Point is one row of the table of points: something that can be read.
type Point struct {
	Key      string
	Group    Group
	Quantity Quantity
	Question string // plain words; what to do and what to look at
	Place    string // where to put the tool
	Sense    Sense
	Low      float64 // plausible range in the quantity's base unit; outside it is asked again
	High     float64
	Codes    []Code            // for answers
	Sample   string            // for texts: what one looks like
	Wanted   []State           // states in which the route stops here; none: taken only when a person wants to
	Moves    bool              // changes as the vehicle moves on its axle or is set up anew; else any state serves for all
	Optional bool              // the route offers it after what is wanted first
	Basis    Basis             // what a reading of it usually is; "" means measured
	For      func(Layout) bool // layouts that have this part; nil: every one
	Caution  string            // key of a caution shown before the stop; may be empty
	Makes    string            // of what was built: the point that it stands for; may be empty
	Voids    []string          // of what was built: points that hold no longer beside it
}

// Group gathers points of one part of the job, in the order of the table.
type Group string

// PointOf finds a point by key.
func PointOf(key string) (Point, bool) {
	i, ok := pointIndex[key]
	if !ok {
		return Point{}, false
	}
	return Points[i], true
}

var pointIndex = func() map[string]int {
	m := make(map[string]int, len(Points))
	for i, p := range Points {
		m[p.Key] = i
	}
	return m
}()

// In reports whether a layout has the part that the point belongs to.
func (p Point) In(l Layout) bool { return p.For == nil || p.For(l) }

// Refusal is why a value can't be true of any vehicle, and what to do. Key and Args name the sentence
// that app/words has for it in each language; Error says it in English.
type Refusal struct {
	Key  string
	Args []any
	text string
}

// Error is the refusal in one plain line of English.
func (r *Refusal) Error() string { return r.text }

// Possible errs with a Refusal when a reading's value can't be true of any vehicle: a text where a number
// is wanted, a slope beyond ±90°, a negative length, half a bolt. It says what to do.
func (p Point) Possible(r Reading) error {
	refuse := func(key string, args []any, text string, of ...any) error {
		return &Refusal{"refused." + key, append([]any{p.Key}, args...), fmt.Sprintf("%s "+text, append([]any{p.Key}, of...)...)}
	}
	if p.Quantity == Text {
		if !r.Value.IsText() || r.Value.Token() == "" || len(r.Value.Token()) > 60 {
			return refuse("text", []any{p.Example()}, "takes a text of 1 to 60 characters such as %q", p.Example())
		}
		return nil
	}
	f, ok := r.Number()
	if !ok {
		return refuse("number", nil, "takes a number")
	}
	switch {
	case p.Quantity == Angle && math.Abs(f) > 90 && p.Sense != Clockwise:
		return refuse("slope", []any{f}, "%g deg is beyond ±90; check which face the finder lay on, then enter it again", f)
	case p.Quantity == Angle && math.Abs(f) > 360:
		return refuse("turn", []any{f}, "%g deg is beyond ±360; enter it again", f)
	case p.Sense == Unsigned && f < 0:
		return refuse("negative", []any{f}, "%g can't be negative; enter it again", f)
	case p.Quantity == Count && f != math.Trunc(f):
		return refuse("whole", []any{f}, "%g must be a whole number; count again", f)
	case len(p.Codes) > 0 && !p.hasCode(f):
		return refuse("code", []any{f, p.codeList()}, "%g is not one of its answers: %s", f, p.codeList())
	}
	return nil
}

// Plausible reports whether a number in the quantity's base unit, already taken along the part,
// lies in the range that such parts have.
func (p Point) Plausible(number float64) bool {
	if p.Quantity == Text || p.Low == 0 && p.High == 0 {
		return true
	}
	return number >= p.Low && number <= p.High
}

// Example is the example shown for a text point.
func (p Point) Example() string { return p.Sample }

func (p Point) hasCode(f float64) bool {
	for _, c := range p.Codes {
		if float64(c.Value) == f {
			return true
		}
	}
	return false
}

func (p Point) codeList() string {
	s := ""
	for i, c := range p.Codes {
		if i > 0 {
			s += ", "
		}
		s += fmt.Sprintf("%d %s", c.Value, c.Means)
	}
	return s
}
