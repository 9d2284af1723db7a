package measure

// The groups of the points that the shaft line is judged by.
const (
	GroupSlopes Group = "slopes"
	GroupStated Group = "stated"
)

func twoPiece(l Layout) bool { return l.Shafts == 2 }

var standing = []State{Hanging, RideKerb, RideLaden, OnBump}

// Points is the one table of points, in the order in which a person meets them on the route.
var Points = concat(linePoints)

func concat(tables ...[]Point) []Point {
	var all []Point
	for _, t := range tables {
		all = append(all, t...)
	}
	return all
}

var linePoints = []Point{
	{Key: "datum.slope", Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -10, High: 10, Wanted: standing,
		Question: "Lay the finder on the place of the frame that you marked. Which end is high?",
		Place:    "A flat, marked place on the frame rail that you can find again: it ties setups together."},
	{Key: "gearbox.slope", Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -30, High: 30, Wanted: standing,
		Question: "Lay the finder along the gearbox output. Which end is high?",
		Place:    "Along the output shaft or on a machined face square to it, not on the casting or the sump."},
	{Key: "shaft.slope", Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -35, High: 35, Wanted: standing,
		Question: "Lay the finder along the shaft tube. Which end is high?",
		Place:    "On the bare tube, clear of weld seams, balance weights and dirt."},
	{Key: "pinion.slope", Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -30, High: 30, Wanted: standing,
		Question: "Lay the finder along the pinion. Which end is high?",
		Place:    "Along the pinion, or on the machined face of its flange."},
}
