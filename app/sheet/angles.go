package sheet

import (
	"slices"

	"yokebook/checks"
	"yokebook/measure"
)

// angles lists the working angle of each joint in each state, what the joints leave uneven, and which
// angle each joint must pass without its yokes touching.
func (m *maker) angles() {
	m.heading("sheet.angles")
	subjects, states := m.angleKeys()
	t := Table{Columns: []Column{m.column(4, "sheet.column.state")}}
	for _, s := range subjects {
		t.Columns = append(t.Columns, Column{m.says.Subject(s), 2})
	}
	t.Columns = append(t.Columns, m.column(2, "sheet.column.residual"), m.column(2, "sheet.column.ripple"))
	cell := func(check, subject string, state measure.State) string {
		for _, f := range m.findings {
			if f.Check == check && f.Subject == subject && f.State == state {
				return m.found(f)
			}
		}
		return m.says.Say("sheet.as_without")
	}
	for _, state := range states {
		row := []string{m.says.State(state)}
		for _, s := range subjects {
			row = append(row, cell("joint.angle", s, state))
		}
		row = append(row, cell("joint.residual", "", state), cell("joint.ripple", "", state))
		t.Rows = append(t.Rows, cells(row...))
	}
	if len(states) > 0 {
		row := []string{m.says.Say("sheet.must_pass")}
		for _, s := range subjects {
			row = append(row, m.mustPass(s))
		}
		t.Rows = append(t.Rows, cells(append(row, "", "")...))
	}
	m.grid(t)
	if len(states) == 0 {
		m.text(Alarm, "sheet.no_angles")
		return
	}
	m.text(Small, "sheet.must_pass.how", m.setting("order.contact_margin"))
}

// angleKeys are the joints, front to rear, and the states that any joint's angle is known in.
func (m *maker) angleKeys() (subjects []string, states []measure.State) {
	for _, f := range m.of("joint.angle") {
		if !slices.Contains(subjects, f.Subject) {
			subjects = append(subjects, f.Subject)
		}
		if f.Value != nil && !slices.Contains(states, f.State) {
			states = append(states, f.State)
		}
	}
	order := []string{"front", "centre", "rear"}
	slices.SortFunc(subjects, func(a, b string) int { return slices.Index(order, a) - slices.Index(order, b) })
	slices.SortStableFunc(states, func(a, b measure.State) int {
		switch {
		case a.Less(b):
			return -1
		case b.Less(a):
			return 1
		}
		return 0
	})
	return subjects, states
}

// mustPass is the angle that a joint must pass without its yokes touching: the upper end of the worst of
// all states known, wound up or not, and the margin on top.
func (m *maker) mustPass(subject string) string {
	worst, found := 0.0, false
	for _, f := range m.findings {
		if f.Check != "joint.angle" && f.Check != "joint.most_angle" || f.Subject != subject || f.Value == nil {
			continue
		}
		at := *f.Value
		if f.High != nil {
			at = *f.High
		}
		if !found || at > worst {
			worst, found = at, true
		}
	}
	if !found {
		return m.says.Say("sheet.unknown")
	}
	return m.says.Say("sheet.at_least", m.says.Number(worst+m.setting("order.contact_margin"), "deg", 0.5))
}

// running is how fast and how hard the shaft is driven, and the phase of its yokes.
func (m *maker) running() {
	m.heading("sheet.running")
	var pairs []Pair
	if note := m.noteIn(checks.MsgSpeedEngine, checks.MsgSpeedRoad, checks.MsgSpeedGoverned); note != "" {
		pairs = append(pairs, Pair{m.says.Say("sheet.speed"), note})
	} else {
		pairs = append(pairs, Pair{m.says.Say("sheet.speed"), m.says.Say("sheet.unread")})
	}
	pairs = append(pairs, m.torques()...)
	for _, p := range []string{"shaft.torque_mean", "front_shaft.phase", "shaft.phase"} {
		if p != "front_shaft.phase" || m.layoutHas(p) {
			pairs = append(pairs, m.pair(p))
		}
	}
	m.facts(pairs)
	m.text(Small, "sheet.phase")
	for _, f := range m.findings {
		for _, n := range f.Notes {
			if n.Key == checks.MsgBestPhase {
				m.text(Small, "sheet.phase.best", append([]any{f.State.String()}, n.Args...)...)
			}
		}
	}
}

// torques are the greatest torque and the case that ruled it.
func (m *maker) torques() []Pair {
	name := m.says.Say("sheet.torque")
	f, ok := m.find("joint.torque", "")
	if !ok {
		return []Pair{{name, m.says.Say("sheet.unread")}}
	}
	text := m.found(f)
	for _, n := range f.Notes {
		switch n.Key {
		case checks.MsgTorqueLesser, checks.MsgTorqueOffroad, checks.MsgTorqueNoGrip:
			text = m.says.Say("sheet.torque.case", text, m.says.Message(n))
		}
	}
	return []Pair{{name, text}}
}

// noteIn is the first note with one of the keys, in words; "" where no finding has one.
func (m *maker) noteIn(keys ...string) string {
	for _, f := range m.findings {
		for _, n := range f.Notes {
			if slices.Contains(keys, n.Key) {
				return m.says.Message(n)
			}
		}
	}
	return ""
}
