package cli

import (
	"strconv"

	"github.com/spf13/cobra"

	"yokebook/checks/limits"
)

// limitRowJSON is a row of the table of limits as --json prints it.
type limitRowJSON struct {
	Key     string           `json:"key"`
	Value   float64          `json:"value"`
	Upper   *float64         `json:"upper"`
	Unit    string           `json:"unit"`
	Sense   string           `json:"sense"`
	Source  string           `json:"source"`
	Meaning string           `json:"meaning"`
	Others  []otherLimitJSON `json:"others"`
}

type otherLimitJSON struct {
	Value  float64  `json:"value"`
	Upper  *float64 `json:"upper"`
	Sense  string   `json:"sense"`
	Source string   `json:"source"`
}

func (p Program) limits() *cobra.Command {
	var asJSON bool
	c := p.verb("limits [--json]", p.exactly(0), func([]string) error {
		if asJSON {
			rows := make([]any, len(limits.Table))
			for i, r := range limits.Table {
				rows[i] = limitRowToJSON(r)
			}
			return p.printJSON([]member{{"format", "yokebook-limits/1"}}, "limits", rows)
		}
		var rows [][]string
		for _, r := range limits.Table {
			sense := func(s limits.Sense) string { return p.Language.Say("cli.sense." + string(s)) }
			rows = append(rows, []string{r.Key, sense(r.Sense), p.span(r.Value, r.Upper), p.unitOrNone(r.Unit), r.Source})
			for _, o := range r.Others {
				rows = append(rows, []string{p.Language.Say("cli.other_limit"), sense(o.SenseIn(r)), p.span(o.Value, o.Upper), p.unitOrNone(r.Unit), o.Source})
			}
		}
		return p.table(p.headings("limits", "limit", "sense", "value", "unit", "source"), rows)
	})
	c.Flags().BoolVar(&asJSON, "json", false, p.Language.Say("help.flag.json"))
	return c
}

// span writes a value, or a range where there is an upper one, to four digits: no source gives more,
// and two thirds have no last one.
func (p Program) span(value, upper float64) string {
	if upper == 0 {
		return p.Language.Exact(fourDigits(value))
	}
	return p.Language.Exact(fourDigits(value)) + " … " + p.Language.Exact(fourDigits(upper))
}

func fourDigits(x float64) float64 {
	short, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 4, 64), 64)
	if err != nil {
		return x
	}
	return short
}

func (p Program) unitOrNone(unit string) string {
	if unit == "" {
		return "–"
	}
	return unit
}

func limitRowToJSON(r limits.Row) limitRowJSON {
	row := limitRowJSON{Key: r.Key, Value: r.Value, Upper: orNull(r.Upper), Unit: r.Unit, Sense: string(r.Sense), Source: r.Source,
		Meaning: r.Meaning, Others: []otherLimitJSON{}}
	for _, o := range r.Others {
		row.Others = append(row.Others, otherLimitJSON{o.Value, orNull(o.Upper), string(o.SenseIn(r)), o.Source})
	}
	return row
}

// orNull turns the 0 of a table that means "none" into null.
func orNull(f float64) *float64 {
	if f == 0 {
		return nil
	}
	return &f
}
