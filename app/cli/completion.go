package cli

import (
	"fmt"

	"github.com/spf13/cobra"
)

func (p Program) completion() *cobra.Command {
	var c *cobra.Command
	c = p.verb("completion SHELL", p.exactly(1), func(args []string) error {
		root := c.Root()
		switch args[0] {
		case "bash":
			return root.GenBashCompletionV2(p.Out, true)
		case "zsh":
			return root.GenZshCompletion(p.Out)
		case "fish":
			return root.GenFishCompletion(p.Out, true)
		case "powershell":
			return root.GenPowerShellCompletionWithDesc(p.Out)
		}
		return fmt.Errorf("%.20q is not a shell that it knows; use bash, zsh, fish or powershell", args[0])
	})
	c.ValidArgsFunction = cobra.FixedCompletions([]string{"bash", "zsh", "fish", "powershell"}, cobra.ShellCompDirectiveNoFileComp)
	return c
}
