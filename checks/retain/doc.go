// Package retain answers what a tightened thread holds: the clamp that a torque gives, and the load
// that a bolt of a strength grade stands.
//
// Lengths are millimetres, torques N·m, forces N, stresses MPa. The package knows nothing of readings
// or limits.
package retain
