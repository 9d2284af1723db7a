package logbook

import (
	"slices"

	"yokebook/checks"
)

// Severity orders verdicts from worst to best: out, unsure, waiting, clear, none.
func Severity(v checks.Verdict) int {
	switch v {
	case checks.Out:
		return 0
	case checks.Unsure:
		return 1
	case checks.Waiting:
		return 2
	case checks.Clear:
		return 3
	}
	return 4
}

// WorstFirst sorts findings by severity; those of one severity stay in the order of the table. What
// nobody has begun to read comes last.
func WorstFirst(findings []checks.Finding) []checks.Finding {
	out := slices.Clone(findings)
	rank := func(f checks.Finding) int {
		if f.Untouched {
			return Severity(checks.Unsaid) + 1
		}
		return Severity(f.Verdict)
	}
	slices.SortStableFunc(out, func(a, b checks.Finding) int { return rank(a) - rank(b) })
	return out
}

// Worst returns the worst verdict among findings, and how many there are of each.
func Worst(findings []checks.Finding) (checks.Verdict, map[checks.Verdict]int) {
	worst, counts := checks.Unsaid, map[checks.Verdict]int{}
	for _, f := range findings {
		counts[f.Verdict]++
		if Severity(f.Verdict) < Severity(worst) {
			worst = f.Verdict
		}
	}
	return worst, counts
}

// compare lists the findings that are new or say something else than before, and those that are gone.
func compare(before, after []checks.Finding) Change {
	var c Change
	for _, d := range checks.Differences(before, after) {
		if d.Is != nil {
			c.Findings = append(c.Findings, *d.Is)
		} else {
			c.Gone = append(c.Gone, *d.Was)
		}
	}
	c.Findings, c.Gone = WorstFirst(c.Findings), WorstFirst(c.Gone)
	return c
}
