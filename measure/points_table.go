package measure

import "slices"

// The groups of points, in the order in which a person meets them: papers first, then parts on the
// bench and the engine in its slings, then under the vehicle, then the questions at the end, then what a shaft builder asks.
const (
	GroupStated    Group = "stated"
	GroupClutch    Group = "clutch stack"
	GroupEngine    Group = "engine side"
	GroupSplines   Group = "splines"
	GroupRetention Group = "retention"
	GroupMass      Group = "mass and mounts"
	GroupSlopes    Group = "slopes"
	GroupSurvey    Group = "before a shaft exists"
	GroupHeights   Group = "heights"
	GroupShaft     Group = "shaft"
	GroupClearance Group = "clearance"
	GroupEnds      Group = "ends"
	GroupSpring    Group = "leaf spring"
	GroupLinks     Group = "links"
	GroupFit       Group = "fit"
	GroupBuilt     Group = "as built"
	GroupOrder     Group = "order"
)

// Points is the one table of points. Within a state the route follows its order.
var Points = slices.Concat(
	statedPoints, clutchPoints, enginePoints, splinePoints, retentionPoints, massPoints,
	linePoints, surveyPoints, heightPoints, shaftPoints, clearancePoints, endPoints,
	springPoints, linkPoints, fitPoints, orderPoints, builtPoints,
)

// States in which the route stops at a point.
var (
	onBench  = []State{OffBench}
	atKerb   = []State{RideKerb}
	standing = []State{Hanging, RideKerb, RideLaden, OnBump}
)

// Layouts that have a part.
func twoPiece(l Layout) bool      { return l.Shafts == 2 }
func slipInShaft(l Layout) bool   { return l.Slip == "shaft" }
func slipInGearbox(l Layout) bool { return l.Slip == "gearbox" }
func leafAxle(l Layout) bool      { return l.Axle == "leaf" }
func linkAxle(l Layout) bool      { return l.Axle == "links" }
func sprungAxle(l Layout) bool    { return l.Axle != "fixed" }
func hasClutch(l Layout) bool     { return l.Clutch != "none" }
func hasTransfer(l Layout) bool   { return l.Drives == "transfer" || l.Drives == "front" }
