package take

import (
	"encoding/json"

	"yokebook/measure"
	"yokebook/measure/route"
)

// keptMark is what the pages about a reading that was kept need to be shown again.
type keptMark struct {
	Reading  measure.ID `json:"reading"`
	Struck   bool       `json:"struck"`
	Findings []string   `json:"findings"` // that it changed, by key
	Next     stopMark   `json:"next"`
	More     bool       `json:"more"`
	Stop     stopMark   `json:"stop"`    // where work stands
	Typed    string     `json:"typed"`   // half typed there
	Written  string     `json:"written"` // half written there
}

// stopMark is a stop of the route.
type stopMark struct {
	Point string `json:"point"`
	State string `json:"state"`
	Tag   string `json:"tag"`
}

func stopMarkOf(s route.Stop) stopMark { return stopMark{s.Point.Key, s.State.String(), s.Tag} }

// stopOf finds the stop again; false where there is none any more.
func (m *Model) stopOf(at stopMark) (route.Stop, bool) {
	state, err := measure.ParseState(at.State)
	if err != nil {
		return route.Stop{}, false
	}
	return m.findTagged(at.Point, state, at.Tag)
}

// lowestMark is the mark of the lowest page, where that is about a reading that was kept: the others
// follow from the stop.
func (m *Model) lowestMark(p Page) []string {
	if m.kept == nil || p != Result && p != Zero {
		return nil
	}
	c := m.kept.Change
	k := keptMark{Reading: m.kept.Reading.ID, Struck: m.kept.Struck, Next: stopMarkOf(c.Next), More: c.More, Stop: stopMarkOf(m.stop),
		Typed: m.typed.text, Written: m.written}
	if m.mending != nil {
		k.Stop, k.Typed, k.Written = stopMarkOf(m.mending.stop), m.mending.typed.text, m.mending.written
	}
	for _, f := range c.Findings {
		k.Findings = append(k.Findings, f.Key())
	}
	data, err := json.Marshal(k)
	if err != nil { // of plain members; work then goes on at the next stop
		return nil
	}
	return []string{string(p) + ":" + string(data)}
}

// reopenKept shows a page about a reading that was kept. It reports false where the build does not bear
// it out any more; work then goes on at the next stop.
func (m *Model) reopenKept(p Page, about string) bool {
	var k keptMark
	if json.Unmarshal([]byte(about), &k) != nil {
		return false
	}
	r := m.reading(k.Reading)
	stop, ok := m.stopOf(k.Stop)
	if r.ID == "" || !ok {
		return false
	}
	kept := &Kept{Reading: r, Struck: k.Struck}
	kept.Change.Reading = r.ID
	if kept.Change.Next, kept.Change.More = m.log.Next(); k.More {
		if next, ok := m.stopOf(k.Next); ok {
			kept.Change.Next, kept.Change.More = next, true
		}
	}
	for _, key := range k.Findings {
		for _, f := range m.log.Findings() {
			if f.Key() == key {
				kept.Change.Findings = append(kept.Change.Findings, f)
			}
		}
	}
	m.kept, m.stop, m.typed, m.written = kept, stop, TypedOf(k.Typed), k.Written
	m.show(p)
	return true
}
