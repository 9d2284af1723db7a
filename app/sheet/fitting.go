package sheet

import (
	"math"
	"strings"

	"yokebook/checks"
	"yokebook/measure"
)

// asOrdered is the build as it was ordered, beside the one that was made.
type asOrdered struct {
	*maker
	differ []checks.Difference
}

// beforeDriving is what is looked at when the shaft is in, in the order of the work.
var beforeDriving = []string{"sheet.fit.marks", "sheet.fit.clips", "sheet.fit.slip", "sheet.fit.bolts", "sheet.fit.room", "sheet.fit.turn",
	"sheet.fit.oil", "sheet.fit.again"}

// fitting is what the one who fits the shaft needs: where the slip must stand, torques of bolts, what was
// made against what was ordered and what that changes, what to look at before driving, and the first run.
func (m *maker) fitting() {
	m.heading("sheet.fit")
	m.slipStands()
	m.facts([]Pair{m.pair("as_built.front_bolt_torque"), m.pair("as_built.rear_bolt_torque")})
	m.heading("sheet.fit.made")
	m.madeTable()
	m.changed()
	m.heading("sheet.fit.before")
	var list []string
	for _, key := range beforeDriving {
		list = append(list, m.says.Say(key))
	}
	m.items(list)
	m.add(Block{Kind: Alarm, Text: m.says.Caution("caution.firstrun")})
}

// slipStands says how far the slip must stand out in each state that the distance is known in.
func (m *maker) slipStands() {
	t := Table{Columns: []Column{m.column(3.4, "sheet.column.state"), m.column(1.6, "sheet.column.hub"), m.column(2.2, "sheet.column.centres"),
		m.column(2.2, "sheet.fit.stands"), m.column(1.5, "sheet.column.how")}}
	for _, r := range m.lengthStates() {
		if r.row.Exposed == nil {
			continue
		}
		how, hub := "sheet.how.read", ""
		if r.row.Predicted {
			how = "sheet.how.computed"
		}
		if r.row.HeightMM > 0 {
			hub = m.says.Number(math.Round(r.row.HeightMM), "mm", 0)
		}
		t.Rows = append(t.Rows, cells(r.name, hub, m.span(r.row.Length, "mm"), m.span(r.row.Exposed, "mm"), m.says.Say(how)))
	}
	m.grid(t)
	if len(t.Rows) == 0 {
		m.text(Alarm, "sheet.fit.no_slip")
	}
}

// madeTable sets what was made beside what was ordered or read before.
func (m *maker) madeTable() {
	t := Table{Columns: []Column{m.column(3.4, "sheet.column.size"), m.column(2.6, "sheet.fit.asked"), m.column(2.6, "sheet.fit.built"),
		m.column(2, "sheet.fit.who")}}
	for _, p := range measure.Points {
		list := m.ordered.read[p.Key]
		if p.Group != measure.GroupBuilt || len(list) == 0 {
			continue
		}
		was := ""
		if p.Makes != "" {
			was = m.ordered.value(p.Makes)
		}
		if span := m.ordered.closed(); p.Makes == "shaft.closed" && !m.ordered.known(p.Makes) && span != nil {
			was = m.span(span, "mm")
		}
		_, dimension, _ := strings.Cut(p.Key, ".")
		t.Rows = append(t.Rows, cells(m.says.Dimension(dimension), was, m.ordered.value(p.Key), m.says.By(list[0].By)))
	}
	m.grid(t)
}

// changed tells which findings differ between the shaft as ordered and as built.
func (m *maker) changed() {
	t := Table{Columns: []Column{m.column(4, "sheet.column.finding"), m.column(3.5, "sheet.fit.asked"), m.column(3.5, "sheet.fit.built")}}
	brief := func(f *checks.Finding) string {
		if f == nil {
			return ""
		}
		return m.says.Brief(*f)
	}
	for _, d := range m.ordered.differ {
		either := d.Is
		if either == nil {
			either = d.Was
		}
		row := cells(m.says.Title(*either), brief(d.Was), brief(d.Is))
		row[2].Strong = d.Is != nil && d.Is.Verdict == checks.Out
		t.Rows = append(t.Rows, row)
	}
	if len(t.Rows) == 0 {
		m.text(Para, "sheet.fit.same")
		return
	}
	m.text(Para, "sheet.fit.changed")
	m.grid(t)
}
