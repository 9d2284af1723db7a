// Package slip answers what a sliding spline has to do while the axle travels: how far it slides,
// whether it stays engaged at the longest position and keeps stroke at the shortest, and how long
// the shaft should be made so that both are as safe as they can be.
//
// Places are mm: X forward, Y left, Z up. Lengths run from joint centre to joint centre. Drawn out
// counts from fully closed. The slip is in the shaft, which then changes its length, or in the
// gearbox's tail, where the shaft keeps its length and its joint runs along the output axis.
//
// The longest position is often NOT at hanging wheels: extremes are looked for all the way.
package slip
