package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"regexp"
	"strings"
	"syscall"
	"time"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
	"yokebook/app/places"
	"yokebook/app/words"
)

// Program is what the command line stands on, injected so that tests repeat.
type Program struct {
	Language *words.Language
	Sources  logbook.Sources
	Home     func() (string, error) // the folder of this device's store
	// Wait waits before a server is asked again; nil: for real.
	Wait     func(ctx context.Context, d time.Duration) error
	Vault    places.Vault // keeps passwords; nil: a file that only the user can read does
	In       io.Reader
	Out, Err io.Writer
	Context  context.Context // ends the verbs that wait for a network; nil: a signal does
	Screen   bool            // Out is looked at by a person
}

// Run does what the arguments say, for the real world, and returns the exit code.
func Run(args []string, out, err io.Writer) int {
	p := Program{Language: words.English, Sources: logbook.System(), Home: logbook.Home, Vault: places.SystemVault(), In: os.Stdin,
		Screen: isScreen(out), Out: out, Err: err}
	return p.Run(args)
}

// Run does what the arguments (without the program's name) say and returns the exit code: Done,
// PersonNeeded, BadInput or NotWritten.
func (p Program) Run(args []string) int {
	out := &writer{to: p.Out}
	p.Out = out
	root := p.root()
	root.SetArgs(shieldNumbers(args))
	verb, err := root.ExecuteC()
	if err == nil {
		err = out.err
	}
	if err == nil {
		return Done
	}
	if !errors.Is(err, errQuiet) {
		fmt.Fprintln(p.Err, oneLine(verb.Name(), err))
	}
	return codeOf(err)
}

// untilStopped returns a context that ends when the person says so.
func (p Program) untilStopped() (context.Context, context.CancelFunc) {
	if p.Context != nil {
		return context.WithCancel(p.Context)
	}
	return signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
}

// root builds the whole command tree.
func (p Program) root() *cobra.Command {
	root := &cobra.Command{
		Use:                "yokebook",
		Short:              p.Language.Say("help.root"),
		Long:               p.Language.Say("help.root.long"),
		SilenceErrors:      true,
		SilenceUsage:       true,
		DisableSuggestions: true,
		Args:               knownVerb,
		CompletionOptions:  cobra.CompletionOptions{DisableDefaultCmd: true},
		RunE:               func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	root.SetOut(p.Out)
	root.SetErr(p.Err)
	root.SetFlagErrorFunc(flagError)
	root.SetHelpCommand(p.help())
	root.AddCommand(p.check(), p.add(), p.strike(), p.sweep(), p.tubes(), p.remedy(), p.merge(), p.diff(), p.points(), p.limits(), p.schema(), p.draw(), p.builds(), p.export(), p.importing(),
		p.sync(), p.serve(), p.sheet(), p.completion())
	return root
}

// verb makes a command whose help is said by the language under help.<name>.
func (p Program) verb(use string, args cobra.PositionalArgs, run func(args []string) error) *cobra.Command {
	name, _, _ := strings.Cut(use, " ")
	return &cobra.Command{
		Use:                   use,
		Short:                 p.Language.Say("help." + name),
		Long:                  p.Language.Say("help." + name + ".long"),
		Args:                  args,
		DisableFlagsInUseLine: true,
		RunE:                  func(_ *cobra.Command, args []string) error { return run(args) },
	}
}

// exactly asks for n arguments.
func (p Program) exactly(n int) cobra.PositionalArgs {
	return func(c *cobra.Command, args []string) error {
		if len(args) != n {
			return errors.New(p.Language.Say("cli.arguments", len(args), c.Use))
		}
		return nil
	}
}

// atLeastOne asks for one argument or more.
func (p Program) atLeastOne(c *cobra.Command, args []string) error {
	if len(args) == 0 {
		return errors.New(p.Language.Say("cli.arguments", len(args), c.Use))
	}
	return nil
}

// negative is an argument that begins like a negative number.
var negative = regexp.MustCompile(`^-[0-9.,]`)

// shieldNumbers lets negative numbers pass as values: no flag here begins with a digit, so an
// argument such as -2.4 gets a space in front, which hides the minus from the flag parser and is
// trimmed by what reads numbers.
func shieldNumbers(args []string) []string {
	out := make([]string, len(args))
	for i, a := range args {
		if negative.MatchString(a) {
			a = " " + a
		}
		out[i] = a
	}
	return out
}
