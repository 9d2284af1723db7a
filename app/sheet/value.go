package sheet

import (
	"math"
	"strings"

	"yokebook/checks"
	"yokebook/measure"
)

// value writes what is known of a point, whatever the vehicle stood like: as it was read, with the word
// for a value that was stated or estimated; not read where nobody did.
func (m *maker) value(point string) string {
	list := m.read[point]
	switch len(list) {
	case 0:
		return m.derived(point)
	case 1:
		return m.marked(list[0])
	}
	for _, state := range []measure.State{measure.OffBench, measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump} {
		if n, ok := m.sight.Number(point, state); ok {
			return m.says.Say("sheet.mean", m.number(n, point), len(list))
		}
	}
	return m.marked(list[0])
}

// derived writes a point that follows from other readings, with that word.
func (m *maker) derived(point string) string {
	if n, ok := m.sight.Number(point, measure.RideKerb); ok {
		return m.says.Say("sheet.derived", m.number(n, point))
	}
	return m.says.Say("sheet.unread")
}

// marked writes one reading with what it is, where it was not measured.
func (m *maker) marked(r measure.Reading) string {
	p, _ := measure.PointOf(r.Point)
	text := m.says.AsRead(r)
	if code, ok := r.Value.Float(); ok {
		for _, c := range p.Codes {
			if float64(c.Value) == code {
				text = m.says.Code(p, c)
			}
		}
	}
	switch {
	case r.Basis == measure.Estimated, r.Basis == measure.Stated && p.Quantity != measure.Text && p.Group != measure.GroupOrder:
		return m.says.Say("sheet.basis", text, m.says.Basis(r.Basis))
	}
	return text
}

func (m *maker) number(n checks.Number, point string) string {
	p, _ := measure.PointOf(point)
	text := m.says.WithDoubt(n.Value, string(p.Quantity.Base()), (n.High-n.Low)/2)
	if n.Stated {
		return m.says.Say("sheet.basis", text, m.says.Basis(measure.Stated))
	}
	return text
}

// known reports a point that somebody read, stated or estimated.
func (m *maker) known(point string) bool { return len(m.read[point]) > 0 }

// name is what a point is called; those of the order go without the word, which stands above them.
func (m *maker) name(point string) string {
	if own, ok := strings.CutPrefix(point, "order."); ok {
		return m.says.Dimension(own)
	}
	return m.says.Point(point)
}

// pair is the fact of one point.
func (m *maker) pair(point string) Pair { return Pair{m.name(point), m.value(point)} }

// span writes a number with its doubt; not known where it is nil.
func (m *maker) span(s *checks.Span, unit string) string {
	if s == nil || math.IsNaN(s.Value) {
		return m.says.Say("sheet.unknown")
	}
	return m.says.WithDoubt(s.Value, unit, (s.High-s.Low)/2)
}

// found writes the value of a finding with its doubt and the word for a computed one; waiting where it
// has none.
func (m *maker) found(f checks.Finding) string {
	if f.Value == nil {
		return m.says.Verdict(checks.Waiting)
	}
	text := m.bare(f)
	switch {
	case f.Predicted:
		return m.says.Say("sheet.predicted", text)
	case len(f.RestsOn) > 0:
		return m.says.Say("sheet.resting", text)
	}
	return text
}

// bare writes the value of a finding and its interval.
func (m *maker) bare(f checks.Finding) string {
	w := m.says.Finding(f)
	return strings.TrimSpace(w.Value + " " + w.Interval)
}

func halfOf(f checks.Finding) float64 {
	if f.Low == nil || f.High == nil {
		return 0
	}
	return (*f.High - *f.Low) / 2
}
