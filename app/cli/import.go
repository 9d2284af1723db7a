package cli

import (
	"fmt"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
)

func (p Program) importing() *cobra.Command {
	c := p.verb("import FILE…", p.atLeastOne, func(args []string) error {
		return p.onShelf(func(s *logbook.Shelf) error {
			for _, path := range args {
				if err := p.importFile(s, path); err != nil {
					return err
				}
			}
			return nil
		})
	})
	c.ValidArgsFunction = completeFiles
	return c
}

func (p Program) importFile(s *logbook.Shelf, path string) error {
	data, err := readFile(path)
	if err != nil {
		return err
	}
	id, report, err := s.Import(data)
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	p.say("cli.imported", path, string(id))
	p.printReport(report)
	return nil
}
