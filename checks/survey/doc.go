// Package survey lays out a shaft that does not exist yet: from two flanges, the axes they stand on
// and the yokes that will bolt to them it finds the joint centres, and from them length, slope and
// plan angle of the shaft. Offsets from a string give the plan angles of gearbox and axle.
//
// Axes of the vehicle: x forward, y left, z up. Lengths millimetres, angles degrees; a slope is
// positive when a part's front end is the higher one, a plan angle when it is further left. The
// package knows nothing of readings or limits.
package survey
