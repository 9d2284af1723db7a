package cli

import (
	"cmp"

	"github.com/spf13/cobra"

	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure"
)

// tubesFormat names the shape of what tubes --json prints.
const tubesFormat = "yokebook-tubes/1"

// tubeJSON is one size of tube for one shaft: mm, kg/m, rev/min, MPa, deg, numbers unrounded, null
// where something is not known.
type tubeJSON struct {
	Shaft     string          `json:"shaft"`
	Outer     float64         `json:"outer"`
	Wall      float64         `json:"wall"`
	Series    string          `json:"series"`
	Mass      float64         `json:"mass"`
	Critical  *float64        `json:"critical_speed"`
	Stress    *float64        `json:"stress"`
	Twist     *float64        `json:"twist"`
	Clearance *float64        `json:"clearance"`
	Verdict   *checks.Verdict `json:"verdict"`
	Chance    *float64        `json:"chance"`
}

func (p Program) tubes() *cobra.Command {
	var asJSON, all bool
	c := p.verb("tubes FILE [--all] [--json]", p.exactly(1), func(args []string) error {
		b, _, err := readBuild(args[0])
		if err != nil {
			return err
		}
		tables := checks.Tubes(b)
		if asJSON {
			return p.printTubesJSON(b, tables)
		}
		for _, t := range tables {
			if err := p.printTubes(t, all); err != nil {
				return err
			}
		}
		return nil
	})
	c.Flags().BoolVar(&asJSON, "json", false, p.Language.Say("help.flag.json"))
	c.Flags().BoolVar(&all, "all", false, p.Language.Say("help.flag.tubes_all"))
	c.ValidArgsFunction = completeFile
	return c
}

// printTubes prints the sizes of one shaft that may serve, or all, and what they wait for.
func (p Program) printTubes(t checks.TubeTable, all bool) error {
	p.say("cli.tubes.shaft", p.Language.Subject(cmp.Or(t.Subject, "shaft")))
	for _, n := range t.Notes {
		p.say("cli.tubes.note", p.Language.Message(n))
	}
	var rows [][]string
	for _, r := range t.Rows {
		if r.Verdict == checks.Out && !all {
			continue
		}
		rows = append(rows, []string{p.Language.Number(r.OuterMM, "mm", 0.1), p.Language.Number(r.WallMM, "mm", 0.01), r.Series,
			p.Language.Number(r.KgPerM, "", 0.01), p.tubeNumber(r.Critical, "rev/min"), p.tubeNumber(r.Stress, "MPa"),
			p.tubeNumber(r.Twist, "deg"), p.tubeNumber(r.Clearance, "mm"), p.Language.Verdict(r.Verdict)})
	}
	if len(rows) == 0 {
		p.say("cli.tubes.none")
	} else if err := p.table(p.headings("tubes", "outer", "wall", "series", "mass", "critical", "stress", "twist", "clearance", "verdict"), rows); err != nil {
		return err
	}
	for _, m := range p.Language.Missing(t.Missing) {
		p.say("cli.sweep.missing", m)
	}
	return nil
}

func (p Program) tubeNumber(n checks.TubeNumber, unit string) string {
	if n.Value == nil {
		return "–"
	}
	return p.Language.WithDoubt(*n.Value, unit, max(*n.High-*n.Value, *n.Value-*n.Low))
}

func (p Program) printTubesJSON(b *measure.Build, tables []checks.TubeTable) error {
	rows, missing, notes := []any{}, []checks.Missing{}, []checks.Message{}
	for _, t := range tables {
		missing, notes = append(missing, t.Missing...), append(notes, t.Notes...)
		for _, r := range t.Rows {
			row := tubeJSON{t.Subject, r.OuterMM, r.WallMM, r.Series, r.KgPerM, r.Critical.Value, r.Stress.Value,
				r.Twist.Value, r.Clearance.Value, nil, r.Chance}
			if r.Verdict != checks.Unsaid {
				row.Verdict = &r.Verdict
			}
			rows = append(rows, row)
		}
	}
	head := []member{{"format", tubesFormat}, {"build", b.ID}, {"missing", missingToJSON(missing)},
		{"notes", listed(words.English.Messages(notes))}}
	return p.printJSON(head, "rows", rows)
}
