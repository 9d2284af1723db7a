package cli

import (
	"fmt"
	"strings"
	"text/tabwriter"

	"yokebook/checks"
)

// say prints one line in the person's language.
func (p Program) say(key string, args ...any) {
	fmt.Fprintln(p.Out, p.Language.Say(key, args...))
}

// table prints rows under headings, in aligned columns two spaces apart.
func (p Program) table(headings []string, rows [][]string) error {
	w := tabwriter.NewWriter(p.Out, 0, 0, 2, ' ', 0)
	fmt.Fprintln(w, strings.Join(headings, "\t"))
	for _, row := range rows {
		fmt.Fprintln(w, strings.Join(row, "\t"))
	}
	return w.Flush()
}

// headings returns the headings of a table by their keys.
func (p Program) headings(table string, columns ...string) []string {
	out := make([]string, len(columns))
	for i, c := range columns {
		out[i] = p.Language.Say("cli.column." + table + "." + c)
	}
	return out
}

// printFinding prints a finding as a short paragraph: verdict and title, then value and limit, what
// decides it, what to do.
func (p Program) printFinding(f checks.Finding) {
	t := p.Language.Finding(f)
	p.say("cli.finding", t.Verdict, t.Title)
	if t.Value != "" {
		value := strings.TrimSpace(t.Value + " " + t.Interval)
		if t.Limit != "" {
			p.say("cli.finding.value_limit", value, t.Limit)
		} else {
			p.say("cli.finding.value", value)
		}
	}
	p.detail("cli.finding.chance", t.Chance)
	p.detail("cli.finding.why", t.Why)
	p.detail("cli.finding.missing", strings.Join(t.Missing, "; "))
	p.detail("cli.finding.advice", t.Advice)
	for _, n := range t.Notes {
		p.detail("cli.finding.note", n)
	}
	p.detail("cli.finding.source", t.Source)
}

func (p Program) detail(key, text string) {
	if text != "" {
		p.say(key, text)
	}
}
