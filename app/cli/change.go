package cli

import (
	"fmt"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// printChange tells what was kept and which findings changed by it, worst first.
func (p Program) printChange(book *logbook.Book, c logbook.Change, asJSON bool) error {
	if asJSON {
		head := []member{{"format", findingsFormat}, {"build", book.ID()}, {"reading", c.Reading}}
		return p.printFindingsJSON(head, c.Findings)
	}
	r := readingOf(book.Build(), c.Reading)
	p.say("cli.kept", r.Point, p.Language.Entered(r), r.State().String(), r.Setup, string(r.ID))
	p.printChanged(c)
	return nil
}

// printChanged tells which findings changed, worst first, and where to go next.
func (p Program) printChanged(c logbook.Change) {
	if len(c.Findings)+len(c.Gone) == 0 {
		p.say("cli.unchanged")
	}
	if len(c.Findings) > 0 {
		p.say("cli.changed", len(c.Findings))
	}
	for _, f := range c.Findings {
		fmt.Fprintln(p.Out)
		p.printFinding(f)
	}
	for _, f := range c.Gone {
		p.say("cli.gone", p.Language.Title(f))
	}
	if c.More {
		fmt.Fprintln(p.Out)
		p.say("cli.next", c.Next.Point.Key, c.Next.State.String())
	}
}

func readingOf(b *measure.Build, id measure.ID) measure.Reading {
	for _, r := range b.Readings {
		if r.ID == id {
			return r
		}
	}
	return measure.Reading{}
}
