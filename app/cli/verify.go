package cli

import (
	"fmt"

	"yokebook/app/logbook"
	"yokebook/app/words"
	"yokebook/measure/store"
)

// verifiedJSON is a build as builds --verify --json prints it.
type verifiedJSON struct {
	Build    string     `json:"build"`
	Title    string     `json:"title"`
	State    string     `json:"state"`
	InFile   int        `json:"in_file"`  // records from the build's own file
	Behind   int        `json:"behind"`   // of these, found behind a damaged place
	Restored int        `json:"restored"` // records that only snapshots have
	Lost     []string   `json:"lost"`     // keys of damaged records that are good nowhere
	Notes    []string   `json:"notes"`
	Damaged  *string    `json:"damaged"` // why it can't be read at all
	Held     *string    `json:"held"`    // who has it open
	Past     []pastJSON `json:"past"`
}

type pastJSON struct {
	At    string   `json:"at"`
	State string   `json:"state"`
	Notes []string `json:"notes"`
}

// verify reads everything back and ends with PersonNeeded when something is not whole.
func (p Program) verify(s *logbook.Shelf, asJSON bool) error {
	list, err := s.Verify()
	if err != nil {
		return err
	}
	if asJSON {
		rows := make([]any, len(list))
		for i, v := range list {
			rows[i] = verifiedToJSON(v)
		}
		err = p.printJSON([]member{{"format", "yokebook-verify/1"}}, "builds", rows)
	} else {
		p.printVerified(list)
	}
	if err != nil {
		return err
	}
	for _, v := range list {
		if v.State != store.IsWhole {
			return errQuiet
		}
	}
	return nil
}

func (p Program) printVerified(list []logbook.Verification) {
	counts := map[store.State]int{}
	for _, v := range list {
		counts[v.State]++
	}
	p.say("cli.verified", counts[store.IsWhole], counts[store.Recovered], counts[store.IsSetAside])
	for _, v := range list {
		fmt.Fprintln(p.Out)
		p.say("cli.verify", string(v.ID), p.Language.Say("store.state."+string(v.State)))
		p.detail("cli.verify.note", words.Plain(v.Title))
		p.detail("cli.verify.damaged", v.Damaged)
		p.detail("cli.verify.held", v.Held)
		for _, line := range p.Language.Messages(v.Notes) {
			p.say("cli.verify.note", line)
		}
		if len(v.Notes) > 0 && v.Held == "" {
			p.say("cli.verify.mend")
		}
		for _, past := range v.Past {
			for _, line := range p.Language.Messages(past.Notes) {
				p.say("cli.verify.past", past.At, line)
			}
		}
	}
}

func verifiedToJSON(v logbook.Verification) verifiedJSON {
	row := verifiedJSON{
		Build: string(v.ID), Title: v.Title, State: string(v.State), InFile: v.Report.InFile, Behind: v.Report.Behind,
		Restored: v.Report.Restored, Lost: listed(v.Report.Lost), Notes: listed(words.English.Messages(v.Notes)),
		Damaged: textOrNull(v.Damaged), Held: textOrNull(v.Held), Past: []pastJSON{},
	}
	for _, past := range v.Past {
		row.Past = append(row.Past, pastJSON{At: past.At, State: string(past.State), Notes: listed(words.English.Messages(past.Notes))})
	}
	return row
}
