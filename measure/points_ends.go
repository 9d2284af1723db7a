package measure

import "strings"

// flangeParts are the four faces where a shaft meets the vehicle: its own two and their mates.
var flangeParts = []struct{ part, name string }{
	{"front_end", "the vehicle's front flange"},
	{"front_mate", "the shaft's front flange"},
	{"rear_end", "the vehicle's rear flange"},
	{"rear_mate", "the shaft's rear flange"},
}

// flangeRows are asked of each part; PART stands for its name.
var flangeRows = []Point{
	{Key: "pilot", Quantity: Length, Low: 10, High: 250,
		Question: "Diameter of the centring pilot of PART?",
		Place:    "Caliper over the step, or inside the recess, clean, at two places a quarter turn apart."},
	{Key: "pilot_depth", Quantity: Length, Low: 0.3, High: 40,
		Question: "How high is the pilot of PART, or how deep its recess?",
		Place:    "Depth end of the caliper, square to the flange face."},
	{Key: "pilot_kind", Quantity: Answer, High: 1, Codes: []Code{{1, "male"}, {0, "female"}},
		Question: "Does the pilot of PART stand out (male), or is it a recess (female)?",
		Place:    "Look at the middle of the flange face."},
	{Key: "bolts", Quantity: Count, Low: 2, High: 12,
		Question: "How many bolt holes has PART?",
		Place:    "Count round the flange once more from a mark. Straps and U-bolts: count their legs."},
	{Key: "bolt_size", Quantity: Length, Low: 5, High: 25,
		Question: "Nominal diameter of the bolts of PART?",
		Place:    "Caliper over the thread of a bolt that fits, rounded up to its nominal size."},
	{Key: "bolt_circle", Quantity: Length, Low: 25, High: 300,
		Question: "Diameter of the circle through the bolt holes of PART?",
		Place:    "Far edge to near edge of opposite holes. Odd count or no circle: read the chords instead."},
	{Key: "bolt_chord", Quantity: Length, Low: 10, High: 250,
		Question: "Centre to centre of two neighbouring bolt holes of PART?",
		Place:    "Left edge to left edge of the two holes. Where spacing differs, the wider pair."},
	{Key: "bolt_chord_2", Quantity: Length, Low: 10, High: 250,
		Question: "The next pair of holes of PART, where the spacing differs: centre to centre?",
		Place:    "Left edge to left edge of the next two neighbouring holes."},
	{Key: "cap_dia", Quantity: Length, Low: 12, High: 100,
		Question: "Outside diameter of a bearing cap of the joint at PART?",
		Place:    "Caliper over the bare cap, clear of clip and seal."},
	{Key: "cap_span", Quantity: Length, Low: 30, High: 300,
		Question: "Over the ends of two opposite caps of the joint at PART?",
		Place:    "Caliper over the flat ends. Inner clips: between their grooves."},
	{Key: "cap_dia_2", Quantity: Length, Low: 12, High: 100,
		Question: "Outside diameter of the other two caps of the joint at PART, where they differ?",
		Place:    "Caliper over the bare cap that lies a quarter turn on."},
	{Key: "cap_span_2", Quantity: Length, Low: 30, High: 300,
		Question: "Over the ends of the other two caps of the joint at PART, where that differs?",
		Place:    "Caliper over the flat ends, a quarter turn on. Inner clips: between their grooves."},
	{Key: "ear_gap", Quantity: Length, Low: 15, High: 250,
		Question: "How wide is the yoke of PART between the insides of its ears?",
		Place:    "Inside jaws of the caliper, across the bores of the caps."},
	{Key: "clip", Quantity: Answer, Low: 1, High: 4,
		Codes:    []Code{{1, "outer ring"}, {2, "inner ring"}, {3, "strap"}, {4, "U-bolt"}},
		Question: "What holds the bearing caps of the joint at PART?",
		Place:    "Rings outside on the yoke's ears, rings inside on the caps, straps, or U-bolts."},
	{Key: "face_od", Quantity: Length, Low: 30, High: 350,
		Question: "Outside diameter of PART?",
		Place:    "Caliper over the rim; a square flange: across its corners."},
	{Key: "face_thick", Quantity: Length, Low: 3, High: 60,
		Question: "How thick is PART where the bolts go through?",
		Place:    "Caliper over the flange beside a hole, without pilot or weld."},
	{Key: "hole_dia", Quantity: Length, Low: 5, High: 30,
		Question: "Diameter of the bolt holes of PART?",
		Place:    "Inside jaws in a clean hole. A threaded hole: its nominal thread, and say so in the note."},
	{Key: "bolt_pitch", Quantity: Length, Low: 0.5, High: 3.5,
		Question: "Thread pitch of the bolts of PART?",
		Place:    "Thread gauge, or over ten crests divided by ten. Inch threads: 25.4 divided by threads per inch."},
	{Key: "bolt_length", Quantity: Length, Low: 10, High: 150,
		Question: "How long are the bolts of PART, under the head?",
		Place:    "From the face under the head to the end of the thread."},
	{Key: "bolt_grade", Quantity: Text, Basis: Stated, Sample: "10.9",
		Question: "Which strength grade is marked on the bolts of PART?",
		Place:    "On the heads."},
	{Key: "bolt_torque", Quantity: Torque, Low: 5, High: 400, Basis: Stated,
		Question: "To which torque will the bolts of PART be tightened?",
		Place:    "From the maker of the flange or of the bolts."},
	{Key: "runout", Quantity: Length, Low: 0, High: 3, Caution: CautionTurning,
		Question: "Turn PART once by hand. How far does the indicator's needle move in all?",
		Place:    "Indicator on the pilot, square to the axis; lowest to highest: twice the offset."},
}

var endPoints = func() []Point {
	var all []Point
	for _, f := range flangeParts {
		for _, p := range rowsOf(flangeRows, f.part, f.name, GroupEnds, nil) {
			if p.Caution == "" && strings.HasSuffix(f.part, "_end") && p.Quantity != Text {
				p.Caution = CautionUnder // it stays on the vehicle
			}
			all = append(all, p)
		}
	}
	return all
}()

// rowsOf writes rows out for one part: PART becomes its name.
func rowsOf(rows []Point, part, name string, group Group, layouts func(Layout) bool) []Point {
	out := make([]Point, len(rows))
	for i, p := range rows {
		p.Key = part + "." + p.Key
		p.Group = group
		p.Question = strings.ReplaceAll(p.Question, "PART", name)
		p.Place = strings.ReplaceAll(p.Place, "PART", name)
		p.For = layouts
		out[i] = p
	}
	return out
}
