// Package measure holds the words of the job: what a person read under the vehicle, with which
// tool, in which state, and what is known to be true of a build without judging it.
//
// # Glossary
//
//   - Build: one shaft line of one vehicle, as a set of records that never change.
//   - Reading: one number with unit, state, instrument and author. A correction is a new Reading
//     that replaces an older one; a Strike keeps the reading and says why it no longer counts.
//   - Point: what can be read, named part.dimension. All points stand in one table (Points).
//   - State: how the vehicle stood: ride (hanging, at ride height, on the bump stops, off the
//     vehicle) and load (none, own weight, laden).
//   - Setup: a number raised each time the vehicle is moved, jacked or let down. Gravity slopes of
//     two setups only compare through datum.slope taken in both.
//   - Head: a change of something that is not a reading (title, layout, instruments, limits).
//
// # Frame and signs
//
// Vehicle axes as in ISO 8855: x forward, y left, z up. A slope is positive when the part's FRONT
// end is the higher one; a plan angle is positive when its front end is further LEFT.
//
// A value is kept as the token that was typed, with its unit, and converted only when computed.
package measure
