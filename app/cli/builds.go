package cli

import (
	"strconv"
	"time"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
	"yokebook/app/words"
	"yokebook/checks"
)

// listingJSON is a row of the list of builds as --json prints it.
type listingJSON struct {
	Build    string     `json:"build"`
	Title    string     `json:"title"`
	Readings int        `json:"readings"`
	Wanted   int        `json:"wanted"`
	Worst    *string    `json:"worst"`
	Counts   countsJSON `json:"counts"`
	LastWork *string    `json:"last_work"`
	Aside    int        `json:"aside"`
	Damaged  *string    `json:"damaged"`
}

type countsJSON struct {
	Out     int `json:"out"`
	Unsure  int `json:"unsure"`
	Waiting int `json:"waiting"`
	Clear   int `json:"clear"`
}

func (p Program) builds() *cobra.Command {
	var asJSON, verify bool
	c := p.verb("builds [--json] [--verify]", p.exactly(0), func([]string) error {
		return p.onShelf(func(s *logbook.Shelf) error {
			if verify {
				return p.verify(s, asJSON)
			}
			list, err := s.List()
			if err != nil {
				return err
			}
			if asJSON {
				rows := make([]any, len(list))
				for i, l := range list {
					rows[i] = listingToJSON(l)
				}
				return p.printJSON([]member{{"format", "yokebook-builds/1"}}, "builds", rows)
			}
			return p.printBuilds(list)
		})
	})
	c.Flags().BoolVar(&asJSON, "json", false, p.Language.Say("help.flag.json"))
	c.Flags().BoolVar(&verify, "verify", false, p.Language.Say("help.flag.verify"))
	return c
}

func (p Program) printBuilds(list []logbook.Listing) error {
	if len(list) == 0 {
		p.say("cli.no_builds")
		return nil
	}
	rows := make([][]string, len(list))
	for i, l := range list {
		rows[i] = []string{string(l.ID), words.Plain(l.Title), strconv.Itoa(l.Readings), strconv.Itoa(l.Wanted), p.stateOf(l), lastWork(l)}
	}
	return p.table(p.headings("builds", "build", "title", "readings", "wanted", "worst", "work"), rows)
}

// stateOf is the worst verdict of a build, or why it can't be read.
func (p Program) stateOf(l logbook.Listing) string {
	switch {
	case l.Damaged != "":
		return p.Language.Say("cli.damaged", l.Damaged)
	case l.Aside > 0:
		return p.Language.Say("cli.aside", p.Language.Verdict(l.Worst), l.Aside)
	}
	return p.Language.Verdict(l.Worst)
}

func lastWork(l logbook.Listing) string {
	if l.LastWork.IsZero() {
		return "–"
	}
	return l.LastWork.UTC().Format(time.RFC3339)
}

func listingToJSON(l logbook.Listing) listingJSON {
	row := listingJSON{
		Build: string(l.ID), Title: l.Title, Readings: l.Readings, Wanted: l.Wanted, Worst: textOrNull(string(l.Worst)),
		Counts: countsJSON{l.Counts[checks.Out], l.Counts[checks.Unsure], l.Counts[checks.Waiting], l.Counts[checks.Clear]},
		Aside:  l.Aside, Damaged: textOrNull(l.Damaged),
	}
	if !l.LastWork.IsZero() {
		row.LastWork = textOrNull(lastWork(l))
	}
	return row
}
