package sheet

import (
	"math"

	"yokebook/checks"
	"yokebook/measure"
)

// lengths lists how long the shaft is over the travel and fully closed and open, joint centre to joint
// centre and face to face; where the slip stands; and what stroke that takes.
func (m *maker) lengths() {
	m.heading("sheet.lengths")
	faces := m.faces()
	t := Table{Columns: []Column{m.column(3.4, "sheet.column.state"), m.column(1.6, "sheet.column.hub"), m.column(2.2, "sheet.column.centres"),
		m.column(2.2, faces.head), m.column(1.8, "sheet.column.slip"), m.column(1.5, "sheet.column.how")}}
	if span := m.closed(); span != nil {
		t.Rows = append(t.Rows, m.lengthRow(m.says.Say("sheet.closed"), nil, span, faces, m.says.Number(0, "mm", 0), "sheet.how.worked"))
	}
	for _, r := range m.lengthStates() {
		how := "sheet.how.read"
		if r.row.Predicted {
			how = "sheet.how.computed"
		}
		t.Rows = append(t.Rows, m.lengthRow(r.name, &r.row, r.row.Length, faces, m.span(r.row.Exposed, "mm"), how))
	}
	if span, usable := m.closed(), m.bench("slip.usable"); span != nil && usable != nil {
		t.Rows = append(t.Rows, m.lengthRow(m.says.Say("sheet.open"), nil, plus(span, usable), faces, m.span(usable, "mm"), "sheet.how.stroke"))
	}
	m.grid(t)
	if len(t.Rows) == 0 {
		m.text(Alarm, "sheet.no_lengths")
	}
	var pairs []Pair
	if m.build.Layout.Shafts == 2 {
		pairs = append(pairs, m.pair("front_shaft.length"))
	}
	if m.known("shaft.gap") || faces.add == nil {
		pairs = append(pairs, m.pair("shaft.gap"))
	}
	pairs = append(pairs, m.pair("front_end.face_to_joint"), m.pair("rear_end.face_to_joint"))
	if f, ok := m.find("slip.length", ""); ok {
		pairs = append(pairs, Pair{m.says.Say("sheet.length.make." + m.build.Layout.Slip), m.found(f)})
	}
	pairs = append(pairs, m.notesOf("slip.length", checks.MsgSlipExposed, "sheet.length.ride")...)
	m.facts(append(pairs, m.stroke()...))
}

// lengthRow is one line of the table of lengths.
func (m *maker) lengthRow(name string, row *checks.SweepRow, length *checks.Span, faces faces, slip, how string) []Cell {
	hub := ""
	if row != nil && row.HeightMM > 0 {
		hub = m.says.Number(math.Round(row.HeightMM), "mm", 0)
	}
	full := m.says.Say("sheet.unknown")
	if length != nil && faces.add != nil {
		full = m.span(plus(length, faces.add), "mm")
	}
	return cells(name, hub, m.span(length, "mm"), full, slip, m.says.Say(how))
}

// faces is what is added to the length between joint centres to reach the flange faces.
type faces struct {
	head string
	add  *checks.Span
}

// faces: at both ends; at the rear end alone where the front end slides into the gearbox or hangs on a
// second shaft.
func (m *maker) faces() faces {
	front, rear := m.bench("front_end.face_to_joint"), m.bench("rear_end.face_to_joint")
	if m.build.Layout.Slip == "gearbox" || m.build.Layout.Shafts == 2 {
		return faces{"sheet.column.half", rear}
	}
	if front == nil || rear == nil {
		return faces{"sheet.column.faces", nil}
	}
	return faces{"sheet.column.faces", plus(front, rear)}
}

// bench is what is known of a point that holds in every state.
func (m *maker) bench(point string) *checks.Span {
	n, ok := m.sight.Number(point, measure.OffBench)
	if !ok {
		return nil
	}
	return &checks.Span{Value: n.Value, Low: n.Low, High: n.High}
}

// plus adds two numbers that have no cause of doubt in common: halves of their intervals add in squares
// (JCGM 100:2008, 5.1.2; from memory).
func plus(a, b *checks.Span) *checks.Span { return joined(a, b, a.Value+b.Value) }

func minus(a, b *checks.Span) *checks.Span { return joined(a, b, a.Value-b.Value) }

func joined(a, b *checks.Span, value float64) *checks.Span {
	p, q := (a.High-a.Low)/2, (b.High-b.Low)/2
	half := math.Sqrt(p*p + q*q)
	return &checks.Span{Value: value, Low: value - half, High: value + half}
}

// closed is the length fully closed of the shaft as it was read: its length in a state less what the
// spline stood out there. Nil where the two were not read together, or the slip is in the gearbox.
func (m *maker) closed() *checks.Span {
	if m.build.Layout.Slip == "gearbox" {
		return nil
	}
	for _, state := range []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump} {
		for _, r := range m.sweep.Rows {
			if r.State == state && r.Length != nil && r.Exposed != nil && !r.Predicted {
				return minus(r.Length, r.Exposed)
			}
		}
	}
	return nil
}

// named is a row of the sweep with what it is called.
type named struct {
	name string
	row  checks.SweepRow
}

// lengthStates are the rows that a builder needs: the ends of the travel, what was read, the shortest
// and the longest, in the order of the travel from the bump stops.
func (m *maker) lengthStates() []named {
	rows := m.sweep.Rows
	var out []named
	if len(rows) == 0 {
		return nil
	}
	short, long := extremes(rows)
	for i := len(rows) - 1; i >= 0; i-- {
		r := rows[i]
		name := ""
		switch {
		case r.State != (measure.State{}):
			name = m.says.State(r.State)
		case i == len(rows)-1:
			name = m.says.Say("sheet.bump")
		case i == 0:
			name = m.says.Say("sheet.droop")
		}
		switch {
		case i == short && name != "":
			name = m.says.Say("sheet.shortest.at", name)
		case i == long && name != "":
			name = m.says.Say("sheet.longest.at", name)
		case i == short:
			name = m.says.Say("sheet.shortest")
		case i == long:
			name = m.says.Say("sheet.longest")
		}
		if name != "" && (r.Length != nil || r.Exposed != nil) {
			out = append(out, named{name, r})
		}
	}
	return out
}

// extremes are the rows in which the sliding part is least and most drawn out; -1 where nothing moves.
func extremes(rows []checks.SweepRow) (short, long int) {
	short, long = -1, -1
	for i, r := range rows {
		if r.Slide == nil {
			continue
		}
		if short < 0 || r.Slide.Value < rows[short].Slide.Value {
			short = i
		}
		if long < 0 || r.Slide.Value > rows[long].Slide.Value {
			long = i
		}
	}
	if short == long {
		return -1, -1
	}
	return short, long
}

// stroke is what the travel takes of the sliding spline, what was read of it and what is asked for.
func (m *maker) stroke() []Pair {
	var pairs []Pair
	if f, ok := m.find("slip.travel", ""); ok {
		pairs = append(pairs, Pair{m.says.Check(f.Check, ""), m.found(f)})
	}
	pairs = append(pairs, m.notesOf("slip.travel", checks.MsgSlipNeeds, "sheet.stroke.needed")...)
	pairs = append(pairs, m.pair("slip.usable"))
	if m.known("order.stroke") {
		pairs = append(pairs, Pair{m.says.Say("sheet.stroke.asked"), m.value("order.stroke")})
	}
	if m.known("order.tolerance") {
		return append(pairs, Pair{m.name("order.tolerance"), m.says.Say("sheet.either_way", m.value("order.tolerance"))})
	}
	return append(pairs, Pair{m.name("order.tolerance"), m.says.Say("sheet.tolerance", m.setting("order.tolerance"))})
}

// notesOf is the number that a note of a finding carries, as a fact.
func (m *maker) notesOf(check, note, name string) []Pair {
	f, ok := m.find(check, "")
	if !ok {
		return nil
	}
	for _, n := range f.Notes {
		if n.Key == note && len(n.Args) > 0 {
			if mm, ok := n.Args[0].(float64); ok {
				return []Pair{{m.says.Say(name), m.says.Number(mm, "mm", halfOf(f))}}
			}
		}
	}
	return nil
}
