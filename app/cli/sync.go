package cli

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
	"yokebook/app/places"
	"yokebook/app/words"
	"yokebook/measure"
	"yokebook/measure/merge"
	"yokebook/measure/store"
	buildsync "yokebook/sync"
	"yokebook/sync/place"
	"yokebook/sync/serve"
)

// syncFlags are the flags of sync as they were typed.
type syncFlags struct {
	all, json, forget, password bool
	user, pin                   string
}

func (p Program) sync() *cobra.Command {
	var f syncFlags
	c := p.verb("sync PLACE [--all] [--json] [--user NAME --password-stdin] [--pin FINGERPRINT] [--forget]", p.exactly(1), func(args []string) error {
		return p.withPlaces(func(ps *places.Places, shelf *logbook.Shelf) error { return p.syncWith(ps, shelf, args[0], f) })
	})
	flags := c.Flags()
	flags.SortFlags = false
	flags.BoolVar(&f.all, "all", false, p.Language.Say("help.flag.all"))
	flags.BoolVar(&f.json, "json", false, p.Language.Say("help.flag.json"))
	flags.StringVar(&f.user, "user", "", p.Language.Say("help.flag.user"))
	flags.BoolVar(&f.password, "password-stdin", false, p.Language.Say("help.flag.password"))
	flags.StringVar(&f.pin, "pin", "", p.Language.Say("help.flag.pin"))
	flags.BoolVar(&f.forget, "forget", false, p.Language.Say("help.flag.forget"))
	c.ValidArgsFunction = func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return nil, cobra.ShellCompDirectiveFilterDirs
	}
	return c
}

// withPlaces opens this device's store and the places that it syncs with.
func (p Program) withPlaces(work func(*places.Places, *logbook.Shelf) error) error {
	return p.onShelf(func(s *logbook.Shelf) error {
		dir, err := p.Home()
		if err != nil {
			return err
		}
		ps := places.Open(dir, p.Sources.Now)
		ps.Wait, ps.Vault = p.Wait, p.Vault
		return work(ps, s)
	})
}

func (p Program) syncWith(ps *places.Places, shelf *logbook.Shelf, address string, f syncFlags) error {
	if f.forget {
		if err := ps.Forget(address); err != nil {
			return err
		}
		p.say("cli.forgotten", address)
		return nil
	}
	ctx, stop := p.untilStopped()
	defer stop()
	address, err := p.letIn(ctx, ps, shelf, address, f)
	if err != nil {
		return err
	}
	report, err := ps.Sync(ctx, shelf, address, places.Options{All: f.all})
	if f.json {
		if err := p.printSyncJSON(report, err == nil && report.OK()); err != nil {
			return err
		}
	} else if err == nil || len(report.Builds) > 0 {
		p.printSync(report, shelf.Device())
	}
	return syncError(report, err)
}

// letIn keeps what was said about how to get in.
func (p Program) letIn(ctx context.Context, ps *places.Places, shelf *logbook.Shelf, address string, f syncFlags) (string, error) {
	if !places.IsServer(address) {
		if f.user != "" || f.password || f.pin != "" {
			return "", errors.New("--user, --password-stdin and --pin are for the address of a server")
		}
		return address, nil
	}
	if serve.IsInvitation(address) {
		return p.accept(ctx, ps, shelf, address)
	}
	if _, err := place.Address(address); err != nil {
		return "", err
	}
	var password string
	if f.password {
		line, err := bufio.NewReader(io.LimitReader(p.In, 4096)).ReadString('\n')
		if err != nil && !errors.Is(err, io.EOF) {
			return "", fmt.Errorf("the password can't be read from the input: %w", err)
		}
		if password = strings.TrimRight(line, "\r\n"); password == "" {
			return "", errors.New("no password came on the input")
		}
	}
	var pin *place.Pin
	if f.pin != "" {
		of, err := place.ParsePin(f.pin)
		if err != nil {
			return "", err
		}
		pin = &of
	}
	if f.user == "" && password == "" && pin == nil {
		return address, nil
	}
	kept, err := ps.Trust(address, f.user, password, pin)
	if err == nil {
		p.sayKept(kept, f.json)
	}
	return address, err
}

// sayKept says where a password went. Output for another program holds nothing else.
func (p Program) sayKept(kept places.Kept, json bool) {
	if kept != places.KeptNowhere && !json {
		p.say("places.kept." + string(kept))
	}
}

// accept pairs this device with the one that showed the invitation.
func (p Program) accept(ctx context.Context, ps *places.Places, shelf *logbook.Shelf, text string) (string, error) {
	i, err := serve.ParseInvitation(text)
	if err != nil {
		return "", err
	}
	address, kept, err := ps.Accept(ctx, shelf.Device(), i)
	if errors.Is(err, store.ErrWrite) {
		return "", err
	}
	if err != nil {
		return "", askError(err.Error())
	}
	p.sayKept(kept, false)
	p.say("cli.sync.accepted", address)
	return address, nil
}

// syncError turns how a pass went into an exit code: a place that failed needs a person.
func syncError(r buildsync.Report, err error) error {
	switch {
	case errors.Is(err, store.ErrWrite), errors.Is(err, context.Canceled):
		return err
	case err != nil:
		return askError(err.Error())
	}
	person := false
	for _, f := range r.Faults {
		if errors.Is(f.Err, store.ErrWrite) {
			return f.Err
		}
		person = person || f.Kind != buildsync.Arriving
	}
	if person {
		return errQuiet
	}
	return nil
}

// printSync prints one paragraph per build on which something happened or which is not synced, one
// line for the others, and what did not work.
func (p Program) printSync(r buildsync.Report, self measure.ID) {
	synced := 0
	for _, b := range r.Builds {
		key := "cli.sync.not"
		if b.Synced {
			key = "cli.sync.build"
			synced++
		}
		p.say(key, words.Plain(b.Title), string(b.ID), b.Here, b.There)
		if b.Came.Total()+b.Went.Total() > 0 {
			p.say("cli.sync.moved", inWords(b.Came), inWords(b.Went))
		}
		if b.LastAt != "" {
			who := string(b.LastDevice)
			if b.LastDevice == self {
				who = p.Language.Say("cli.sync.self")
			}
			p.say("cli.sync.last", b.LastAt, who)
		}
		if b.Conflicts > 0 {
			p.say("cli.sync.conflicts", b.Conflicts)
		}
	}
	for _, f := range r.Faults {
		p.say("cli.sync."+string(f.Kind), words.Plain(f.Line))
	}
	for _, name := range r.Copies {
		p.say("cli.sync.copy", words.Plain(name))
	}
	p.say("cli.synced", synced, len(r.Builds), r.Place, r.Read, r.Skipped, r.Written)
}

// inWords counts records: all of them, and how many are readings.
func inWords(c merge.Counts) string { return fmt.Sprintf("%d (%d)", c.Total(), c.Readings) }

// syncedJSON is a build as --json prints it.
type syncedJSON struct {
	Build      string  `json:"build"`
	Title      string  `json:"title"`
	Here       int     `json:"here"`
	There      int     `json:"there"`
	Came       int     `json:"came"`
	Went       int     `json:"went"`
	LastDevice *string `json:"last_device"`
	LastAt     *string `json:"last_at"`
	Conflicts  int     `json:"conflicts"`
	Synced     bool    `json:"synced"`
}

func (p Program) printSyncJSON(r buildsync.Report, ok bool) error {
	rows := make([]any, len(r.Builds))
	for i, b := range r.Builds {
		rows[i] = syncedJSON{string(b.ID), b.Title, b.Here, b.There, b.Came.Total(), b.Went.Total(),
			textOrNull(string(b.LastDevice)), textOrNull(b.LastAt), b.Conflicts, b.Synced}
	}
	faults := make([]string, len(r.Faults))
	for i, f := range r.Faults {
		faults[i] = f.Line
	}
	head := []member{{"format", "yokebook-synced/1"}, {"place", r.Place}, {"ok", ok}, {"faults", faults},
		{"files_read", r.Read}, {"files_skipped", r.Skipped}, {"files_written", r.Written}}
	return p.printJSON(head, "builds", rows)
}
