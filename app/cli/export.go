package cli

import (
	"errors"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
	"yokebook/measure"
)

func (p Program) export() *cobra.Command {
	var out string
	c := p.verb("export ID -o FILE", p.exactly(1), func(args []string) error {
		if out == "" {
			return errors.New("where to write is missing; use -o FILE")
		}
		id, err := measure.ParseID(args[0])
		if err != nil {
			return err
		}
		return p.onShelf(func(s *logbook.Shelf) error {
			data, err := s.Export(id)
			if err != nil {
				return err
			}
			if err := writeFile(out, data); err != nil {
				return err
			}
			p.say("cli.exported", string(id), out)
			return nil
		})
	})
	c.Flags().StringVarP(&out, "output", "o", "", p.Language.Say("help.flag.output"))
	c.ValidArgsFunction = p.completeBuild
	return c
}
