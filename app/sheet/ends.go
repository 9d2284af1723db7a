package sheet

import "strings"

// The four faces, from front to rear, and what is printed of each.
var (
	faceParts = []string{"front_end", "front_mate", "rear_mate", "rear_end"}
	faceSizes = []string{"pilot", "pilot_kind", "pilot_depth", "bolts", "bolt_size", "hole_dia", "bolt_circle", "bolt_chord", "bolt_chord_2",
		"face_od", "face_thick", "cap_dia", "cap_span", "cap_dia_2", "cap_span_2", "ear_gap", "clip", "runout"}
	boltSizes = []string{"bolt_pitch", "bolt_length", "bolt_grade", "bolt_torque"}
	retainers = []string{"retainer.kind", "retainer.thread", "retainer.pitch", "retainer.grade", "retainer.torque", "retainer.reach"}
)

// ends are the sizes of flange, yoke and cross at each end.
func (m *maker) ends() {
	m.heading("sheet.ends")
	m.faceTable(faceSizes)
	if m.build.Layout.Slip == "gearbox" {
		m.text(Small, "sheet.ends.tail")
	}
}

// bolts are those of the flanges, and what holds the flanges on their shafts.
func (m *maker) bolts() {
	m.heading("sheet.bolts")
	m.faceTable(boltSizes)
	m.factsOr(retainers, "sheet.unread.list")
	if f, ok := m.find("retainer.clamp", ""); ok {
		m.facts([]Pair{m.judged(f)})
	}
}

// faceTable has a column for each face and a row for each size that anybody read; the others are named
// below it.
func (m *maker) faceTable(sizes []string) {
	t := Table{Columns: []Column{m.column(2.2, "sheet.column.size")}}
	for _, p := range faceParts {
		t.Columns = append(t.Columns, Column{m.says.Part(p), 2})
	}
	var unread []string
	for _, size := range sizes {
		row, any := []string{m.says.Dimension(size)}, false
		for _, p := range faceParts {
			any = any || m.known(p+"."+size)
			row = append(row, m.value(p+"."+size))
		}
		if any {
			t.Rows = append(t.Rows, cells(row...))
		} else {
			unread = append(unread, m.says.Dimension(size))
		}
	}
	m.grid(t)
	if len(unread) > 0 {
		m.text(Alarm, "sheet.unread.ends", strings.Join(unread, "; "))
	}
}

// splineParts are the splines that a shaft builder meets.
var (
	splineParts = []string{"output_shaft", "slip_yoke", "slip_male", "slip_female"}
	splineSizes = []string{"splines", "major", "minor", "length", "over_pins", "pin_dia", "flank", "hardness"}
)

// splines are the mating splines of the shaft.
func (m *maker) splines() {
	m.heading("sheet.splines")
	var parts []string
	t := Table{Columns: []Column{m.column(2.2, "sheet.column.size")}}
	for _, p := range splineParts {
		for _, s := range splineSizes {
			if m.known(p + "." + s) {
				parts = append(parts, p)
				t.Columns = append(t.Columns, Column{m.says.Part(p), 2})
				break
			}
		}
	}
	for _, s := range splineSizes {
		row, any := []string{m.says.Dimension(s)}, false
		for _, p := range parts {
			any = any || m.known(p+"."+s)
			row = append(row, m.value(p+"."+s))
		}
		if any {
			t.Rows = append(t.Rows, cells(row...))
		}
	}
	m.grid(t)
	if len(t.Rows) == 0 {
		m.text(Alarm, "sheet.no_splines")
	}
	m.factsOr([]string{"slip_yoke.barrel", "slip_yoke.barrel_length", "tail_bush.bore", "tail_seal.depth"}, "sheet.unread.list")
	m.text(Small, "sheet.splines.how")
}
