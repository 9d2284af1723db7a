package cli

import (
	"yokebook/app/words"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// remedyFormat names the shape of what remedy --json prints.
const remedyFormat = "yokebook-remedies/1"

// troubleJSON is a trouble with its ways out; check and subject are null for a group together.
type troubleJSON struct {
	Group    string       `json:"group"`
	Check    *string      `json:"check"`
	Subject  *string      `json:"subject"`
	Findings []anchorJSON `json:"findings"`
	Singles  []remedyJSON `json:"singles"`
	Pair     *remedyJSON  `json:"pair"`
	Short    []string     `json:"short"`
}

// anchorJSON names a finding and where it stands.
type anchorJSON struct {
	Check   string   `json:"check"`
	Subject string   `json:"subject"`
	State   string   `json:"state"`
	Value   *float64 `json:"value"`
	Unit    string   `json:"unit"`
	Verdict *string  `json:"verdict"`
}

type changeJSON struct {
	Knob   string  `json:"knob"`
	Amount float64 `json:"amount"`
	Unit   string  `json:"unit"`
	Say    string  `json:"say"`
}

// remedyJSON is one way out. From and to are null for a pair; open says that no more was looked at.
type remedyJSON struct {
	Changes  []changeJSON `json:"changes"`
	From     *float64     `json:"from"`
	To       *float64     `json:"to"`
	FromOpen bool         `json:"from_open"`
	ToOpen   bool         `json:"to_open"`
	Worsens  []effectJSON `json:"worsens"`
	Improves []effectJSON `json:"improves"`
	Costs    []string     `json:"costs"`
	Chance   *float64     `json:"chance"`
}

type effectJSON struct {
	Check   string   `json:"check"`
	Subject string   `json:"subject"`
	State   string   `json:"state"`
	Before  *string  `json:"before"`
	After   *string  `json:"after"`
	Was     *float64 `json:"was"`
	Is      *float64 `json:"is"`
	Unit    string   `json:"unit"`
}

// nextJSON is one more reading: how many undecided findings it is expected to decide, as a number and as
// a share of all, how much nearer it brings those that wait, and which it may decide.
type nextJSON struct {
	Kind       string        `json:"kind"`
	Point      string        `json:"point"`
	State      string        `json:"state"`
	Instrument *string       `json:"instrument"`
	Decides    float64       `json:"decides"`
	Share      float64       `json:"share"`
	Nearer     float64       `json:"nearer"`
	Settles    []settledJSON `json:"settles"`
	Say        string        `json:"say"`
}

type settledJSON struct {
	Check   string  `json:"check"`
	Subject string  `json:"subject"`
	State   string  `json:"state"`
	Chance  float64 `json:"chance"`
}

func (p Program) printRemedyJSON(id measure.ID, report *remedy.Report, next []remedy.Reading) error {
	readings := make([]nextJSON, len(next))
	for i, r := range next {
		readings[i] = nextJSON{r.Kind, r.Point, r.State.String(), textOrNull(r.Instrument), r.Decides, r.Share, r.Nearer,
			[]settledJSON{}, words.English.Reading(r)}
		for _, s := range r.Settles {
			f := s.Finding
			readings[i].Settles = append(readings[i].Settles, settledJSON{f.Check, f.Subject, f.State.String(), s.Chance})
		}
	}
	rows := make([]any, len(report.Troubles))
	for i, t := range report.Troubles {
		rows[i] = troubleToJSON(t)
	}
	head := []member{{"format", remedyFormat}, {"build", id}, {"chance", finite(report.Chance)}, {"next", readings}}
	return p.printJSON(head, "troubles", rows)
}

func troubleToJSON(t remedy.Trouble) troubleJSON {
	out := troubleJSON{Group: t.Group, Findings: []anchorJSON{}, Singles: []remedyJSON{}, Short: listed(t.Short)}
	if t.Check != "" {
		out.Check, out.Subject = &t.Check, &t.Subject
	}
	for _, f := range t.Findings {
		out.Findings = append(out.Findings, anchorJSON{f.Check, f.Subject, f.State.String(), finite(f.Value), f.Unit, textOrNull(string(f.Verdict))})
	}
	for _, r := range t.Singles {
		out.Singles = append(out.Singles, remedyToJSON(r))
	}
	if t.Pair != nil {
		pair := remedyToJSON(*t.Pair)
		out.Pair = &pair
	}
	return out
}

func remedyToJSON(r remedy.Remedy) remedyJSON {
	out := remedyJSON{Changes: []changeJSON{}, FromOpen: r.FromOpen, ToOpen: r.ToOpen, Worsens: effectsToJSON(r.Worsens),
		Improves: effectsToJSON(r.Improves), Costs: listed(words.English.Messages(r.Costs)), Chance: finite(r.Chance)}
	for _, c := range r.Changes {
		out.Changes = append(out.Changes, changeJSON{c.Knob, c.Amount, c.Unit, words.English.Turn(c)})
	}
	if len(r.Changes) == 1 {
		out.From, out.To = &r.From, &r.To
	}
	return out
}

func effectsToJSON(list []remedy.Effect) []effectJSON {
	out := []effectJSON{}
	for _, e := range list {
		row := effectJSON{Check: e.After.Check, Subject: e.After.Subject, State: e.After.State.String(), Unit: e.After.Unit,
			Before: textOrNull(string(e.Before.Verdict)), After: textOrNull(string(e.After.Verdict)), Was: finite(e.Before.Value), Is: finite(e.After.Value)}
		out = append(out, row)
	}
	return out
}
