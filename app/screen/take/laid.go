package take

import (
	"yokebook/measure"
	"yokebook/measure/document"
)

// Laid is how an angle finder lies, told by the end of it that its owner marked. The empty Laid is
// not known.
type Laid string

// The ways in which a finder lies. A rear face looks rearward, a front face forward; on both the
// finder stands 90° off.
const (
	AlongFore Laid = "along.fore" // along the part, marked end forward
	AlongAft  Laid = "along.aft"  // along the part, marked end rearward
	RearUp    Laid = "rear.up"    // on a rear face, marked end up
	RearDown  Laid = "rear.down"
	FrontUp   Laid = "front.up"
	FrontDown Laid = "front.down"
)

// Layings lists the ways in which a finder lies, in the order in which they are asked.
var Layings = []Laid{AlongFore, AlongAft, RearUp, RearDown, FrontUp, FrontDown}

// Way is the way of a reading: its finder's zero enters the slope with another sign for 2 than for 1.
//
// Let a finder show too much by z when its marked end points along the direction that it measures,
// and let a part slope by s, front end high. Along the part it shows s + z, or s − z when turned.
// Stood on a rear face with the marked end up it points at 90 + s and shows 90 − s − z, which is a
// slope of s + z; with the marked end down it shows 90 − s + z, a slope of s − z. A front face turns
// both round. A reading on a face counts as 90 less what is shown, so its way 1 is the one that
// shows 90 − s + z. Worked apart from this code.
func (l Laid) Way() int {
	switch l {
	case AlongFore, RearDown, FrontUp:
		return 1
	case AlongAft, RearUp, FrontDown:
		return 2
	}
	return 0
}

// Lay is the lay of a reading: "along" or "face".
func (l Laid) Lay() string {
	switch l {
	case AlongFore, AlongAft:
		return "along"
	case "":
		return ""
	}
	return "face"
}

// Turned is how the finder lies when it is turned end for end in the same place.
func (l Laid) Turned() Laid {
	switch l {
	case AlongFore:
		return AlongAft
	case AlongAft:
		return AlongFore
	case RearUp:
		return RearDown
	case RearDown:
		return RearUp
	case FrontUp:
		return FrontDown
	case FrontDown:
		return FrontUp
	}
	return ""
}

// laidOf is how the finder lay for a reading. Which way the face looked does not stand there: a rear
// face does as well.
func laidOf(r measure.Reading) Laid {
	switch {
	case r.Way == 1 && r.Lay == "face":
		return RearDown
	case r.Way == 2 && r.Lay == "face":
		return RearUp
	case r.Way == 1:
		return AlongFore
	case r.Way == 2:
		return AlongAft
	}
	return ""
}

// laying is how a tool lay when it was said last.
type laying struct {
	laid  Laid
	setup int
}

// recall takes how tools lay from the readings of the present setup.
func (m *Model) recall() {
	for _, r := range m.log.Build().CurrentReadings(document.Hash) {
		if l := laidOf(r); l != "" && r.Setup == m.stand.Setup {
			m.laid[r.Instrument] = laying{l, r.Setup}
		}
	}
}

// TakesFinder reports that the stop is read with an angle finder laid on the part.
func (m *Model) TakesFinder() bool { return takesFinder(m.stop.Point) }

func takesFinder(p measure.Point) bool {
	return p.Quantity == measure.Angle && p.Sense == measure.FrontHigh && p.Basis != measure.Stated
}

// Laid says how the finder lies for this stop; false where it was not said yet in this setup, with
// how it lay before, if ever.
func (m *Model) Laid() (Laid, bool) {
	l, ok := m.laid[m.Tool()]
	return l.laid, ok && l.setup == m.stand.Setup
}

// OpenLaying asks how the finder lies.
func (m *Model) OpenLaying() {
	m.keeping, m.sided = false, nil
	m.open(Laying)
}

// Lay answers the page Laying. Where Keep had asked, keeping goes on.
func (m *Model) Lay(l Laid) {
	if m.page != Laying {
		return
	}
	m.laid[m.Tool()] = laying{l, m.stand.Setup}
	m.Back()
	if m.keeping {
		m.keeping = false
		m.Keep()
		m.sided = nil
	}
}
