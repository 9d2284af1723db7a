package sheet

import (
	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/checks/shaft"
	"yokebook/measure"
)

// tubes are the sizes of tube and centre bearing, what bounds them, and how the shaft is to be balanced.
func (m *maker) tubes() {
	m.heading("sheet.tubes")
	var pairs []Pair
	for _, p := range []string{"front_shaft.tube_od", "front_shaft.tube_wall", "tube.od", "tube.wall", "tube.material", "tube.yield", "shaft.mass",
		"centre_bearing.bore", "centre_bearing.offset", "centre_bearing.height", "centre_bearing.bolt_span"} {
		if m.layoutHas(p) {
			pairs = append(pairs, m.pair(p))
		}
	}
	for _, check := range []string{"shaft.critical_speed", "shaft.half_critical", "shaft.stress"} {
		for _, f := range m.of(check) {
			pairs = append(pairs, m.judged(f))
		}
	}
	for _, f := range m.of("shaft.balance") {
		pairs = append(pairs, Pair{m.says.Check(f.Check, f.Subject), m.balance(f)})
	}
	m.facts(pairs)
	m.swing()
	m.text(Small, "sheet.balance", m.setting("shaft.balance"))
}

// judged is a finding as a fact, with its limit and verdict.
func (m *maker) judged(f checks.Finding) Pair {
	text := m.found(f)
	if limit := m.says.Finding(f).Limit; limit != "" && f.Value != nil {
		text = m.says.Say("sheet.judged", text, limit, m.verdict(f))
	}
	return Pair{m.says.Check(f.Check, f.Subject), text}
}

// balance is the permissible residual unbalance in each of two planes; where the shaft was not weighed,
// what it comes to for each kilogram of it.
func (m *maker) balance(f checks.Finding) string {
	if f.Value != nil {
		return m.says.Say("sheet.balance.planes", m.found(f))
	}
	rpm := m.speed()
	each, err := shaft.Unbalance(shaft.Rotor{Kg: 1, RevPerMin: rpm, GradeMMs: m.setting("shaft.balance")})
	if err != nil {
		return m.says.Say("sheet.balance.waiting", m.missing([]checks.Finding{f}))
	}
	return m.says.Say("sheet.balance.each", m.says.Number(each/2, "g·mm", 0), m.says.Number(1, "kg", 0), m.missing([]checks.Finding{f}))
}

// speed is the highest speed of the shaft, rev/min, as the notes of the findings tell it; 0 where none does.
func (m *maker) speed() float64 {
	for _, f := range m.findings {
		for _, n := range f.Notes {
			if n.Key == checks.MsgSpeedEngine || n.Key == checks.MsgSpeedRoad || n.Key == checks.MsgSpeedGoverned {
				rpm, _ := n.Args[0].(float64)
				return rpm
			}
		}
	}
	return 0
}

// swing is how thick the shaft may be at each place where something stands beside it: so that the
// limit holds at the unfavourable end of the doubt.
func (m *maker) swing() {
	t := Table{Columns: []Column{m.column(2, "sheet.column.obstacle"), m.column(2, "sheet.column.station"), m.column(1.4, "sheet.column.side"),
		m.column(2, "sheet.column.gap"), m.column(2.2, "sheet.column.room"), m.column(2.4, "sheet.column.swing")}}
	for _, f := range m.of("shaft.clearance") {
		if f.Value == nil {
			continue
		}
		t.Rows = append(t.Rows, cells(words.Plain(f.Subject), m.tagged("obstacle.station", f), m.tagged("obstacle.side", f),
			m.tagged("obstacle.gap", f), m.found(f), m.mostSwing(f)))
	}
	m.grid(t)
	if len(t.Rows) > 0 {
		m.text(Small, "sheet.swing.how")
		return
	}
	m.text(Small, "sheet.no_obstacles")
}

// mostSwing is the greatest diameter at an obstacle. The finding's room counts from the tube that was
// read, so the tube and twice what is left of the room make it.
func (m *maker) mostSwing(f checks.Finding) string {
	od, ok := m.sight.Number(m.tubeAt(f), measure.OffBench)
	if !ok || f.Limit == nil {
		return m.says.Say("sheet.unknown")
	}
	low := *f.Value
	if f.Low != nil {
		low = *f.Low
	}
	most := od.Value + 2*(low-f.Limit.Value)
	if most <= 0 {
		return m.says.Say("sheet.no_room")
	}
	return m.says.Say("sheet.at_most", m.says.Number(most, "mm", 0.5))
}

// tubeAt is the tube that runs past an obstacle: the front shaft's, where the place lies before the
// centre joint.
func (m *maker) tubeAt(f checks.Finding) string {
	if m.build.Layout.Shafts != 2 {
		return "tube.od"
	}
	for _, r := range m.read["obstacle.station"] {
		if at, ok := r.Number(); ok && r.Tag == f.Subject {
			if front, known := m.sight.Number("front_shaft.length", measure.RideKerb); known && at < front.Value {
				return "front_shaft.tube_od"
			}
		}
	}
	return "tube.od"
}

// tagged is what was read of a point for the obstacle of a finding.
func (m *maker) tagged(point string, f checks.Finding) string {
	for _, r := range m.read[point] {
		if r.Tag == f.Subject {
			return m.marked(r)
		}
	}
	return m.says.Say("sheet.unread")
}
