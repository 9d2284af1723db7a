package measure

import "fmt"

// Layout says which parts the shaft line has. Empty optional members mean: rear axle driven, on
// the road, spring eye and clutch kind not said.
type Layout struct {
	Shafts     int    // 1, or 2 with a centre bearing
	Slip       string // where the sliding spline is: "shaft" or "gearbox"
	Axle       string // "leaf", "links" or "fixed"
	FrontJoint string // "single" or "double"
	RearJoint  string
	FixedEye   string // spring end without shackle: "", "front" or "rear"
	Drives     string // "", "rear", "front" (pinion at the FRONT end of the shaft), "transfer"
	Use        string // "", "road" or "offroad"
	Clutch     string // "", "push", "pull" or "none"
	Unknown    Fields
}

// LayoutChoices lists the members of a layout other than shafts, with what each may hold; the
// first choice is the one a new build starts with. Optional members may be absent.
var LayoutChoices = []struct {
	Member   string
	Choices  []string
	Optional bool
}{
	{"slip", []string{"shaft", "gearbox"}, false},
	{"axle", []string{"leaf", "links", "fixed"}, false},
	{"front_joint", []string{"single", "double"}, false},
	{"rear_joint", []string{"single", "double"}, false},
	{"fixed_eye", []string{"front", "rear"}, true},
	{"drives", []string{"rear", "front", "transfer"}, true},
	{"use", []string{"road", "offroad"}, true},
	{"clutch", []string{"push", "pull", "none"}, true},
}

// NewLayout is the layout a new build starts with: one shaft with its slip, leaf springs, single joints.
func NewLayout() Layout {
	return Layout{Shafts: 1, Slip: "shaft", Axle: "leaf", FrontJoint: "single", RearJoint: "single"}
}

// Member returns a pointer to the named text member, nil for an unknown name.
func (l *Layout) Member(name string) *string {
	switch name {
	case "slip":
		return &l.Slip
	case "axle":
		return &l.Axle
	case "front_joint":
		return &l.FrontJoint
	case "rear_joint":
		return &l.RearJoint
	case "fixed_eye":
		return &l.FixedEye
	case "drives":
		return &l.Drives
	case "use":
		return &l.Use
	case "clutch":
		return &l.Clutch
	}
	return nil
}

// Validate says which member is wrong and what it may hold.
func (l Layout) Validate() error {
	if l.Shafts != 1 && l.Shafts != 2 {
		return fmt.Errorf("shafts: %d is not known; use 1 or 2", l.Shafts)
	}
	for _, c := range LayoutChoices {
		have := *l.Member(c.Member)
		if have == "" && c.Optional {
			continue
		}
		if !oneOf(have, c.Choices) {
			return fmt.Errorf("%s: %.40q is not known; use one of %v", c.Member, have, c.Choices)
		}
	}
	return nil
}

// PinionInFront reports an axle whose pinion is at the front end of the shaft.
func (l Layout) PinionInFront() bool { return l.Drives == "front" }

func oneOf(s string, set []string) bool {
	for _, x := range set {
		if x == s {
			return true
		}
	}
	return false
}
