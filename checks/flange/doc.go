// Package flange holds formulas of faces that are bolted to one another: the bolt circle from the
// chords between neighbouring holes, and the offset behind a needle's whole way.
//
// All sizes are millimetres. The package knows nothing of readings or limits.
package flange
