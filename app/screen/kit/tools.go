// Package kit is the state of the pages of instruments: what is known of each tool of a build, what
// is due, and the form in which one is added or changed. It knows no toolkit.
package kit

import (
	"slices"
	"time"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// Zero is what a reversal found in a setup.
type Zero struct {
	Setup int
	Value float64   // what the tool shows too much, in degrees
	Doubt float64   // standard uncertainty
	At    time.Time // when the newest of its readings was taken; zero where they don't say
}

// Tool is an instrument of a build with what it was used for.
type Tool struct {
	measure.Instrument
	Readings int       // current ones that were taken with it
	Last     time.Time // when the newest of them was taken; zero: never, or not said
	Zeros    []Zero    // by setup, the newest first
	Setup    int       // the vehicle stands in it now
	Turns    bool      // its zero is found by reversal
}

// Due reports that the zero was not found in the setup in which the vehicle stands.
func (t Tool) Due() bool { return t.Turns && (len(t.Zeros) == 0 || t.Zeros[0].Setup != t.Setup) }

// Tools lists the instruments of a build in the order of their ids, as a setup stands.
func Tools(b *measure.Build, findings []checks.Finding, setup int) []Tool {
	current := b.CurrentReadings(document.Hash)
	var out []Tool
	for _, in := range b.Instruments {
		t := Tool{Instrument: in, Setup: setup, Turns: in.Quantity() == measure.Angle}
		for _, r := range current {
			if r.Instrument == in.ID {
				t.Readings++
				t.Last = later(t.Last, r)
			}
		}
		t.Zeros = zeros(in.ID, current, findings)
		out = append(out, t)
	}
	slices.SortStableFunc(out, func(a, b Tool) int {
		switch {
		case a.ID < b.ID:
			return -1
		case a.ID > b.ID:
			return 1
		}
		return 0
	})
	return out
}

// later is the later of a time and that of a reading.
func later(t time.Time, r measure.Reading) time.Time {
	if at, err := time.Parse(time.RFC3339Nano, r.At); err == nil && at.After(t) {
		return at
	}
	return t
}

// zeros collects what reversals of a tool found, as the findings tell it.
func zeros(tool string, current []measure.Reading, findings []checks.Finding) []Zero {
	var out []Zero
	for _, f := range findings {
		if f.Check != "reading.zero" || f.Subject != tool {
			continue
		}
		for _, n := range f.Notes {
			if z, ok := zeroOf(n); ok {
				for _, r := range current {
					if r.Instrument == tool && r.Setup == z.Setup && r.Ride != measure.Bench {
						z.At = later(z.At, r)
					}
				}
				out = append(out, z)
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Zero) int { return b.Setup - a.Setup })
	return out
}

func zeroOf(m checks.Message) (Zero, bool) {
	if m.Key != checks.MsgZeroFound || len(m.Args) < 4 {
		return Zero{}, false
	}
	setup, okS := m.Args[1].(int)
	value, okV := m.Args[2].(float64)
	doubt, okD := m.Args[3].(float64)
	return Zero{Setup: setup, Value: value, Doubt: doubt}, okS && okV && okD
}
