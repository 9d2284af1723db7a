package cli

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"yokebook/measure"
	"yokebook/measure/document"
)

func (p Program) strike() *cobra.Command {
	var reason, content string
	var asJSON bool
	c := p.verb("strike FILE READING --reason TEXT [--content HASH] [--json]", p.exactly(2), func(args []string) error {
		if strings.TrimSpace(reason) == "" {
			return errors.New("the reason is missing; use --reason TEXT to say why the reading is struck")
		}
		book, err := p.openBook(args[0], "", false)
		if err != nil {
			return err
		}
		defer book.Close()
		r, content, err := toStrike(book.Build(), args[1], content)
		if err != nil {
			return err
		}
		change, err := book.StrikeRecord(r.ID, content, reason)
		if err != nil {
			return err
		}
		if asJSON {
			return p.printChange(book, change, true)
		}
		p.say("cli.struck", r.Point, p.Language.Entered(r), r.State().String(), r.Setup, string(r.ID))
		p.printChanged(change)
		return nil
	})
	c.Flags().StringVar(&reason, "reason", "", p.Language.Say("help.flag.reason"))
	c.Flags().StringVar(&content, "content", "", p.Language.Say("help.flag.content"))
	c.Flags().BoolVar(&asJSON, "json", false, p.Language.Say("help.flag.json"))
	c.ValidArgsFunction = completeFile
	return c
}

// toStrike finds the record that the arguments mean, and the content hash to name it by where two
// records share its id.
func toStrike(b *measure.Build, end, content string) (measure.Reading, string, error) {
	id, err := idEnding(b, end)
	if err != nil {
		return measure.Reading{}, "", err
	}
	var same, match []measure.Reading
	hex := strings.TrimPrefix(content, "sha256:")
	for _, r := range b.Readings {
		if r.ID == id {
			same = append(same, r)
			if strings.HasPrefix(strings.TrimPrefix(document.Hash(r), "sha256:"), hex) {
				match = append(match, r)
			}
		}
	}
	switch {
	case len(match) == 1 && content == "":
		return match[0], "", nil
	case len(match) == 1:
		return match[0], document.Hash(match[0]), nil
	}
	return measure.Reading{}, "", fmt.Errorf("the records of reading %s are %s; name one with --content", id, contents(same))
}

// contents tells records of one id apart: their values and the beginnings of their hashes.
func contents(records []measure.Reading) string {
	out := make([]string, len(records))
	for i, r := range records {
		out[i] = fmt.Sprintf("%s %s (--content %.8s)", r.Value.Token(), r.Unit, strings.TrimPrefix(document.Hash(r), "sha256:"))
	}
	return strings.Join(out, " and ")
}

// idEnding finds the one reading whose id is as typed, or ends so, as findings show it.
func idEnding(b *measure.Build, typed string) (measure.ID, error) {
	end := strings.TrimLeft(strings.TrimSpace(typed), "….")
	found := map[measure.ID]bool{}
	var id measure.ID
	for _, r := range b.Readings {
		if end != "" && strings.HasSuffix(string(r.ID), end) {
			id, found[r.ID] = r.ID, true
		}
	}
	switch len(found) {
	case 1:
		return id, nil
	case 0:
		return "", fmt.Errorf("no reading of this build ends with %.60q; `yokebook check FILE` names readings by the ends of their ids", typed)
	}
	return "", fmt.Errorf("%d readings end with %.60q; type more of the id", len(found), typed)
}
