package measure

import (
	"encoding/json"
	"fmt"
	"sort"
)

// FormatName is the format of build files that this program writes.
const FormatName = "yokebook-build/1"

// Fields are members that this version does not know, each as canonical JSON. They are kept value
// for value so that a newer program finds them again.
type Fields map[string]json.RawMessage

// Build is one shaft line of one vehicle: a set of records that never change, and the plain keys
// (title, note, layout, instruments, limits) that are derived from the heads where there are any.
type Build struct {
	ID          ID
	Title       string
	Note        string // free text about the build; a demo says here that it is invented
	Layout      Layout
	Instruments []Instrument           // sorted by id
	Limits      map[string]LimitChoice // limit key → what this build uses instead of the default
	Heads       []Head
	Readings    []Reading
	Strikes     []Strike
	Skips       []Skip
	Unknown     Fields
	Newer       int                          // N of the newer format "yokebook-build/N" it was read from; 0: FormatName
	Foreign     map[string][]json.RawMessage // list name → records of a newer format that this version can't understand
}

// LimitChoice is a limit that a person picked for this build, with the reason.
type LimitChoice struct {
	Value  Value // in the limit's own unit
	Upper  Value // only for limits of sense "between"
	Reason string
	// Unknown members; a choice of a newer format may hold nothing else: Value is then absent and
	// the choice is only carried.
	Unknown Fields
}

// Strike takes a reading out of use without removing it. Content names one of two records that
// share an id ("sha256:<hex>" of its canonical bytes); empty means every record of that id.
type Strike struct {
	ID      ID // may be absent in files written by hand
	Reading ID
	Content string
	Reason  string
	At      string
	Device  ID
	Unknown Fields
}

// Skip says why a stop of the route was left out. A later reading at that stop outranks it. One that
// names another in Back leaves nothing out: it takes that one back.
type Skip struct {
	ID      ID
	Point   string
	Ride    Ride
	Load    Load
	Tag     string // tells obstacles apart; "" elsewhere
	Back    ID     // the skip that is taken back; "" where this is one
	Reason  string
	At      string
	Device  ID
	Unknown Fields
}

// State returns the state of the skipped stop.
func (s Skip) State() State { return State{Ride: s.Ride, Load: s.Load} }

// Clock is a hybrid logical clock: milliseconds since 1970 and a counter within one of them. It
// orders concurrent heads and nothing else.
type Clock struct {
	MS int64
	N  int64
}

// Less orders clocks.
func (c Clock) Less(o Clock) bool {
	if c.MS != o.MS {
		return c.MS < o.MS
	}
	return c.N < o.N
}

// Head is one change of a field that is not a reading. Field is "title", "note", "layout.<member>",
// "instruments.<id>" or "limits.<key>"; "layout", "instruments" and "limits" as a whole are
// accepted too. Value is canonical JSON; null takes a limit choice back.
type Head struct {
	ID       ID
	Field    string
	Value    json.RawMessage
	Clock    Clock
	At       string
	Device   ID
	Replaces ID
	Unknown  Fields
}

// Validate says in one line what is wrong with the build and where; nil when nothing is.
// Implausible values and contradictory states are no errors: they become findings.
func (b *Build) Validate() error {
	if err := b.ValidateFrame(); err != nil {
		return err
	}
	known := b.KnownInstruments()
	for i := range b.Readings {
		if err := b.Readings[i].Validate(known); err != nil {
			return fmt.Errorf("readings[%d].%w", i, err)
		}
	}
	for i, s := range b.Strikes {
		if err := s.Validate(); err != nil {
			return fmt.Errorf("strikes[%d].%w", i, err)
		}
	}
	for i, s := range b.Skips {
		if err := s.Validate(); err != nil {
			return fmt.Errorf("skips[%d].%w", i, err)
		}
	}
	for i, h := range b.Heads {
		if err := h.Validate(); err != nil {
			return fmt.Errorf("heads[%d].%w", i, err)
		}
	}
	return nil
}

// ValidateFrame is Validate without the records: for a build whose records were each looked at already.
func (b *Build) ValidateFrame() error {
	if _, err := ParseID(string(b.ID)); err != nil {
		return fmt.Errorf("id: %w", err)
	}
	if err := b.Layout.Validate(); err != nil {
		return fmt.Errorf("layout.%w", err)
	}
	for i, in := range b.Instruments {
		if err := in.Validate(); err != nil {
			return fmt.Errorf("instruments[%d].%w", i, err)
		}
	}
	return b.validateLimits()
}

// LimitForm says what a choice of limit looks like.
const LimitForm = `write it as {"value": number, "upper": number where there are two, "reason": "why"}`

func (b *Build) validateLimits() error {
	keys := make([]string, 0, len(b.Limits))
	for key := range b.Limits {
		keys = append(keys, key)
	}
	sort.Strings(keys)
	for _, key := range keys {
		if b.Newer == 0 && b.Limits[key].Value.IsZero() {
			return fmt.Errorf("limits.%.60s: %s", key, LimitForm)
		}
	}
	return nil
}

// Validate says which member is wrong.
func (s Strike) Validate() error {
	if s.ID != "" {
		if _, err := ParseID(string(s.ID)); err != nil {
			return fmt.Errorf("id: %w", err)
		}
	}
	if _, err := ParseID(string(s.Reading)); err != nil {
		return fmt.Errorf("reading: %w", err)
	}
	return nil
}

// Validate says which member is wrong.
func (s Skip) Validate() error {
	if _, err := ParseID(string(s.ID)); err != nil {
		return fmt.Errorf("id: %w", err)
	}
	if _, ok := PointOf(s.Point); !ok {
		return fmt.Errorf("point: %.60q is not a point; `yokebook points` lists them", s.Point)
	}
	if err := s.State().validate(); err != nil {
		return fmt.Errorf("ride: %w", err)
	}
	if s.Back != "" {
		if _, err := ParseID(string(s.Back)); err != nil {
			return fmt.Errorf("back: %w", err)
		}
	}
	return nil
}

// Validate says which member is wrong.
func (h Head) Validate() error {
	if _, err := ParseID(string(h.ID)); err != nil {
		return fmt.Errorf("id: %w", err)
	}
	if h.Field == "" {
		return fmt.Errorf("field: is missing")
	}
	if h.Clock.MS < 0 || h.Clock.N < 0 {
		return fmt.Errorf("clock: is negative")
	}
	if !json.Valid(h.Value) {
		return fmt.Errorf("value: is missing")
	}
	return nil
}
