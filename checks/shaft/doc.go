// Package shaft holds formulas of the propeller shaft as a turning part: how fast it can turn, from
// the engine or from the road; the size of a tyre from the code on its sidewall; the speed at which
// its tube begins to whirl; how torque stresses and twists the tube and how large that torque is;
// the unbalance that it may keep; and the series of sizes that tube is sold in.
//
// Speeds are rev/min and km/h, lengths millimetres, stresses MPa, torques N·m. Ratios are input
// speed over output speed. The package knows nothing of readings or limits.
package shaft
