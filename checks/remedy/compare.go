package remedy

import (
	"context"
	"slices"

	"yokebook/checks"
	"yokebook/measure"
)

// Try judges a build as a remedy would change it and lists the findings whose verdict would be another
// one, first what it is for, then the worst. It errs with the context's error, and where the changes can't
// be made of this build no finding changes. b is not changed.
func Try(ctx context.Context, b *measure.Build, before []checks.Finding, about Trouble, r Remedy) ([]Effect, error) {
	changed, ok := Apply(b, r.Changes...)
	if !ok {
		return nil, ctx.Err()
	}
	after := checks.Run(changed, nil).Findings
	return compare(before, after, about), ctx.Err()
}

// compare lists the findings of after that say something else than those of before.
func compare(before, after []checks.Finding, about Trouble) []Effect {
	was := byKey(before)
	var out []Effect
	for _, g := range after {
		f, there := was[g.Key()]
		if there && f.Verdict == g.Verdict || !there && rank(g.Verdict) < 2 {
			continue
		}
		out = append(out, Effect{f, g})
	}
	order := func(e Effect) int {
		if about.about(e.After) {
			return -4
		}
		return -rank(e.After.Verdict)
	}
	slices.SortStableFunc(out, func(a, b Effect) int { return order(a) - order(b) })
	return out
}
