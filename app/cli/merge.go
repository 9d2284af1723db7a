package cli

import (
	"errors"

	"github.com/spf13/cobra"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
)

func (p Program) merge() *cobra.Command {
	var out string
	c := p.verb("merge FILE… -o OUT", p.atLeastOne, func(args []string) error {
		if out == "" {
			return errors.New("where to write is missing; use -o OUT")
		}
		builds := make([]*measure.Build, len(args))
		for i, path := range args {
			b, _, err := readBuild(path)
			if err != nil {
				return err
			}
			builds[i] = b
		}
		merged, report, err := merge.Builds(builds...)
		if err != nil {
			return err
		}
		data, err := document.Write(merged)
		if err != nil {
			return err
		}
		if err := writeFile(out, data); err != nil {
			return err
		}
		p.say("cli.merged", len(args), len(merged.Readings), len(merged.Strikes), out)
		for i, source := range report.Sources {
			p.say("cli.source", args[i], source.Held.Total(), source.Only.Total())
		}
		p.printReport(report)
		return nil
	})
	c.Flags().StringVarP(&out, "output", "o", "", p.Language.Say("help.flag.output"))
	c.ValidArgsFunction = completeFiles
	return c
}
