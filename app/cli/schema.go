package cli

import (
	"github.com/spf13/cobra"

	"yokebook/measure/document"
)

func (p Program) schema() *cobra.Command {
	return p.verb("schema", p.exactly(0), func([]string) error {
		_, err := p.Out.Write(document.Schema())
		return err
	})
}
