package remedy

import (
	"math"

	"yokebook/measure"
)

const degree = math.Pi / 180

// spot is a place in the side view or a way to it: x forward, z up, mm.
type spot struct{ x, z float64 }

func (a spot) plus(b spot) spot        { return spot{a.x + b.x, a.z + b.z} }
func (a spot) minus(b spot) spot       { return spot{a.x - b.x, a.z - b.z} }
func (a spot) by(f float64) spot       { return spot{float64(a.x * f), float64(a.z * f)} }
func (a spot) along(b spot) float64    { return float64(a.x*b.x) + float64(a.z*b.z) }
func (a spot) length() float64         { return math.Sqrt(a.along(a)) }
func direction(slopeDeg float64) spot  { s, c := math.Sincos(slopeDeg * degree); return spot{c, s} }
func (a spot) turned(deg float64) spot { s, c := math.Sincos(deg * degree); return a.rotated(c, s) }
func (a spot) rotated(c, s float64) spot {
	return spot{float64(a.x*c) - float64(a.z*s), float64(a.x*s) + float64(a.z*c)}
}
func (a spot) slope(toward float64) float64 { return math.Atan2(toward*a.z, toward*a.x) / degree }

// moved says how the two ends of the line move on a vehicle: by how much the joint at the gearbox and
// the one at the axle, and by how much the shaft is made longer.
type moved struct {
	gearbox, axle spot
	gearboxDeg    float64 // turn of the gearbox, front end up
	longerMM      float64
}

// toward is 1 where the gearbox is ahead of the axle, −1 where it is behind it.
func (v *vehicle) toward() float64 {
	if v.build.Layout.PinionInFront() {
		return -1
	}
	return 1
}

// shafts names the shaft at the gearbox and the one at the axle; of a one-piece line both are one.
func (v *vehicle) shafts() (atGearbox, atAxle string) {
	switch {
	case v.build.Layout.Shafts == 1:
		return "shaft", "shaft"
	case v.build.Layout.PinionInFront():
		return "shaft", "front_shaft"
	}
	return "front_shaft", "shaft"
}

// reach is a shaft's length between its joints in a state, where nobody read it the table's.
func (v *vehicle) reach(shaft string, state measure.State) float64 {
	if l, ok := v.read(shaft+".length", state); ok && l > 0 {
		return l
	}
	return given("assumed.shaft.length")
}

// swung is a shaft after its ends have moved.
type swung struct {
	slopeDeg float64
	lengthMM float64 // by how much the joints are further apart, or the shaft itself is longer
	outMM    float64 // by how much the sliding part is drawn out further
	ok       bool
}

// swing works out one shaft in one state.
func (v *vehicle) swing(shaft string, state measure.State, m moved) swung {
	gear, axle := v.shafts()
	if shaft != gear {
		m.gearbox = spot{}
	}
	if shaft != axle {
		m.axle = spot{}
	}
	slope, ok := v.read(shaft+".slope", state)
	if !ok {
		return swung{}
	}
	length, toward := v.reach(shaft, state), v.toward()
	way := direction(slope).by(toward * length).plus(m.gearbox).minus(m.axle)
	if v.build.Layout.Slip == "gearbox" && shaft == gear {
		return v.slid(way, length+m.longerMM, state, m)
	}
	long := way.length()
	return swung{slopeDeg: way.slope(toward) - slope, lengthMM: long - length, outMM: long - length - m.longerMM, ok: true}
}

// slid lets the joint at the gearbox run along the output axis until the shaft's own length fits.
func (v *vehicle) slid(way spot, length float64, state measure.State, m moved) swung {
	box, ok := v.read("gearbox.slope", state)
	gear, _ := v.shafts()
	slope, _ := v.read(gear+".slope", state)
	if !ok {
		return swung{}
	}
	out := direction(box + m.gearboxDeg).by(-v.toward())
	// |way + t·out| = length; of the two, the one that drew out least.
	half := way.along(out)
	square := float64(half*half) - way.along(way) + float64(length*length)
	if square < 0 {
		return swung{}
	}
	t := -half - math.Sqrt(square)
	if other := -half + math.Sqrt(square); math.Abs(other) < math.Abs(t) {
		t = other
	}
	way = way.plus(out.by(t))
	return swung{slopeDeg: way.slope(v.toward()) - slope, lengthMM: m.longerMM, outMM: t, ok: true}
}

// carry changes what is read of the shafts where the ends of the line move; at says how in a state.
func (v *vehicle) carry(e *edit, at func(state measure.State) moved) {
	gear, axle := v.shafts()
	slipping := axle
	if v.build.Layout.Slip == "gearbox" {
		slipping = gear
	}
	change := func(point, shaft string, of func(swung) float64) {
		e.shift(point, func(r measure.Reading) float64 {
			s := v.swing(shaft, r.State(), at(r.State()))
			if !s.ok {
				return 0
			}
			return of(s)
		})
	}
	for _, shaft := range []string{"shaft", "front_shaft"} {
		if shaft == gear || shaft == axle {
			change(shaft+".slope", shaft, func(s swung) float64 { return s.slopeDeg })
			change(shaft+".length", shaft, func(s swung) float64 { return s.lengthMM })
		}
	}
	change("slip.exposed", slipping, func(s swung) float64 { return s.outMM })
	change("shaft.gap", axle, func(s swung) float64 { return s.lengthMM })
	ahead := func(m moved) (front, rear spot) {
		if v.toward() > 0 {
			return m.gearbox, m.axle
		}
		return m.axle, m.gearbox
	}
	e.shift("front_flange.z", func(r measure.Reading) float64 { front, _ := ahead(at(r.State())); return front.z })
	e.shift("rear_flange.z", func(r measure.Reading) float64 { _, rear := ahead(at(r.State())); return rear.z })
	e.shift("obstacle.gap", func(r measure.Reading) float64 {
		front, rear := ahead(at(r.State()))
		return v.nearer(r, front.z, rear.z)
	})
}

// nearer is by how much the room at an obstacle grows when the joints in front and behind rise.
func (v *vehicle) nearer(gap measure.Reading, frontMM, rearMM float64) float64 {
	same := func(r measure.Reading) bool { return r.Tag == gap.Tag }
	station, ok := v.mean("obstacle.station", same)
	side, read := v.mean("obstacle.side", same)
	_, axle := v.shafts()
	if !ok || !read || side == 3 {
		return 0
	}
	share := min(1, max(0, station/v.reach(axle, gap.State())))
	rise := frontMM + float64(share*(rearMM-frontMM))
	if side == 1 {
		return -rise
	}
	return rise
}
