// Package shaft holds formulas of the propeller shaft as a turning part: how fast it can turn, from
// the engine or from the road, and the size of a tyre from the code on its sidewall.
//
// Speeds are rev/min and km/h, lengths millimetres. Ratios are input speed over output speed. The
// package knows nothing of readings or limits.
package shaft
