package checks

import (
	"fmt"
	"math"

	"yokebook/checks/travel"
	"yokebook/measure"
)

// The ways in which the axle's path can be known.
const (
	wayFixed    = "fixed"    // it does not move
	wayLinks    = "links"    // two links, solved exactly
	wayLeaf     = "leaf"     // the equivalent link of a leaf spring
	wayRead     = "read"     // drawn through the states that were read
	wayStraight = "straight" // nothing known but heights
)

// motion is how the axle moves, as far as its sizes are known.
type motion struct {
	way  string
	name string                               // what args do not say of path
	args []*quantity                          // numbers that the path is made from
	open func() func(x []float64) travel.Path // makes it from args, one draw after the other
	note []Message
}

// motionOf is the best that the build's sizes give; straight up where they give nothing.
func (e *engine) motionOf() motion {
	if e.moves == nil {
		m := e.straight()
		switch e.build.Layout.Axle {
		case "fixed":
			m = motion{way: wayFixed, name: "fixed", open: func() func([]float64) travel.Path { return func([]float64) travel.Path { return travel.Fixed{} } }}
		case "links":
			if len(e.motionMissing()) == 0 {
				m = e.links()
			}
		case "leaf":
			if len(e.motionMissing()) == 0 {
				m = e.leaf()
			}
		}
		m.note = append(m.note, Message{MsgPath, []any{m.way}})
		e.moves = &m
	}
	return *e.moves
}

// sized reports a path that follows from springs or links.
func (m motion) sized() bool { return m.way == wayLinks || m.way == wayLeaf || m.way == wayFixed }

var (
	leafPoints = []string{"spring.front_half", "spring.rear_half", "spring.eye_rise"}
	linkPoints = []string{"lower_link.chassis_x", "lower_link.chassis_z", "lower_link.axle_x", "lower_link.axle_z",
		"upper_link.chassis_x", "upper_link.chassis_z", "upper_link.axle_x", "upper_link.axle_z"}
)

// motionMissing lists the sizes that the axle's path waits for.
func (e *engine) motionMissing() []Missing {
	var points []string
	switch e.build.Layout.Axle {
	case "leaf":
		points = leafPoints
	case "links":
		points = linkPoints
	}
	var missing []Missing
	for _, p := range points {
		if e.bench(p) == nil {
			missing = append(missing, Missing{Point: p, State: measure.RideKerb})
		}
	}
	return missing
}

// benchOr is a point that holds in every state; 0 within the assumed range where nobody read it.
func (e *engine) benchOr(key string) *quantity {
	if q := e.bench(key); q != nil {
		return q
	}
	return e.assume(key, given("assumed."+key))
}

func (e *engine) leaf() motion {
	m := motion{way: wayLeaf, name: "leaf fixed " + e.build.Layout.FixedEye}
	if e.build.Layout.FixedEye == "" {
		m.note = append(m.note, Message{Key: MsgEyeInFront})
	}
	for _, p := range leafPoints {
		m.args = append(m.args, e.bench(p))
	}
	m.args = append(m.args, e.benchOr("spring.eye_offset"), e.benchOr("spring.pad_z"), e.contested("travel.leaf_link"))
	inRear := e.build.Layout.FixedEye == "rear"
	m.open = func() func([]float64) travel.Path {
		l := &travel.Leaf{FixedInRear: inRear}
		return func(x []float64) travel.Path {
			l.FrontHalfMM, l.RearHalfMM, l.EyeRiseMM = x[0], x[1], x[2]
			l.EyeOffsetMM, l.PadMM, l.RadiusFactor = x[3], x[4], x[5]
			return l
		}
	}
	return m
}

func (e *engine) links() motion {
	m := motion{way: wayLinks, name: "links"}
	for _, p := range linkPoints {
		m.args = append(m.args, e.bench(p))
	}
	m.open = func() func([]float64) travel.Path {
		f := &travel.FourBar{}
		return func(x []float64) travel.Path {
			f.LowerChassis, f.LowerAxle = travel.Point{X: x[0], Z: x[1]}, travel.Point{X: x[2], Z: x[3]}
			f.UpperChassis, f.UpperAxle = travel.Point{X: x[4], Z: x[5]}, travel.Point{X: x[6], Z: x[7]}
			return f
		}
	}
	return m
}

// straight lets the axle go straight up and keep its slope, with the doubt of everything that
// springs or links may do.
func (e *engine) straight() motion {
	input := "spring.front_half"
	if e.build.Layout.Axle == "links" {
		input = "lower_link.chassis_x"
	}
	bow := &cause{key: "assumed|travel.bow", shape: rectangular, input: input, assumed: true}
	pitch := &cause{key: "assumed|travel.pitch", shape: rectangular, input: input, assumed: true}
	m := motion{way: wayStraight, name: "straight"}
	m.args = []*quantity{
		e.number(0, []term{{bow, 0.5 / e.setting("travel.radius")}}, origin{}),
		e.number(0, []term{{pitch, e.setting("travel.pitch") / 1000}}, origin{}),
	}
	m.open = func() func([]float64) travel.Path {
		s := &travel.Straight{}
		return func(x []float64) travel.Path {
			s.BowPerMM, s.PitchDegPerMM = x[0], x[1]
			return s
		}
	}
	return m
}

// moved is a slope read at one height as it stands at another of the same state, both in mm, where
// springs or links say how the axle goes; nil where they don't.
func (e *engine) moved(key string, slope *quantity, fromMM, toMM float64) *quantity {
	m := e.motionOf()
	ride, state := e.rideHeight()
	if !m.sized() || ride == nil || !e.swings() {
		return nil
	}
	joint := []*quantity{e.benchOr("rear_joint.x"), e.benchOr("rear_joint.z")}
	length := e.lengthNear(state)
	args := append(append([]*quantity{}, m.args...), slope, ride, length, joint[0], joint[1])
	n := len(m.args)
	sign := e.towardGearbox()
	args = append(args, exact(fromMM), exact(toMM))
	return e.combineOwn(fmt.Sprintf("moved %s %s %v", key, m.name, sign), onAll(1, len(args)), func() formula {
		open := m.open()
		return func(x, out []float64) {
			path, ride := open(x[:n]), x[n+1]
			out[0] = orNone(slopeMoved(key, path, x[n], ride-fromMM, ride-toMM, float64(sign*x[n+2]), travel.Point{X: x[n+3], Z: x[n+4]}))
		}
	}, args...)[0]
}

// slopeMoved carries a slope from one travel to another: the pinion turns with the axle, the shaft
// swings about its joint on the gearbox, what stands ahead of it stays.
func slopeMoved(key string, path travel.Path, slopeDeg, from, to, lengthMM float64, joint travel.Point) (float64, error) {
	a, err := path.At(from)
	if err != nil {
		return 0, err
	}
	b, err := path.At(to)
	if err != nil {
		return 0, err
	}
	switch key {
	case "pinion.slope":
		return slopeDeg + b.PitchDeg - a.PitchDeg, nil
	case "shaft.slope":
		const degree = math.Pi / 180
		sin, cos := math.Sincos(slopeDeg * degree)
		p, q := a.Carry(joint), b.Carry(joint)
		x := float64(lengthMM*cos) + p.X - q.X
		z := float64(lengthMM*sin) + p.Z - q.Z
		if lengthMM < 0 {
			x, z = -x, -z
		}
		return math.Atan2(z, x) / degree, nil
	}
	return slopeDeg, nil
}

// towardGearbox is 1 where the gearbox is ahead of the axle, −1 where it is behind it.
func (e *engine) towardGearbox() float64 {
	if e.build.Layout.PinionInFront() {
		return -1
	}
	return 1
}

// lengthNear is the shaft's length for a state: as read there, else as read in another one, else
// what is assumed, each with the doubt that it deserves.
func (e *engine) lengthNear(state measure.State) *quantity {
	if t := e.take("shaft.length", state); t != nil {
		return t.q
	}
	widened := func(q *quantity, key string, assumed bool) *quantity {
		c := &cause{key: "assumed|" + key, shape: rectangular, input: "shaft.length", assumed: assumed}
		off := e.number(0, []term{{c, given(key)}}, origin{})
		return e.combine(key, 1, func(x, out []float64) { out[0] = x[0] + x[1] }, q, off)[0]
	}
	for _, s := range []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump} {
		if t := e.take("shaft.length", s); t != nil {
			return widened(t.q, "assumed.shaft.length_elsewhere", false)
		}
	}
	return widened(exact(given("assumed.shaft.length")), "assumed.shaft.length_spread", true)
}
