package cli

import (
	"context"
	"math"
	"strings"

	"github.com/spf13/cobra"

	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/checks/remedy"
)

func (p Program) remedy() *cobra.Command {
	var asJSON bool
	c := p.verb("remedy FILE [--json]", p.exactly(1), func(args []string) error {
		b, _, err := readBuild(args[0])
		if err != nil {
			return err
		}
		ctx := context.Background()
		report, err := remedy.Solve(ctx, b, nil)
		if err != nil {
			return err
		}
		next, err := remedy.Next(ctx, b)
		if err != nil {
			return err
		}
		if asJSON {
			return p.printRemedyJSON(b.ID, report, next)
		}
		p.printRemedy(report)
		p.printNext(next)
		return nil
	})
	c.Flags().BoolVar(&asJSON, "json", false, p.Language.Say("help.flag.json"))
	c.ValidArgsFunction = completeFile
	return c
}

// printRemedy prints for each trouble what is wrong now and the ways out of it.
func (p Program) printRemedy(report *remedy.Report) {
	if len(report.Troubles) == 0 {
		p.say("cli.remedy.none")
		return
	}
	p.say("cli.remedy.counts", len(report.Troubles))
	p.say("cli.remedy.care")
	for _, t := range report.Troubles {
		p.say("cli.blank")
		p.printTrouble(t)
	}
}

func (p Program) printTrouble(t remedy.Trouble) {
	p.say("cli.remedy.trouble", p.Language.Trouble(t))
	for _, f := range t.Findings {
		p.say("cli.remedy.now", p.Language.VerdictOf(f), p.remedyValue(f))
	}
	for i, r := range t.Singles {
		text := p.Language.Remedy(r)
		p.say("cli.remedy.way", i+1, text.Changes[0])
		p.printWay(r, text)
	}
	if t.Pair != nil {
		text := p.Language.Remedy(*t.Pair)
		p.say("cli.remedy.pair", text.Changes[0])
		p.say("cli.remedy.and", text.Changes[1])
		p.printWay(*t.Pair, text)
	}
	if len(t.Singles) == 0 && t.Pair == nil {
		p.say("cli.remedy.no_knob")
		p.detail("cli.remedy.advice", p.adviceOf(t))
	}
	if len(t.Short) > 0 {
		p.say("cli.remedy.short", strings.Join(said(t.Short, p.Language.Knob), "; "))
	}
}

// printWay prints what a remedy brings and costs.
func (p Program) printWay(r remedy.Remedy, text words.RemedyText) {
	p.detail("cli.remedy.span", text.Span)
	for _, e := range text.Worsens {
		p.say("cli.remedy.worsens", e)
	}
	for _, e := range text.Improves {
		p.say("cli.remedy.improves", e)
	}
	for _, c := range text.Costs {
		p.say("cli.remedy.cost", c)
	}
	if r.Chance != nil {
		p.say("cli.remedy.chance", *r.Chance)
	}
}

// mostNext is how many readings are told to be taken next, mostSettled how many findings each decides.
const (
	mostNext    = 8
	mostSettled = 4
)

// printNext prints the readings that would decide most, best first.
func (p Program) printNext(next []remedy.Reading) {
	if len(next) == 0 {
		return
	}
	p.say("cli.blank")
	p.say("cli.next.title")
	for i, r := range next[:min(len(next), mostNext)] {
		if r.Decides == 0 {
			p.say("cli.next.nearer", i+1, p.Language.Reading(r))
			continue
		}
		all := math.Round(r.Decides / r.Share)
		p.say("cli.next.reading", i+1, p.Language.Reading(r), p.Language.Number(r.Decides, "", 0.05), int(all))
		for _, s := range r.Settles[:min(len(r.Settles), mostSettled)] {
			p.say("cli.next.settles", p.Language.Settled(s))
		}
	}
}

// remedyValue says where a finding stands: its title, value and limit.
func (p Program) remedyValue(f checks.Finding) string {
	t := p.Language.Finding(f)
	if t.Value == "" || t.Limit == "" {
		return t.Title
	}
	return p.Language.Say("cli.remedy.value", t.Title, strings.TrimSpace(t.Value+" "+t.Interval), t.Limit)
}

// adviceOf is what the findings of a trouble say themselves, where they all say the same.
func (p Program) adviceOf(t remedy.Trouble) string {
	first := p.Language.Message(t.Findings[0].Advice)
	for _, f := range t.Findings[1:] {
		if p.Language.Message(f.Advice) != first {
			return ""
		}
	}
	return first
}

func said(keys []string, name func(string) string) []string {
	out := make([]string, len(keys))
	for i, k := range keys {
		out[i] = name(k)
	}
	return out
}
