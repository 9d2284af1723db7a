package cli

import (
	"errors"
	"fmt"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// addFlags are the flags of add as they were typed.
type addFlags struct {
	unit, ride, load, height, instrument, basis, replaces string
	tag, note, by, lay, title                             string
	setup, way                                            int
	yes, json                                             bool
}

func (p Program) add() *cobra.Command {
	var f addFlags
	var c *cobra.Command
	use := "add FILE POINT VALUE [--unit U] [--ride R --load L --height MM --setup N --instrument I --basis B --replaces ID]"
	c = p.verb(use, p.exactly(3), func(args []string) error {
		book, err := p.openBook(args[0], f.title, c.Flags().Changed("new"))
		if err != nil {
			return err
		}
		defer book.Close()
		entry, err := f.entry(args[1], args[2], c.Flags().Changed("setup"), book.Build())
		if err != nil {
			return err
		}
		if doubts := book.Doubts(entry); len(doubts) > 0 && !f.yes {
			return p.ask(doubts)
		}
		change, err := book.Keep(entry)
		if err != nil {
			return err
		}
		return p.printChange(book, change, f.json)
	})
	p.addFlags(c, &f)
	c.ValidArgsFunction = completeReading
	return c
}

func (p Program) addFlags(c *cobra.Command, f *addFlags) {
	flags := c.Flags()
	flags.SortFlags = false
	for _, t := range []struct {
		to      *string
		name    string
		choices []string
	}{
		{&f.unit, "unit", unitNames()},
		{&f.ride, "ride", []string{"droop", "ride", "bump", "bench"}},
		{&f.load, "load", []string{"none", "kerb", "laden"}},
		{&f.height, "height", nil},
		{&f.instrument, "instrument", nil},
		{&f.basis, "basis", []string{"measured", "stated", "estimated"}},
		{&f.lay, "lay", []string{"along", "face"}},
		{&f.tag, "tag", nil},
		{&f.note, "note", nil},
		{&f.by, "by", []string{"builder"}},
		{&f.replaces, "replaces", nil},
		{&f.title, "new", nil},
	} {
		flags.StringVar(t.to, t.name, "", p.Language.Say("help.flag."+t.name))
		offer := cobra.FixedCompletions(t.choices, cobra.ShellCompDirectiveNoFileComp)
		_ = c.RegisterFlagCompletionFunc(t.name, offer) // errs only for a name that is not there
	}
	flags.IntVar(&f.setup, "setup", 0, p.Language.Say("help.flag.setup"))
	flags.IntVar(&f.way, "way", 0, p.Language.Say("help.flag.way"))
	flags.BoolVar(&f.yes, "yes", false, p.Language.Say("help.flag.yes"))
	flags.BoolVar(&f.json, "json", false, p.Language.Say("help.flag.json"))
}

// openBook opens the build file, or starts it where a title for a new one was given.
func (p Program) openBook(path, title string, start bool) (*logbook.Book, error) {
	src := p.authored()
	if !start {
		book, err := logbook.OpenFile(path, src)
		if errors.Is(err, os.ErrNotExist) {
			return nil, fmt.Errorf("%s: there is no such file; --new TITLE starts one", path)
		}
		return book, err
	}
	if strings.TrimSpace(title) == "" {
		return nil, errors.New("--new wants a title for the build")
	}
	return logbook.NewFile(path, title, measure.NewLayout(), src)
}

// entry makes the entry that the arguments describe. b is the build that it goes to.
func (f addFlags) entry(point, value string, setupSaid bool, b *measure.Build) (logbook.Entry, error) {
	pt, ok := measure.PointOf(point)
	if !ok {
		return logbook.Entry{}, fmt.Errorf("%.60q is not a point; `yokebook points` lists them", point)
	}
	e := logbook.Entry{
		Point: pt.Key, Basis: f.basisOf(pt), Setup: f.setup, Way: f.way, Lay: f.lay, Instrument: f.instrument,
		Tag: f.tag, Note: strings.TrimSpace(f.note), By: strings.TrimSpace(f.by), Replaces: measure.ID(f.replaces),
	}
	var err error
	if e.Value, e.Entered, e.Unit, err = f.value(pt, value); err != nil {
		return e, err
	}
	if f.height != "" {
		if e.Height, _, _, err = measure.ParseEntry(f.height, measure.Length, "mm"); err != nil {
			return e, fmt.Errorf("height: %w", err)
		}
	}
	if e.State, err = f.state(e.Basis); err != nil {
		return e, err
	}
	if setupSaid && f.setup < 1 {
		return e, fmt.Errorf("setup %d: setups count from 1", f.setup)
	}
	if !setupSaid {
		e.Setup = newestSetup(b, e.State)
	}
	return e, nil
}

func (f addFlags) basisOf(pt measure.Point) measure.Basis {
	switch {
	case f.basis != "":
		return measure.Basis(f.basis)
	case pt.Basis != "":
		return pt.Basis
	}
	return measure.Measured
}

// value reads the number or text as it was typed, in the unit that was said or the point's own.
func (f addFlags) value(pt measure.Point, typed string) (measure.Value, string, measure.Unit, error) {
	unit := pt.Quantity.Base()
	if f.unit != "" {
		known, ok := measure.UnitOf(f.unit)
		if !ok {
			return measure.Value{}, "", "", fmt.Errorf("unit %.20q is not known; use one of %s", f.unit, strings.Join(unitNames(), ", "))
		}
		unit = known.Unit
	}
	value, entered, unit, err := measure.ParseEntry(strings.TrimSpace(typed), pt.Quantity, unit)
	if err != nil {
		return value, entered, unit, fmt.Errorf("%s: %w", pt.Key, err)
	}
	return value, entered, unit, nil
}

// state is how the vehicle stood. What is stated holds in every state and is a bench reading.
func (f addFlags) state(basis measure.Basis) (measure.State, error) {
	if f.ride == "" && f.load == "" {
		if basis == measure.Stated {
			return measure.OffBench, nil
		}
		return measure.State{}, errors.New("how the vehicle stood is missing; use --ride droop, ride or bump with --load none, kerb " +
			"or laden, or --ride bench")
	}
	s := measure.State{Ride: measure.Ride(f.ride), Load: measure.Load(f.load)}
	return measure.ParseState(s.String())
}

// newestSetup is the newest setup in which something was read in this state; 0 when nothing was,
// which leaves it to the logbook.
func newestSetup(b *measure.Build, s measure.State) int {
	newest := 0
	for _, r := range b.Readings {
		if r.State() == s {
			newest = max(newest, r.Setup)
		}
	}
	return newest
}

func unitNames() []string {
	out := make([]string, len(measure.Units))
	for i, u := range measure.Units {
		out[i] = string(u.Unit)
	}
	return out
}

// ask ends add with the doubts, in one line.
func (p Program) ask(doubts []logbook.Doubt) error {
	return askError(p.Language.Say("cli.ask", strings.Join(p.Language.Messages(doubts), "; ")))
}
