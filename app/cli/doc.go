// Package cli is the command line: one file per verb. It makes no sentence of its own (package
// words does) and judges nothing (package checks does); it reads arguments and files, asks the
// logbook, prints, and says by its exit code how that went.
//
// What is printed for a person is in their language; --json is always English and the same bytes
// for the same build. An error is one line on the error stream, "verb: what is wrong; what to do".
package cli
