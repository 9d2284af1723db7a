package cli

import (
	"fmt"

	"github.com/spf13/cobra"
)

// help is the verb; --help does the same. An unknown verb is an error here too.
func (p Program) help() *cobra.Command {
	var c *cobra.Command
	c = p.verb("help [VERB]", cobra.ArbitraryArgs, func(args []string) error {
		about, rest, err := c.Root().Find(args)
		if err != nil || len(rest) > 0 {
			return noVerb(args)
		}
		about.InitDefaultHelpFlag()
		return about.Help()
	})
	return c
}

func noVerb(args []string) error {
	return fmt.Errorf("%.40q is no verb; see `yokebook --help`", args[0])
}

// knownVerb refuses what stands where a verb should.
func knownVerb(_ *cobra.Command, args []string) error {
	if len(args) > 0 {
		return noVerb(args)
	}
	return nil
}

// flagError tells a wrong flag in one line.
func flagError(c *cobra.Command, err error) error {
	return fmt.Errorf("%w; see `%s --help`", err, c.CommandPath())
}
