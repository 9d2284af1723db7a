// Package remedy answers the two questions that follow a finding: what to change so that it becomes
// clear, and what to read next so that it is decided.
//
// A knob is something that a workshop can turn, lift, lengthen or replace; all knobs stand in one
// table (Knobs). Turning one makes another build: a copy with the readings that would be taken of the
// changed vehicle. So nothing is computed here that package checks does not compute: an amount works
// when checks.Run calls the changed build clear, in every state that the check speaks for.
//
// Where an amount may lie is looked for at a glance (checks.Glance) over the knob's whole steps; what
// is told was then run in full at the rounded amount. Solve is pure: the same build gives the same
// report on every device, whatever prev is. It ends early when its context does.
//
// The search goes over whole steps: halving finds where a single knob begins and ceases to work, a lattice
// and ever shorter strides find the pair. No library's optimiser takes part, because those that are kept
// well rest on functions of math that differ between processors, and the same build is to give the same
// amounts on all of them; a test has one (gonum, the simplex of Nelder and Mead) look for a better pair.
//
// Where it stops: readings of the changed vehicle are derived in the side view, plan angles stay as
// they are, and what is bent, welded or machined is taken as done exactly. It is to be measured again.
package remedy
