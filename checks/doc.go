// Package checks turns the readings of one build into findings: for each check, subject and state
// a value with its interval, a verdict against a limit, and what decides it.
//
// Run is pure: no store, clock, files or screen. The same build gives the same findings to the
// last bit on every device: causes of doubt are drawn by inverse distribution on a fixed grid whose
// order is a shuffle seeded by the name of the cause, and nothing here calls the functions of
// package math whose results differ between processors (Exp, Pow, Erf, Log, Hypot).
//
// The formulas stand in the packages below (joint, shaft …) and know nothing of readings; the
// files bind_*.go here join the two. A new check is one row of the table in table.go and, where the
// formula is new, one function.
package checks
