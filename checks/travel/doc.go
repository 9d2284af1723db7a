// Package travel is the path of an axle from hanging wheels to the bump stops, seen from the side:
// where its centre goes, how far its housing turns, and how far torque winds it up on leaf springs.
//
// # Frame
//
// X forward, Z up, mm, from the centre of the axle at ride height. Travel counts from ride height,
// positive toward bump (axle up against the body). Pitch is positive when the front end of the
// housing rises. The body stands still, the axle moves.
//
// # Ways
//
// Leaf is the equivalent link of a leaf spring, good to a few per cent of its fore-and-aft way.
// FourBar is a pair of links solved exactly on the height of the axle's centre. Fixed does not move.
// Between draws through heights that were read. A height that can't be reached is an error; nothing
// is ever clamped into reach.
package travel
