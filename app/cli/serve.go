package cli

import (
	"context"
	"errors"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
	"yokebook/app/places"
	"yokebook/app/words"
	"yokebook/measure"
	buildsync "yokebook/sync"
	"yokebook/sync/serve"
)

// Where serve listens: by itself alone, or on every network that this machine is on.
const (
	listenHere       = "127.0.0.1:8417"
	listenOnNetworks = ":8417"
)

// serveFlags are the flags of serve as they were typed.
type serveFlags struct {
	network, paired bool
	listen, unpair  string
}

func (p Program) serve() *cobra.Command {
	var f serveFlags
	c := p.verb("serve [--network | --listen HOST:PORT] [--paired] [--unpair DEVICE]", p.exactly(0), func([]string) error {
		return p.withPlaces(func(ps *places.Places, shelf *logbook.Shelf) error {
			switch {
			case f.paired:
				return p.printPaired(ps)
			case f.unpair != "":
				return p.unpair(ps, f.unpair)
			}
			return p.serveBuilds(ps, shelf, f)
		})
	})
	flags := c.Flags()
	flags.SortFlags = false
	flags.BoolVar(&f.network, "network", false, p.Language.Say("help.flag.network"))
	flags.StringVar(&f.listen, "listen", "", p.Language.Say("help.flag.listen"))
	flags.BoolVar(&f.paired, "paired", false, p.Language.Say("help.flag.paired"))
	flags.StringVar(&f.unpair, "unpair", "", p.Language.Say("help.flag.unpair"))
	c.ValidArgsFunction = cobra.NoFileCompletions
	return c
}

func (p Program) serveBuilds(ps *places.Places, shelf *logbook.Shelf, f serveFlags) error {
	if f.network && f.listen != "" {
		return errors.New("--network and --listen are two ways to say the same; use one")
	}
	listen := f.listen
	switch {
	case f.network:
		listen = listenOnNetworks
	case listen == "":
		listen = listenHere
	}
	ctx, stop := p.untilStopped()
	defer stop()
	err := ps.Serve(ctx, shelf, places.Host{
		Listen:  listen,
		Invited: p.invite,
		Paired:  func(d serve.Device) { p.say("cli.serve.paired", words.Plain(d.Name), string(d.ID)) },
		Passed:  p.printPass,
	})
	if errors.Is(err, context.Canceled) {
		return nil
	}
	return err
}

// invite shows what another device needs to be paired.
func (p Program) invite(i serve.Invitation) {
	p.say("cli.serve.at", i.Address)
	p.say("cli.serve.pair", i.String())
	p.printQR(i.String())
}

// printPass says of a pass what came and went; nothing when nothing did.
func (p Program) printPass(r buildsync.Report, err error) {
	if err != nil {
		p.say("cli.serve.failed", err.Error())
		return
	}
	for _, b := range r.Builds {
		if b.Came.Total()+b.Went.Total() > 0 {
			p.say("cli.serve.moved", words.Plain(b.Title), string(b.ID), inWords(b.Came), inWords(b.Went))
		}
	}
	for _, f := range r.Faults {
		p.say("cli.sync."+string(f.Kind), words.Plain(f.Line))
	}
}

func (p Program) printPaired(ps *places.Places) error {
	all, err := ps.Paired()
	if err != nil {
		return err
	}
	if len(all) == 0 {
		p.say("cli.serve.none")
		return nil
	}
	rows := make([][]string, len(all))
	for i, d := range all {
		rows[i] = []string{string(d.ID), words.Plain(d.Name), d.At.UTC().Format("2006-01-02T15:04:05Z")}
	}
	return p.table(p.headings("paired", "device", "name", "since"), rows)
}

func (p Program) unpair(ps *places.Places, device string) error {
	id, err := measure.ParseID(device)
	if err != nil {
		return err
	}
	if err := ps.Unpair(id); err != nil {
		return err
	}
	p.say("cli.serve.unpaired", device)
	return nil
}
