package cli

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

func (p Program) diff() *cobra.Command {
	c := p.verb("diff A B", p.exactly(2), func(args []string) error {
		var builds [2]*measure.Build
		for i, path := range args {
			b, _, err := readBuild(path)
			if err != nil {
				return err
			}
			builds[i] = b
		}
		a, b := builds[0], builds[1]
		if a.ID != b.ID {
			return errors.New("these are two builds, " + string(a.ID) + " and " + string(b.ID) + "; compare files of one build")
		}
		first := p.printOnly(args[0], a, b)
		second := p.printOnly(args[1], b, a)
		if first+second == 0 {
			p.say("cli.diff.same")
		}
		p.printDifferences(checks.Differences(checks.Run(a, nil).Findings, checks.Run(b, nil).Findings), "cli.diff")
		return nil
	})
	c.ValidArgsFunction = completeFiles
	return c
}

// printOnly tells in words what one file of a build has that another lacks, and returns how much.
func (p Program) printOnly(path string, has, lacks *measure.Build) int {
	lines := p.onlyIn(has, lacks)
	if len(lines) > 0 {
		p.say("cli.diff.only", path, len(lines))
	}
	for _, l := range lines {
		p.say("cli.diff.line", l)
	}
	return len(lines)
}

func (p Program) onlyIn(has, lacks *measure.Build) []string {
	l := p.Language
	return concat(
		missingFrom(has.Readings, lacks.Readings, document.Hash, func(r measure.Reading) string {
			line := l.Say("cli.diff.reading", l.Point(r.Point), l.Entered(r), l.State(r.State()), r.At, string(r.ID))
			if r.By != "" {
				line = l.Say("cli.diff.by", line, l.By(r.By))
			}
			if r.Replaces != "" {
				line = l.Say("cli.diff.corrects", line, string(r.Replaces))
			}
			return line
		}),
		missingFrom(has.Strikes, lacks.Strikes, document.HashStrike, func(s measure.Strike) string {
			r := readingOf(has, s.Reading)
			return l.Say("cli.diff.strike", l.Point(r.Point), l.Entered(r), s.Reason, string(s.Reading))
		}),
		missingFrom(has.Skips, lacks.Skips, document.HashSkip, func(s measure.Skip) string {
			point := l.Point(s.Point)
			if s.Tag != "" {
				point = l.Say("cli.diff.obstacle", point, s.Tag)
			}
			if s.Back != "" {
				return l.Say("cli.diff.unskip", point, l.State(s.State()))
			}
			return l.Say("cli.diff.skip", point, l.State(s.State()), s.Reason)
		}),
		missingFrom(has.Heads, lacks.Heads, document.HashHead, func(h measure.Head) string {
			return l.Say("cli.diff.head", h.Field, string(h.Value))
		}),
	)
}

func concat(lists ...[]string) (out []string) {
	for _, l := range lists {
		out = append(out, l...)
	}
	return out
}

// missingFrom tells of each record of one list that another lacks.
func missingFrom[T any](has, lacks []T, hash func(T) string, tell func(T) string) (out []string) {
	there := map[string]bool{}
	for _, r := range lacks {
		there[hash(r)] = true
	}
	for _, r := range has {
		if !there[hash(r)] {
			out = append(out, tell(r))
		}
	}
	return out
}

// printDifferences tells of findings that differ: as they were, then as they are.
func (p Program) printDifferences(list []checks.Difference, key string) {
	if len(list) == 0 {
		p.say(key + ".no_finding")
		return
	}
	p.say(key+".findings", len(list))
	for _, d := range list {
		either := d.Is
		if either == nil {
			either = d.Was
		}
		fmt.Fprintln(p.Out)
		p.say(key+".finding", p.Language.Title(*either))
		p.say(key+".was", p.brief(d.Was))
		p.say(key+".is", p.brief(d.Is))
	}
}

// brief is a finding in one line: verdict, value with its doubt, limit.
func (p Program) brief(f *checks.Finding) string {
	if f == nil {
		return p.Language.Say("cli.diff.none")
	}
	return p.Language.Brief(*f)
}
