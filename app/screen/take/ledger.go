package take

import (
	"slices"
	"strings"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
)

// Record is a reading of the build with what became of it.
type Record struct {
	Reading  measure.Reading
	Standing measure.Standing
	Reason   string // why it was struck
	hash     string
}

// Records are all readings, the newest first by what their devices said; those that stand for
// nothing any more too.
func (m *Model) Records() []Record {
	b := m.log.Build()
	out := make([]Record, len(b.Readings))
	for i, standing := range b.Standings(document.Hash) {
		r := b.Readings[i]
		out[i] = Record{Reading: r, Standing: standing, hash: document.Hash(r)}
		for _, s := range b.Strikes {
			if s.Reading == r.ID && (s.Content == "" || s.Content == out[i].hash) {
				out[i].Reason = s.Reason
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Record) int {
		if c := readAt(b.Reading).Compare(readAt(a.Reading)); c != 0 {
			return c
		}
		return strings.Compare(string(b.Reading.ID), string(a.Reading.ID))
	})
	return out
}

// ByPoint reports that the readings stand by what was read, else in the order of time.
func (m *Model) ByPoint() bool { return m.byPoint }

// SwitchOrder changes between the two orders.
func (m *Model) SwitchOrder() { m.byPoint = !m.byPoint }

// RecordsByPoint are all readings in the order of the table of points, those of one point newest first.
func (m *Model) RecordsByPoint() []Record {
	place := map[string]int{}
	for i, p := range measure.Points {
		place[p.Key] = i
	}
	out := m.Records()
	slices.SortStableFunc(out, func(a, b Record) int { return place[a.Reading.Point] - place[b.Reading.Point] })
	return out
}

// readAt is when a reading was kept; the beginning of time where it does not say so.
func readAt(r measure.Reading) time.Time {
	at, err := time.Parse(time.RFC3339Nano, r.At)
	if err != nil {
		return time.Time{}
	}
	return at
}

// OpenRecords shows all readings.
func (m *Model) OpenRecords() { m.open(Records) }

// OpenRecord shows one reading.
func (m *Model) OpenRecord(r Record) {
	m.record = r.hash
	m.open(OneRecord)
}

// OpenedRecord is the reading of the page OneRecord as it is now; false where there is none.
func (m *Model) OpenedRecord() (Record, bool) {
	for _, r := range m.Records() {
		if r.hash == m.record {
			return r, true
		}
	}
	return Record{}, false
}

// ReplacedBy is the reading that stands in place of another; false where none does.
func (m *Model) ReplacedBy(id measure.ID) (measure.Reading, bool) {
	for _, r := range m.Records() {
		if r.Reading.Replaces == id && r.Standing != measure.Struck {
			return r.Reading, true
		}
	}
	return measure.Reading{}, false
}

// Repeat is one of several readings of one point in one state and setup.
type Repeat struct {
	Reading measure.Reading
	Apart   bool // the one that stands apart from the others
}

// Repeats are the readings of the newest one's point, state and setup that count, the oldest first.
func (m *Model) Repeats() []Repeat {
	if m.kept == nil {
		return nil
	}
	k := m.kept.Reading
	apart := m.apart(k)
	var out []Repeat
	for _, r := range slices.Backward(m.Records()) {
		is := r.Reading
		if r.Standing == measure.Current && is.Point == k.Point && is.State() == k.State() && is.Setup == k.Setup && is.Tag == k.Tag {
			out = append(out, Repeat{is, is.ID == apart})
		}
	}
	return out
}

// apart is the reading that the finding about the repeats of r marks; empty where it marks none.
func (m *Model) apart(r measure.Reading) measure.ID {
	for _, f := range m.log.Findings() {
		if f.Check == "reading.spread" && f.Subject == r.Point && f.State == r.State() && f.Weakest != nil && f.Weakest.Reading != nil {
			return *f.Weakest.Reading
		}
	}
	return ""
}
