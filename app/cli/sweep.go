package cli

import (
	"math"
	"strings"

	"github.com/spf13/cobra"

	"yokebook/app/words"
	"yokebook/checks"
)

// sweepFormat names the shape of what sweep --json prints.
const sweepFormat = "yokebook-sweep/1"

// sweepRowJSON is the line at one height: lengths in mm, angles in deg, ripple in per cent, numbers
// unrounded, null where something is not known.
type sweepRowJSON struct {
	Height    float64         `json:"height"`
	Travel    float64         `json:"travel"`
	State     string          `json:"state"`
	Predicted bool            `json:"predicted"`
	Length    *spanJSON       `json:"length"`
	Slide     *spanJSON       `json:"slide"`
	Exposed   *spanJSON       `json:"exposed"`
	Angles    []jointSpanJSON `json:"angles"`
	Residual  *spanJSON       `json:"residual"`
	Ripple    *spanJSON       `json:"ripple"`
}

type spanJSON struct {
	Value float64 `json:"value"`
	Low   float64 `json:"low"`
	High  float64 `json:"high"`
}

type jointSpanJSON struct {
	Joint string    `json:"joint"`
	Angle *spanJSON `json:"angle"`
}

func (p Program) sweep() *cobra.Command {
	var asJSON bool
	c := p.verb("sweep FILE [--json]", p.exactly(1), func(args []string) error {
		b, _, err := readBuild(args[0])
		if err != nil {
			return err
		}
		swept := checks.Sweep(b)
		if !asJSON {
			return p.printSweep(swept)
		}
		rows := make([]any, len(swept.Rows))
		for i, r := range swept.Rows {
			rows[i] = sweepRowToJSON(swept.Joints, r)
		}
		head := []member{{"format", sweepFormat}, {"build", b.ID}, {"path", textOrNull(swept.Way)},
			{"missing", missingToJSON(swept.Missing)}, {"notes", listed(words.English.Messages(swept.Notes))}}
		return p.printJSON(head, "rows", rows)
	})
	c.Flags().BoolVar(&asJSON, "json", false, p.Language.Say("help.flag.json"))
	c.ValidArgsFunction = completeFile
	return c
}

// printSweep prints how the path is known, one line for each height, and what is missing.
func (p Program) printSweep(swept *checks.SweepResult) error {
	for _, n := range swept.Notes {
		p.say("cli.sweep.note", p.Language.Message(n))
	}
	if len(swept.Rows) > 0 {
		headings := p.headings("sweep", "height", "travel", "known", "length", "out")
		for _, j := range swept.Joints {
			headings = append(headings, strings.ToUpper(p.Language.Subject(j)))
		}
		headings = append(headings, p.headings("sweep", "residual", "ripple")...)
		rows := make([][]string, len(swept.Rows))
		for i, r := range swept.Rows {
			rows[i] = p.sweepRow(r)
		}
		if err := p.table(headings, rows); err != nil {
			return err
		}
	}
	for _, m := range p.Language.Missing(swept.Missing) {
		p.say("cli.sweep.missing", m)
	}
	return nil
}

// sweepRow writes one height. Where nobody read how far the slip was drawn out, it says by how much
// further out it is than at ride height.
func (p Program) sweepRow(r checks.SweepRow) []string {
	how := p.Language.Say("cli.sweep.predicted")
	if !r.Predicted {
		how = r.State.String()
	}
	out := p.known(r.Exposed, "mm")
	if r.Exposed == nil && r.Slide != nil {
		out = p.Language.Say("cli.sweep.from_ride", p.known(r.Slide, "mm"))
	}
	row := []string{p.Language.Number(r.HeightMM, "mm", 1), p.Language.Number(r.TravelMM, "mm", 1), how, p.known(r.Length, "mm"), out}
	for _, a := range r.Angles {
		row = append(row, p.known(a, "deg"))
	}
	return append(row, p.known(r.Residual, "deg"), p.known(r.Ripple, "%"))
}

// known writes a number with its doubt, – where it is not known.
func (p Program) known(s *checks.Span, unit string) string {
	if s == nil {
		return "–"
	}
	return p.Language.WithDoubt(s.Value, unit, math.Max(s.High-s.Value, s.Value-s.Low))
}

func sweepRowToJSON(joints []string, r checks.SweepRow) sweepRowJSON {
	row := sweepRowJSON{Height: r.HeightMM, Travel: r.TravelMM, State: r.State.String(), Predicted: r.Predicted,
		Length: spanToJSON(r.Length), Slide: spanToJSON(r.Slide), Exposed: spanToJSON(r.Exposed),
		Angles: []jointSpanJSON{}, Residual: spanToJSON(r.Residual), Ripple: spanToJSON(r.Ripple)}
	for i, a := range r.Angles {
		row.Angles = append(row.Angles, jointSpanJSON{joints[i], spanToJSON(a)})
	}
	return row
}

func spanToJSON(s *checks.Span) *spanJSON {
	if s == nil {
		return nil
	}
	return &spanJSON{s.Value, s.Low, s.High}
}
