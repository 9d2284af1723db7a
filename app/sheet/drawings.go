package sheet

import (
	"strings"

	"yokebook/app/draw"
)

// drawings are the shaft line from the side and from above, and what its lengths are counted between.
func (m *maker) drawings() {
	m.heading("sheet.drawings")
	for _, v := range []draw.View{draw.SideView, draw.TopView} {
		d := m.scene.View(v, nil)
		m.add(Block{Kind: Picture, Drawing: &d, Scaled: true})
	}
}

// layout says what kind of shaft it is.
func (m *maker) layout() {
	m.heading("sheet.layout")
	l := m.build.Layout
	word := func(member, choice string) string { return m.says.Say("sheet.layout." + member + "." + choice) }
	pairs := []Pair{{m.says.Say("sheet.layout.shafts"), word("shafts", map[int]string{1: "one", 2: "two"}[l.Shafts])},
		{m.says.Say("sheet.layout.front_joint"), word("joint", l.FrontJoint)}, {m.says.Say("sheet.layout.rear_joint"), word("joint", l.RearJoint)},
		{m.says.Say("sheet.layout.slip"), word("slip", l.Slip)}}
	if l.Drives != "" {
		pairs = append(pairs, Pair{m.says.Say("sheet.layout.drives"), word("drives", l.Drives)})
	}
	if l.Use != "" {
		pairs = append(pairs, Pair{m.says.Say("sheet.layout.use"), word("use", l.Use)})
	}
	m.facts(pairs)
	d := m.datum()
	m.add(Block{Kind: Picture, Drawing: &d})
	m.factsOr([]string{"order.slip_end", "order.boot", "order.grease", "order.nipples", "order.cross"}, "sheet.unsaid")
	m.supplies()
	m.text(Para, "sheet.match_mark")
}

// supplies is who brings which part, in which condition; the parts of which nobody said it are named.
func (m *maker) supplies() {
	t := Table{Columns: []Column{m.column(2, "sheet.column.part"), m.column(2, "sheet.column.supply"), m.column(3, "sheet.column.condition")}}
	var open []string
	for _, part := range []string{"front_mate", "rear_mate", "slip", "tube", "centre_bearing"} {
		supply, condition := part+".supply", part+".condition"
		switch {
		case !m.layoutHas(supply):
		case m.known(supply) || m.known(condition):
			t.Rows = append(t.Rows, cells(m.says.Part(part), m.value(supply), m.value(condition)))
		default:
			open = append(open, m.says.Part(part))
		}
	}
	m.grid(t)
	if len(open) > 0 {
		m.text(Alarm, "sheet.supplies_unsaid", strings.Join(open, "; "))
	}
}
