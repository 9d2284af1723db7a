package checks

import "yokebook/measure"

// Result is what Run found, with the work it can hand on to the next run.
type Result struct {
	Findings []Finding // sorted by the table of checks, then subject, then state
}

// Run returns all findings of a build. prev, which may be nil, only saves work: the findings are
// the same to the last bit whatever it is. b is not changed.
func Run(b *measure.Build, prev *Result) *Result { return &Result{} }
