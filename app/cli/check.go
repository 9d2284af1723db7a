package cli

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// chanceCheck is the finding that speaks for the whole build; it is told as the headline.
const chanceCheck = "build.chance"

func (p Program) check() *cobra.Command {
	var asJSON, strict, asBuilt bool
	c := p.verb("check FILE [--json] [--strict] [--as-built]", p.exactly(1), func(args []string) error {
		b, seal, err := readBuild(args[0])
		if err != nil {
			return err
		}
		findings := checks.Run(b, nil).Findings
		var differ []checks.Difference
		if asBuilt {
			made, ok := checks.AsBuilt(b)
			if !ok {
				return fmt.Errorf("%s: nothing of what was built was read; add the as_built points first", args[0])
			}
			ordered := findings
			findings = checks.Run(made, nil).Findings
			differ = checks.Differences(ordered, findings)
		}
		if asJSON {
			err = p.printFindingsJSON([]member{{"format", findingsFormat}, {"build", b.ID}}, findings)
		} else {
			p.printCheck(b, seal, findings)
			if asBuilt {
				fmt.Fprintln(p.Out)
				p.printDifferences(differ, "cli.built")
			}
		}
		if err != nil {
			return err
		}
		return judged(findings, strict)
	})
	c.Flags().BoolVar(&asJSON, "json", false, p.Language.Say("help.flag.json"))
	c.Flags().BoolVar(&asBuilt, "as-built", false, p.Language.Say("help.flag.as_built"))
	c.Flags().BoolVar(&strict, "strict", false, p.Language.Say("help.flag.strict"))
	c.ValidArgsFunction = completeFile
	return c
}

// judged ends check with PersonNeeded when something is out or, in strict use, not clear.
func judged(findings []checks.Finding, strict bool) error {
	for _, f := range findings {
		if f.Verdict == checks.Out || strict && f.Verdict != checks.Clear && f.Verdict != checks.Unsaid {
			return errQuiet
		}
	}
	return nil
}

func (p Program) printFindingsJSON(head []member, findings []checks.Finding) error {
	return p.printJSON(head, "findings", findingsToJSON(findings))
}

// printCheck prints the counts, the headline and every finding, worst first.
func (p Program) printCheck(b *measure.Build, seal document.Seal, findings []checks.Finding) {
	_, counts := logbook.Worst(findings)
	p.say("cli.counts", counts[checks.Out], counts[checks.Unsure], counts[checks.Waiting], counts[checks.Clear])
	p.printHeadline(findings)
	p.say("cli.build", b.Title, string(b.ID))
	if seal == document.Unsealed {
		p.say("cli.unsealed")
	}
	for _, f := range logbook.WorstFirst(findings) {
		if f.Check == chanceCheck || f.Untouched {
			continue
		}
		fmt.Fprintln(p.Out)
		p.printFinding(f)
	}
	p.printUntouched(findings)
}

// printUntouched names in one line a group what waits and was not begun.
func (p Program) printUntouched(findings []checks.Finding) {
	var groups []string
	titles := map[string][]string{}
	for _, f := range findings {
		if !f.Untouched {
			continue
		}
		group, _, _ := strings.Cut(f.Check, ".")
		if titles[group] == nil {
			groups = append(groups, group)
		}
		if title := p.Language.Check(f.Check, ""); !slices.Contains(titles[group], title) {
			titles[group] = append(titles[group], title)
		}
	}
	if len(groups) == 0 {
		return
	}
	fmt.Fprintln(p.Out)
	p.say("cli.untouched")
	for _, g := range groups {
		p.say("cli.untouched.line", strings.Join(titles[g], "; "))
	}
}

// printHeadline says how likely the whole build holds, and how many clear findings are computed or
// rest on stated values.
func (p Program) printHeadline(findings []checks.Finding) {
	predicted, resting := 0, 0
	for _, f := range findings {
		if f.Check == chanceCheck {
			p.printChance(f)
		}
		if f.Verdict == checks.Clear && f.Predicted {
			predicted++
		}
		if f.Verdict == checks.Clear && len(f.RestsOn) > 0 {
			resting++
		}
	}
	if predicted > 0 {
		p.say("cli.predicted", predicted)
	}
	if resting > 0 {
		p.say("cli.resting", resting)
	}
}

func (p Program) printChance(f checks.Finding) {
	t := p.Language.Finding(f)
	if f.Chance != nil {
		p.say("cli.headline", *f.Chance)
	} else {
		p.say("cli.headline_waiting", t.Verdict)
	}
	for _, n := range t.Notes {
		p.say("cli.headline_note", n)
	}
}
