package checks

import "yokebook/measure"

// Verdict is what a finding says of its limit. The empty Verdict says nothing (null in files).
type Verdict string

// The verdicts.
const (
	Clear   Verdict = "clear"   // the limit is met with a chance of at least 95 %
	Out     Verdict = "out"     // the limit is missed with a chance of at least 95 %
	Unsure  Verdict = "unsure"  // the readings can't settle it
	Waiting Verdict = "waiting" // readings are missing
	Unsaid  Verdict = ""        // no verdict applies
)

// Message is a sentence to be made in the reader's language: a key of app/words with arguments.
// Arguments are numbers in the unit that the key says, keys of points, limits and states, or ids.
// The zero Message is silent.
type Message struct {
	Key  string
	Args []any // float64, string or int only
}

// Finding is the answer of one check for one subject in one state. Pointers are nil where a
// member does not apply.
type Finding struct {
	Check   string
	Subject string        // tells joints, shafts and parts apart; "" where there is one
	State   measure.State // zero: the build as a whole
	Value   *float64      // the formula at the best estimates, in Unit
	Unit    string
	Low     *float64 // 5 % point, widened to hold Value
	High    *float64 // 95 % point, likewise
	Limit   *Limit
	Verdict Verdict
	Chance  *float64 // share of draws that meet the limit
	Used    []measure.ID
	Weakest *Weakest
	Shares  []Weakest // what each input adds to the doubt, largest first; together 1
	Missing []Missing
	Advice  Message
	// Untouched marks a finding that waits and of whose readings none was taken yet.
	Untouched bool
	// Predicted marks a value computed for a state in which not everything was read.
	Predicted bool
	// RestsOn lists the points whose value is stated or estimated: "clear if … is true".
	RestsOn []string
	// Assumed lists the points that were not read and count at their default, such as shaft.plan.
	Assumed []string
	// Notes are further things to know: side view only, a limit that sources dispute, speed from the road.
	Notes []Message
}

// Limit is the limit that a finding was judged by.
type Limit struct {
	Key    string
	Value  float64
	Upper  *float64 // only for sense "between"
	Unit   string
	Sense  string // "max", "min", "between", "equal"
	Source string
	Reason string // why this build uses another value than the default; ""
}

// Weakest names an input and what it contributes to the doubt of a finding: the one of the member Weakest most.
type Weakest struct {
	Input   string      // point key, or "<instrument>.zero"
	Reading *measure.ID // nil for an assumed input or one shared by several readings
	Share   float64     // of the variance, 0…1
}

// Missing names a reading that a finding waits for.
type Missing struct {
	Point string
	State measure.State
	Setup int // 0: any
}

// Key tells findings apart: there is one for each check, subject and state.
func (f Finding) Key() string { return f.Check + "|" + f.Subject + "|" + f.State.String() }
