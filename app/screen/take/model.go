package take

import (
	"encoding/json"

	"yokebook/app/logbook"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/route"
)

// Log is what the model asks of an open build.
type Log interface {
	Build() *measure.Build
	Findings() []checks.Finding
	Stops() []route.Stop
	Next() (route.Stop, bool)
	Standing() (measure.State, int, measure.Value)
	NextSetup() int
	Doubts(logbook.Entry) []logbook.Doubt
	Keep(logbook.Entry) (logbook.Change, error)
	StrikeRecord(reading measure.ID, content, reason string) (logbook.Change, error)
	Undo(reading measure.ID, reason string) (logbook.Change, error)
	Last() (measure.Reading, bool)
	Device() measure.ID
	Set(field string, value json.RawMessage) (logbook.Change, error)
	Skip(point string, state measure.State, tag, reason string) (logbook.Change, error)
	Unskip(point string, state measure.State, tag string) (logbook.Change, error)
}

// Page is one of the pages that the Take screen shows.
type Page string

// The pages. Those that ask hold nothing but big answers.
const (
	Keypad    Page = "keypad"   // type a number
	Codes     Page = "codes"    // one of a few answers, or yes and no
	Write     Page = "write"    // a text that stands on a part
	Laying    Page = "laying"   // how the finder lies
	Sides     Page = "sides"    // which end is high, which side …
	Doubts    Page = "doubts"   // asks back before keeping
	Refused   Page = "refused"  // why it was not kept
	Result    Page = "result"   // what was kept and what it changed
	Done      Page = "done"     // every stop is done
	Bring     Page = "bring"    // the next stop wants the vehicle to stand another way
	Caution   Page = "caution"  // what can hurt, before the first stop under the vehicle
	Stances   Page = "stances"  // how the vehicle stands
	Height    Page = "height"   // hub to arch, typed
	Setup     Page = "setup"    // was it moved?
	More      Page = "more"     // everything else
	Skips     Page = "skips"    // why a stop is left out
	Tools     Page = "tools"    // what one reads with
	Route     Page = "route"    // all stops
	Findings  Page = "findings" // all findings
	Finding   Page = "finding"  // one of them
	Rests     Page = "rests"    // what it rests on
	Records   Page = "records"  // all readings
	OneRecord Page = "record"   // one of them
	Reasons   Page = "reasons"  // why it is struck
	Reason    Page = "reason"   // the same, in writing
	Reverse   Page = "reverse"  // what finding a finder's zero takes
	Turn      Page = "turn"     // turn the finder end for end
	Zero      Page = "zero"     // the zero that was found
	Groups    Page = "groups"   // what can be measured beyond the shaft line
	OneGroup  Page = "group"    // one of them
	Obstacles Page = "obstacles"
	SkipNote  Page = "skip.note" // why a stop is left out, in writing
	Run       Page = "run"       // what can hurt, before the shaft runs
)

// Stand is how the vehicle stands.
type Stand struct {
	State  measure.State
	Setup  int
	Height measure.Value // mm, hub centre to arch edge; may be absent
}

// Kept is the newest reading and what it changed.
type Kept struct {
	Reading measure.Reading
	Change  logbook.Change
	Struck  bool
}

// Model is the state of the Take screen. Its methods are called from one goroutine.
type Model struct {
	log      Log
	page     Page
	under    []Page // pages that Back returns to
	stop     route.Stop
	typed    Typed
	written  string            // half-written, on the page Write
	notes    map[string]string // half-written or half-typed elsewhere, by what it is about
	height   Typed
	stand    Stand
	warned   map[string]bool // cautions that were shown, by caution, setup and state
	entry    logbook.Entry   // waits for an answer on the page Sides or Doubts
	doubts   []logbook.Doubt
	kept     *Kept
	chosen   []measure.Group   // groups beyond the shaft line that are on the route, in the order in which they were chosen
	looked   measure.Group     // group of the page OneGroup
	byPoint  bool              // the readings stand by what was read, else in the order of time
	sided    *bool             // the side that Keep was told; nil: it asks
	laid     map[string]laying // how each tool lay when it was said last, by its id
	keeping  bool              // Keep waits for the answer of the page Laying
	mending  *correction       // nil: no reading is being corrected
	record   string            // hash of the reading on the page OneRecord
	reversal *Reversal         // nil: no finder's zero is being found
	opened   string            // key of the finding on the page Finding
	filter   checks.Verdict    // what the list of findings is cut down to
	built    built
	units    map[measure.Quantity]measure.Unit
	prefer   func(measure.Quantity) measure.Unit // nil: nothing is preferred
	useful   useful                              // what settles most
	tools    map[measure.Quantity]string
	err      error
}

// New returns the model of an open build, at the stop where work goes on.
func New(log Log) *Model {
	m := &Model{log: log, warned: map[string]bool{}, units: map[measure.Quantity]measure.Unit{}, tools: map[measure.Quantity]string{},
		laid: map[string]laying{}, notes: map[string]string{}}
	m.stand.State, m.stand.Setup, m.stand.Height = log.Standing()
	m.recall()
	next, more := log.Next()
	m.goOn(logbook.Change{Next: next, More: more})
	return m
}

// Page says which page is to be shown.
func (m *Model) Page() Page { return m.page }

// Stop is the stop of the route that one is at.
func (m *Model) Stop() route.Stop { return m.stop }

// Stand says how the vehicle stands.
func (m *Model) Stand() Stand { return m.stand }

// Build is the build as it is now.
func (m *Model) Build() *measure.Build { return m.log.Build() }

// Device is the id of this device.
func (m *Model) Device() measure.ID { return m.log.Device() }

// Error is why the last thing could not be done; nil when it could.
func (m *Model) Error() error { return m.err }

// Kept is the newest reading of this device's work; nil before the first.
func (m *Model) Kept() *Kept { return m.kept }

// open shows a page that Back leaves again.
func (m *Model) open(p Page) {
	m.err = nil
	if m.page != p {
		m.under = append(m.under, m.page)
		m.page = p
	}
}

// show shows a page that stands for itself.
func (m *Model) show(p Page) { m.err, m.under, m.page = nil, nil, p }

// Back leaves a page that was opened over another, a correction or a reversal that has kept nothing
// yet. What was typed there is there again when one comes back. It reports false where there is nothing
// to go back to.
func (m *Model) Back() bool {
	m.err = nil
	switch {
	case len(m.under) > 0:
	case m.mending != nil:
		m.backFromCorrection()
		return true
	case m.Reversing() != nil && !m.reversal.Second():
		m.backFromReversal()
		return true
	default:
		return false
	}
	m.page = m.under[len(m.under)-1]
	m.under = m.under[:len(m.under)-1]
	return true
}

// OpenMore shows what else one can do at a stop.
func (m *Model) OpenMore() { m.open(More) }

// OpenStances shows the ways in which the vehicle can stand.
func (m *Model) OpenStances() { m.open(Stances) }

// OpenSetup asks whether the vehicle was moved.
func (m *Model) OpenSetup() { m.open(Setup) }

// OpenSkips asks why the stop is left out.
func (m *Model) OpenSkips() { m.open(Skips) }

// OpenTools asks what one reads with.
func (m *Model) OpenTools() { m.open(Tools) }

// OpenRoute shows all stops.
func (m *Model) OpenRoute() { m.open(Route) }

// OpenFindings shows all findings.
func (m *Model) OpenFindings() { m.open(Findings) }

// OpenHeight shows the keypad for the height, with what was half typed there since the vehicle was moved.
func (m *Model) OpenHeight() { m.open(Height) }
