package logbook

import (
	"encoding/json"
	"fmt"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store"
)

// maxAhead is how far another device's clock may run ahead of ours and still move ours on. One
// tablet set to a wrong year would otherwise stamp every later change.
const maxAhead = 24 * time.Hour

// Set changes a field that is not a reading: "title", "note", "layout.<member>",
// "instruments.<id>", "limits.<key>". The value is JSON; null takes a limit choice back. It errs
// with one line when the build would not be valid with it; then nothing has changed.
func (b *Book) Set(field string, value json.RawMessage) (Change, error) {
	body, err := document.Canonical(value)
	if err != nil {
		return Change{}, fmt.Errorf("%.60s: %w", field, err)
	}
	h := measure.Head{
		ID: b.src.NewID(), Field: field, Value: body, Clock: nextClock(b.build.Heads, b.src.Now()),
		At: b.src.at(), Device: b.src.Device, Replaces: inForce(b.build, field),
	}
	if claims, err := document.Claims(h); err != nil {
		return Change{}, fmt.Errorf("%.60s: %w", field, err)
	} else if len(claims) == 0 {
		return Change{}, fmt.Errorf("%.60q is not a field; use title, note, layout.…, instruments.… or limits.…", field)
	}
	next, err := withHead(b.build, h)
	if err != nil {
		return Change{}, err
	}
	c, err := b.commit(next, store.OfHead(h))
	if err != nil {
		return Change{}, err
	}
	c.Next, c.More = b.Next()
	return c, nil
}

// SetTitle is Set for the title.
func (b *Book) SetTitle(title string) (Change, error) {
	value, err := json.Marshal(title)
	if err != nil {
		return Change{}, fmt.Errorf("title: %w", err)
	}
	return b.Set("title", value)
}

// withHead returns the build with one more head and the plain keys that follow from it.
func withHead(b *measure.Build, h measure.Head) (*measure.Build, error) {
	next := *b
	next.Heads = insert(b.Heads, h, func(h measure.Head) measure.ID { return h.ID })
	if err := document.Derive(&next); err != nil {
		return nil, err
	}
	return &next, next.Validate()
}

// nextClock is the stamp of a new head: the wall clock, or one count after the latest stamp seen
// when that is not behind the wall. Stamps over a day ahead of the wall are not followed.
// Source: hybrid logical clock, Kulkarni et al., "Logical Physical Clocks", 2014 (from memory).
func nextClock(heads []measure.Head, now time.Time) measure.Clock {
	wall := measure.Clock{MS: max(now.UnixMilli(), 0)}
	last := measure.Clock{}
	for _, h := range heads {
		if h.Clock.MS <= wall.MS+maxAhead.Milliseconds() && last.Less(h.Clock) {
			last = h.Clock
		}
	}
	if last.MS < wall.MS {
		return wall
	}
	return measure.Clock{MS: last.MS, N: last.N + 1}
}

// inForce returns the id of the head that decides a field now; empty when nothing speaks of it.
func inForce(b *measure.Build, field string) measure.ID {
	heads := document.InForce(b, field)
	if len(heads) == 0 {
		return ""
	}
	return heads[len(heads)-1].ID
}

// newBuild makes a build whose title and layout stand in heads, so that they merge member by member.
func newBuild(src Sources, title string, layout measure.Layout) (*measure.Build, error) {
	if err := layout.Validate(); err != nil {
		return nil, fmt.Errorf("layout.%w", err)
	}
	b := &measure.Build{ID: src.NewID(), Title: title, Layout: layout}
	add := func(field string, value any) error {
		body, err := json.Marshal(value)
		if err != nil {
			return fmt.Errorf("%s: %w", field, err)
		}
		if body, err = document.Canonical(body); err != nil {
			return fmt.Errorf("%s: %w", field, err)
		}
		b.Heads = append(b.Heads, measure.Head{ID: src.NewID(), Field: field, Value: body,
			Clock: nextClock(b.Heads, src.Now()), At: src.at(), Device: src.Device})
		return nil
	}
	if err := add("title", title); err != nil {
		return nil, err
	}
	if err := add("layout.shafts", layout.Shafts); err != nil {
		return nil, err
	}
	for _, c := range measure.LayoutChoices {
		if member := *layout.Member(c.Member); member != "" {
			if err := add("layout."+c.Member, member); err != nil {
				return nil, err
			}
		}
	}
	if err := document.Derive(b); err != nil {
		return nil, err
	}
	return b, b.Validate()
}
