package cli

import (
	"strings"

	"github.com/spf13/cobra"

	"yokebook/measure"
)

// pointJSON is a row of the table of points as --json prints it.
type pointJSON struct {
	Point     string     `json:"point"`
	Group     string     `json:"group"`
	Quantity  string     `json:"quantity"`
	Unit      string     `json:"unit"`
	Question  string     `json:"question"`
	Place     string     `json:"place"`
	Positive  string     `json:"positive"`
	Plausible []float64  `json:"plausible"`
	Answers   []codeJSON `json:"answers"`
	States    []string   `json:"states"`
	Optional  bool       `json:"optional"`
	Basis     string     `json:"basis"`
}

type codeJSON struct {
	Value int    `json:"value"`
	Means string `json:"means"`
}

func (p Program) points() *cobra.Command {
	var asJSON bool
	c := p.verb("points [--json]", p.exactly(0), func([]string) error {
		if asJSON {
			rows := make([]any, len(measure.Points))
			for i, pt := range measure.Points {
				rows[i] = pointToJSON(pt)
			}
			return p.printJSON([]member{{"format", "yokebook-points/1"}}, "points", rows)
		}
		rows := make([][]string, len(measure.Points))
		for i, pt := range measure.Points {
			rows[i] = []string{pt.Key, p.unitOf(pt), p.wanted(pt), p.place(pt)}
		}
		return p.table(p.headings("points", "point", "unit", "states", "place"), rows)
	})
	c.Flags().BoolVar(&asJSON, "json", false, p.Language.Say("help.flag.json"))
	return c
}

// unitOf is the unit that a point is read in, or what it takes instead.
func (p Program) unitOf(pt measure.Point) string {
	switch {
	case pt.Quantity == measure.Text:
		return p.Language.Say("cli.unit.text")
	case pt.Quantity == measure.Answer:
		return p.Language.Say("cli.unit.answer")
	case pt.Quantity.Bare():
		return "–"
	}
	return string(pt.Quantity.Base())
}

// wanted lists the states that the route stops in, short.
func (p Program) wanted(pt measure.Point) string {
	if len(pt.Wanted) == 0 {
		return "–"
	}
	states := strings.Join(stateKeys(pt.Wanted), " ")
	if pt.Optional {
		return p.Language.Say("cli.optional", states)
	}
	return states
}

// place is where to put the tool; for a value that nobody measures, the question that it answers.
func (p Program) place(pt measure.Point) string {
	if place := p.Language.Place(pt); place != "" {
		return place
	}
	return p.Language.Question(pt)
}

func stateKeys(states []measure.State) []string {
	out := make([]string, len(states))
	for i, s := range states {
		out[i] = s.String()
	}
	return out
}

func pointToJSON(pt measure.Point) pointJSON {
	row := pointJSON{
		Point: pt.Key, Group: string(pt.Group), Quantity: string(pt.Quantity), Unit: string(pt.Quantity.Base()),
		Question: pt.Question, Place: pt.Place, Positive: string(pt.Sense),
		Answers: []codeJSON{}, States: stateKeys(pt.Wanted), Optional: pt.Optional, Basis: string(pt.Basis),
	}
	if pt.Low != 0 || pt.High != 0 {
		row.Plausible = []float64{pt.Low, pt.High}
	}
	for _, c := range pt.Codes {
		row.Answers = append(row.Answers, codeJSON{c.Value, c.Means})
	}
	if row.Basis == "" {
		row.Basis = string(measure.Measured)
	}
	return row
}
