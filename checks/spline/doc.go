// Package spline holds the geometry and the strength of splines: the sizes that standards give to a
// tooth count, sizes over and between pins, which standards fit what was measured, and what torque
// does to the teeth and to the part that slides on them.
//
// Lengths are millimetres, angles degrees, torques N·m, stresses MPa, forces N. The tip of an
// external spline is its major diameter, that of an internal one its minor diameter. The package
// knows nothing of readings or limits.
//
// Where printed tables contradict each other the row says CONFLICT and which side is taken.
package spline
