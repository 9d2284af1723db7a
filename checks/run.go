package checks

import (
	"slices"
	"strings"

	"yokebook/checks/uncertain"
	"yokebook/measure"
	"yokebook/measure/document"
)

const drawCount = uncertain.N

// Result is what Run found, with the work it can hand on to the next run.
type Result struct {
	Findings []Finding // sorted by the table of checks, then subject, then state
	memo     *memo
}

// Run returns all findings of a build. prev, which may be nil, only saves work: the findings are
// the same to the last bit whatever it is. b is not changed.
func Run(b *measure.Build, prev *Result) *Result {
	e := newEngine(b, prev)
	return &Result{Findings: e.findings(nil), memo: e.memo}
}

// findings makes those of the checks that only picks; nil picks all.
func (e *engine) findings(only func(check string) bool) []Finding {
	var all, chance []Finding
	for i := range Table {
		c := &Table[i]
		switch {
		case only != nil && !only(c.Key):
		case c.Key == "build.chance": // speaks last, stands first
		case c.whole != nil:
			all = append(all, sorted(c.whole(e, c))...)
		default:
			all = append(all, sorted(e.eachState(c))...)
		}
	}
	e.markUntouched(all)
	if c := &Table[0]; only == nil || only(c.Key) {
		chance = e.buildChance(c)
	}
	return tidy(append(chance, all...))
}

// newEngine gathers what counts of a build and lays its lines.
func newEngine(b *measure.Build, prev *Result) *engine {
	e := emptyEngine(b)
	if prev != nil {
		e.prev = prev.memo
	}
	e.gather()
	return e
}

func emptyEngine(b *measure.Build) *engine {
	return &engine{build: b, memo: newMemo(), taken: map[place]*taken{}, means: map[measure.State]height{}, turned: map[laying]turning{}}
}

// gather sorts out the readings that count and lays the lines.
func (e *engine) gather() {
	for i, standing := range e.build.Standings(document.Hash) {
		switch standing {
		case measure.Current:
			e.readings = append(e.readings, e.build.Readings[i])
		case measure.Disputed:
			e.disputed = append(e.disputed, e.build.Readings[i])
		}
	}
	slices.SortStableFunc(e.readings, func(a, b measure.Reading) int { return strings.Compare(string(a.ID), string(b.ID)) })
	e.byPoint, e.roams = map[string][]measure.Reading{}, map[measure.ID]bool{}
	for _, r := range e.readings {
		e.byPoint[r.Point] = append(e.byPoint[r.Point], r)
		if !everywhere(r) {
			e.roams[r.ID] = true
		}
	}
	e.layLines()
}

// markUntouched marks what waits for readings none of which was taken yet, so that a list can show
// it behind what a person is at work on.
func (e *engine) markUntouched(list []Finding) {
	begun := map[string]bool{}
	for i := range Table {
		c := &Table[i]
		begun[c.Key] = len(c.Points) == 0 || slices.ContainsFunc(c.Points, func(p string) bool { return len(e.byPoint[p]) > 0 })
	}
	for i, f := range list {
		list[i].Untouched = f.Verdict == Waiting && f.Value == nil && !begun[f.Check]
	}
}

// layLines makes the shaft line of every state in which one of its slopes was read or whose height
// is known, and of the running ones also wound up, where the wind-up is known.
func (e *engine) layLines() {
	var states []measure.State
	for _, r := range e.readings {
		if slices.Contains(lineSlopes(e.build.Layout), r.Point) && !everywhere(r) && !slices.Contains(states, r.State()) {
			states = append(states, r.State())
		}
	}
	slices.SortFunc(states, func(a, b measure.State) int {
		if a.Less(b) {
			return -1
		}
		return 1
	})
	for _, s := range states {
		e.lines = append(e.lines, e.lineOf(s))
	}
	e.predictLines()
	var all []*line
	for _, ln := range e.lines {
		all = append(all, ln)
		if !ln.state.Running() || !ln.complete() {
			continue
		}
		for _, of := range []measure.Case{measure.Drive, measure.Coast} {
			if e.windUp(of) != nil {
				all = append(all, e.woundLine(ln, of))
			}
		}
	}
	e.lines = all
}

func lineSlopes(l measure.Layout) []string {
	var keys []string
	for _, name := range partNames(l) {
		keys = append(keys, name+".slope")
	}
	return keys
}

// eachState lets a check speak for every state in which one of its readings was taken, otherwise
// once, waiting.
func (e *engine) eachState(c *Check) []Finding {
	subjects := []string{""}
	if c.subjects != nil {
		subjects = c.subjects(e.build.Layout)
	}
	var out []Finding
	for _, subject := range subjects {
		if c.perPart != nil {
			out = append(out, e.ofPart(c, subject)...)
			continue
		}
		out = append(out, e.ofSubject(c, subject)...)
	}
	return out
}

// ofPart lets a check speak once for a subject. Its state is the bench where all its readings hold
// everywhere; otherwise the build as a whole.
func (e *engine) ofPart(c *Check, subject string) []Finding {
	a := c.perPart(e, subject)
	if a.lacking {
		return nil
	}
	f := Finding{Check: c.Key, Subject: subject, Unit: c.Unit, Notes: a.notes, Predicted: a.predicted}
	if a.q != nil && len(a.q.from.used) > 0 && e.fromBench(a.q.from.used) {
		f.State = measure.OffBench
	}
	f.fill(a.q)
	e.judge(&f, c, a, nil)
	return []Finding{f}
}

func (e *engine) fromBench(used []measure.ID) bool {
	return !slices.ContainsFunc(used, func(id measure.ID) bool { return e.roams[id] })
}

func (e *engine) ofSubject(c *Check, subject string) []Finding {
	blank := e.lineOf(measure.RideKerb)
	running := c.perState(e, blank, subject)
	if running.lacking {
		return nil
	}
	if running.q != nil { // slopes that were stated hold everywhere, but nothing was read as it runs
		running.missing = e.slopesAtRide(running.missing)
	}
	var out []Finding
	settled := false
	for _, ln := range e.lines {
		if ln.state.Running() && c.perState(e, ln, subject).q != nil {
			settled = true
		}
	}
	for _, ln := range e.lines {
		if !ln.state.Running() && !c.hanging {
			continue
		}
		a := c.perState(e, ln, subject)
		if a.absent || ln.state.Case != "" && a.q != nil && !e.changedByWindUp(ln, a.q) {
			continue
		}
		f := Finding{Check: c.Key, Subject: subject, State: ln.state, Unit: c.Unit, Predicted: ln.predicted}
		f.Notes = slices.Concat(a.notes, ln.notes)
		for _, h := range ln.moved {
			if a.q != nil && e.rests(a.q, h.point) {
				f.Notes = append(f.Notes, Message{MsgHeightMoved, []any{h.point, h.mm}})
			}
		}
		for _, h := range ln.heights {
			if a.q != nil && movesWithAxle(h.point) && e.rests(a.q, h.point) {
				f.Notes = append(f.Notes, Message{MsgHeightWidened, []any{h.point, h.mm, e.widening(h.mm)}})
			}
		}
		f.fill(a.q)
		e.judge(&f, c, a, ln)
		if !ln.state.Running() {
			e.notRunning(&f, c, a, running, settled)
		}
		out = append(out, f)
	}
	if len(out) == 0 {
		f := Finding{Check: c.Key, Subject: subject, Unit: c.Unit, Limit: e.limitFor(c, running)}
		f.wait(running.missing)
		out = append(out, f)
	}
	return out
}

// slopesAtRide adds the slopes of the line, to be read standing on the wheels.
func (e *engine) slopesAtRide(missing []Missing) []Missing {
	for _, key := range lineSlopes(e.build.Layout) {
		missing = appendMissing(missing, Missing{Point: key, State: measure.RideKerb})
	}
	return missing
}

func (e *engine) limitFor(c *Check, a answer) *Limit {
	if a.own != nil {
		return a.own
	}
	key := c.Limit
	if a.limit != "" {
		key = a.limit
	}
	if key == "" {
		return nil
	}
	return e.limitOf(key)
}

// wait leaves a finding waiting for what is missing. Where nothing is, its readings give no number.
func (f *Finding) wait(missing []Missing) {
	f.Verdict, f.Missing, f.Advice = Waiting, missing, Message{Key: MsgTakeMissing}
	if len(missing) == 0 {
		f.Advice = Message{Key: MsgNoNumber}
	}
}

// judge gives a finding its verdict; ln is nil for a check that no state of the line concerns, and
// one of a state that the shaft does not run in is not judged.
func (e *engine) judge(f *Finding, c *Check, a answer, ln *line) {
	f.Limit = e.limitFor(c, a)
	switch {
	case a.q == nil:
		f.wait(a.missing)
		return
	case a.q.bad, a.against != nil && a.against.bad:
		if a.against != nil && a.against.bad {
			f.Limit = nil // what it would be judged by is no number
		}
		f.Verdict, f.Advice = Waiting, Message{Key: MsgNoNumber}
		return
	case f.Limit == nil && len(a.missing) > 0: // the number stands, what it is judged by is missing
		f.Verdict, f.Missing, f.Advice = Waiting, a.missing, Message{Key: MsgTakeMissing}
		return
	case a.silent || f.Limit == nil || ln != nil && !ln.state.Running():
		return
	}
	if a.against != nil {
		f.Used = union(f.Used, a.against.from.used)
		f.RestsOn = union(f.RestsOn, a.against.from.restsOn)
	}
	pass := e.meets(a.q, f.Limit, a.against)
	chance := uncertain.Chance(pass)
	verdict := verdictOf(chance)
	if verdict != Out && len(a.missing) > 0 { // the rest of what is missing can only make it worse
		f.Verdict, f.Missing, f.Advice = Waiting, a.missing, Message{Key: MsgTakeMissing}
		return
	}
	f.Chance, f.Verdict = &chance, verdict
	switch {
	case a.gentle && f.Verdict != Clear:
		f.Verdict, f.Advice = Unsure, a.advice
	case f.Verdict == Unsure:
		if a.against != nil { // the limit's own doubt may be what decides
			f.decidedBy(e.combine("margin", 1, func(x, out []float64) { out[0] = x[0] - x[1] }, a.q, a.against)[0])
		}
		f.Advice = e.settle(f.Weakest)
	case f.Verdict == Out && a.advice.Key != "":
		f.Advice = a.advice
	case f.Verdict == Out && c.advise != nil:
		f.Advice = c.advise(ln, f.Subject)
	}
	if !a.gentle { // what sources dispute does not hold the build back
		e.judged(*f, pass)
	}
}

// notRunning keeps the value of hanging wheels and of the bump stops from being judged as what the
// shaft runs at: until a running state was read, the finding waits for one.
func (e *engine) notRunning(f *Finding, c *Check, a, running answer, settled bool) {
	note, advice := MsgHanging, MsgLetDown
	if f.State.Ride != measure.Droop {
		note, advice = MsgOnBump, MsgOffBump
	}
	f.Notes = append(f.Notes, Message{Key: note})
	if settled || a.silent && a.q != nil {
		f.Verdict = Unsaid
		if a.q != nil {
			f.Missing, f.Advice = nil, Message{}
		}
		return
	}
	f.Verdict = Waiting
	for _, m := range running.missing {
		f.Missing = appendMissing(f.Missing, m)
	}
	f.Advice = Message{Key: advice}
	if note == MsgHanging && len(running.missing) > 0 {
		f.Advice.Args = []any{running.missing[0].Point}
	}
}

func sorted(list []Finding) []Finding {
	slices.SortStableFunc(list, func(a, b Finding) int {
		if c := strings.Compare(a.Subject, b.Subject); c != 0 {
			return c
		}
		switch {
		case a.State.Less(b.State):
			return -1
		case b.State.Less(a.State):
			return 1
		}
		return 0
	})
	return list
}
