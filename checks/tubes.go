package checks

import (
	"slices"

	"yokebook/checks/shaft"
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// TubeTable says of every size in the series whether a shaft could be made from it.
type TubeTable struct {
	Subject string    // which shaft; "" where there is one
	Rows    []TubeRow // clear ones first, then unsure, waiting and out, the smallest first of each
	Missing []Missing // readings that rows wait for
	RestsOn []string  // points stated or estimated that all rests on
	Notes   []Message
}

// TubeRow is one size of tube. Members that can't be worked out yet hold no value.
type TubeRow struct {
	shaft.Size
	KgPerM    float64
	Critical  TubeNumber // first bending speed, rev/min
	Stress    TubeNumber // shear at full torque, MPa
	Twist     TubeNumber // at full torque, deg; never judged
	Clearance TubeNumber // least room beside it over the travel, mm
	Verdict   Verdict    // of all together
	Chance    *float64   // share of draws in which all hold
}

// TubeNumber is a number of a row with its interval and what it is judged by; Verdict is empty
// where nothing judges it.
type TubeNumber struct {
	Value, Low, High *float64
	Limit            *Limit
	Verdict          Verdict
}

// Tubes judges the sizes that shaft tube is sold in for each shaft of a build: by bending speed,
// torque and room. It goes by the same readings, draws and limits as Run and does not change b.
func Tubes(b *measure.Build) []TubeTable {
	e := newEngine(b, nil)
	var out []TubeTable
	for _, subject := range shaftNames(b.Layout) {
		out = append(out, e.tubeTable(subject))
	}
	return out
}

// demands is what every size of a table is held against.
type demands struct {
	length, ends, room *quantity
	speed              *quantity // least bending speed, rev/min
	torque, yield      *quantity // N·m, and greatest stress, MPa
	speedLimit         *Limit
	stressLimit        *Limit
}

func (e *engine) tubeTable(subject string) TubeTable {
	table := TubeTable{Subject: subject}
	d := e.demandsOf(subject, &table)
	for _, size := range shaft.Series {
		table.Rows = append(table.Rows, e.tubeRow(size, d, &table))
	}
	rank := []Verdict{Clear, Unsure, Waiting, Out}
	slices.SortStableFunc(table.Rows, func(a, b TubeRow) int {
		return slices.Index(rank, a.Verdict) - slices.Index(rank, b.Verdict)
	})
	return table
}

func (e *engine) demandsOf(subject string, table *TubeTable) demands {
	var d demands
	key := "shaft.length"
	if subject == "front_shaft" {
		key = "front_shaft.length"
	}
	if d.length = e.runningLength(key); d.length == nil {
		table.Missing = append(table.Missing, e.lacks(key, measure.RideKerb)...)
	}
	ends, taken := e.endMass(subject)
	d.ends, table.Notes = ends, append(table.Notes, taken...)
	a := e.fastEnough(answer{}, "shaft.critical_speed", e.setting("shaft.critical_speed"))
	d.speed, d.speedLimit = a.against, a.own
	c := e.torqueCase()
	d.torque = c.q
	if c.q != nil {
		table.Notes = append(table.Notes, c.notes()...)
	}
	table.Notes = append(table.Notes, a.notes...)
	table.Missing = append(append(table.Missing, a.missing...), c.missing...)
	if d.yield, d.stressLimit = e.allowedStress(); d.yield == nil {
		table.Missing = append(table.Missing, need("tube.yield"))
	}
	d.room = e.leastRoom(subject, table)
	for _, q := range []*quantity{d.length, d.ends, d.room, d.speed, d.torque, d.yield} {
		if q != nil {
			table.RestsOn = union(table.RestsOn, q.from.restsOn)
		}
	}
	return d
}

// leastRoom is the least of the rooms that obstacles leave beside a shaft's centre line.
func (e *engine) leastRoom(subject string, table *TubeTable) *quantity {
	var rooms []*quantity
	for _, o := range e.obstacles() {
		r := e.roomAt(o)
		if r.front != (subject == "front_shaft") {
			continue
		}
		for _, m := range r.missing {
			table.Missing = appendMissing(table.Missing, m)
		}
		if r.q != nil {
			rooms = append(rooms, r.q)
		}
	}
	if len(rooms) == 0 {
		table.Missing = appendMissing(table.Missing, Missing{Point: "obstacle.gap", State: measure.RideKerb})
		return nil
	}
	return e.combine("least", 1, func(x, out []float64) { out[0] = slices.Min(x) }, rooms...)[0]
}

func (e *engine) tubeRow(size shaft.Size, d demands, table *TubeTable) TubeRow {
	m, _ := e.material()
	row := TubeRow{Size: size, KgPerM: shaft.Tube{LengthMM: 1000, OuterMM: size.OuterMM, WallMM: size.WallMM}.MassKg(m)}
	pass := allPass()
	tube := tubeSizes{length: d.length, outer: exact(size.OuterMM), wall: exact(size.WallMM)}
	if d.length != nil {
		q, _ := e.bendingSpeed(tube, d.ends)
		row.Critical = e.numberOf(q, d.speedLimit, d.speed, pass)
		if d.torque != nil {
			row.Stress = e.numberOf(e.stressOf(tube, d.torque), d.stressLimit, d.yield, pass)
			row.Twist = e.numberOf(e.twistOf(tube, d.torque), nil, nil, pass)
		}
	}
	if d.room != nil {
		row.Clearance = e.numberOf(e.leftOver(d.room, tube.outer), e.clearanceLimit(), nil, pass)
	}
	chance := uncertain.Chance(pass)
	switch row.Verdict = verdictOf(chance); {
	case row.Verdict != Out && len(table.Missing) > 0:
		row.Verdict = Waiting
	default:
		row.Chance = &chance
	}
	return row
}

// numberOf is a number of a row, and takes away the draws that miss its limit.
func (e *engine) numberOf(q *quantity, l *Limit, against *quantity, pass []bool) TubeNumber {
	if q.bad || against != nil && against.bad {
		for k := range pass {
			pass[k] = false
		}
		return TubeNumber{Verdict: Out}
	}
	value := q.best
	low, high := q.interval()
	n := TubeNumber{Value: &value, Low: &low, High: &high, Limit: l}
	if l != nil {
		met := e.meets(q, l, against)
		n.Verdict = verdictOf(uncertain.Chance(met))
		for k, ok := range met {
			pass[k] = pass[k] && ok
		}
	}
	return n
}
