package logbook

import (
	"fmt"
	"strings"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store"
)

// Strike takes a reading out of use, with the reason: every record of that id where there are two. It
// errs when the build has no such reading or when it is struck already.
func (b *Book) Strike(reading measure.ID, reason string) (Change, error) {
	return b.StrikeRecord(reading, "", reason)
}

// StrikeRecord is Strike for one of two records that share an id: the one whose content hash
// (document.Hash) is content. With "" it strikes all of them.
func (b *Book) StrikeRecord(reading measure.ID, content, reason string) (Change, error) {
	standings := b.build.Standings(document.Hash)
	var found, open []measure.Reading
	for i, r := range b.build.Readings {
		if r.ID != reading || content != "" && document.Hash(r) != content {
			continue
		}
		found = append(found, r)
		if standings[i] != measure.Struck {
			open = append(open, r)
		}
	}
	switch {
	case len(found) == 0:
		return Change{}, fmt.Errorf("reading %.60q is not in this build; nothing was struck", reading)
	case len(open) == 0:
		return Change{}, fmt.Errorf("reading %s is struck already", reading)
	}
	s := measure.Strike{ID: b.src.NewID(), Reading: reading, Content: content, Reason: strings.TrimSpace(reason),
		At: b.src.at(), Device: b.src.Device}
	next := *b.build
	next.Strikes = insert(b.build.Strikes, s, func(s measure.Strike) measure.ID { return s.ID })
	c, err := b.commit(&next, store.OfStrike(s))
	if err != nil {
		return Change{}, err
	}
	c.Reading = reading
	c.Next, c.More = b.backAt(open[0].Point, open[0].State())
	return c, nil
}
