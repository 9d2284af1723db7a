package cli

import (
	"math"

	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure"
)

// findingsFormat names the shape of what --json prints.
const findingsFormat = "yokebook-findings/1"

// findingJSON is a finding as --json prints it: every member always there, null where it does not
// apply, numbers unrounded, sentences English.
type findingJSON struct {
	Check     string        `json:"check"`
	Subject   string        `json:"subject"`
	State     string        `json:"state"`
	Value     *float64      `json:"value"`
	Unit      string        `json:"unit"`
	Low       *float64      `json:"low"`
	High      *float64      `json:"high"`
	Limit     *limitJSON    `json:"limit"`
	Verdict   *string       `json:"verdict"`
	Chance    *float64      `json:"chance"`
	Used      []measure.ID  `json:"used"`
	Weakest   *weakestJSON  `json:"weakest"`
	Missing   []missingJSON `json:"missing"`
	Advice    *string       `json:"advice"`
	Predicted bool          `json:"predicted"`
	RestsOn   []string      `json:"rests_on"`
	Assumed   []string      `json:"assumed"`
	Notes     []string      `json:"notes"`
}

type limitJSON struct {
	Key    string   `json:"key"`
	Value  *float64 `json:"value"`
	Upper  *float64 `json:"upper"`
	Unit   string   `json:"unit"`
	Sense  string   `json:"sense"`
	Source string   `json:"source"`
	Reason string   `json:"reason"`
}

type weakestJSON struct {
	Input   string      `json:"input"`
	Reading *measure.ID `json:"reading"`
	Share   *float64    `json:"share"`
}

type missingJSON struct {
	Point string `json:"point"`
	State string `json:"state"`
	Setup *int   `json:"setup"`
}

func findingsToJSON(findings []checks.Finding) []any {
	out := make([]any, len(findings))
	for i, f := range findings {
		out[i] = findingToJSON(f)
	}
	return out
}

func findingToJSON(f checks.Finding) findingJSON {
	return findingJSON{
		Check: f.Check, Subject: f.Subject, State: f.State.String(),
		Value: finite(f.Value), Unit: f.Unit, Low: finite(f.Low), High: finite(f.High),
		Limit: limitToJSON(f.Limit), Verdict: textOrNull(string(f.Verdict)), Chance: finite(f.Chance),
		Used: listed(f.Used), Weakest: weakestToJSON(f.Weakest), Missing: missingToJSON(f.Missing),
		Advice: textOrNull(words.English.Message(f.Advice)), Predicted: f.Predicted,
		RestsOn: listed(f.RestsOn), Assumed: listed(f.Assumed), Notes: listed(words.English.Messages(f.Notes)),
	}
}

func limitToJSON(l *checks.Limit) *limitJSON {
	if l == nil {
		return nil
	}
	return &limitJSON{Key: l.Key, Value: finite(&l.Value), Upper: finite(l.Upper), Unit: l.Unit, Sense: l.Sense,
		Source: l.Source, Reason: l.Reason}
}

func weakestToJSON(w *checks.Weakest) *weakestJSON {
	if w == nil {
		return nil
	}
	return &weakestJSON{Input: w.Input, Reading: w.Reading, Share: finite(&w.Share)}
}

func missingToJSON(list []checks.Missing) []missingJSON {
	out := []missingJSON{}
	for _, m := range list {
		row := missingJSON{Point: m.Point, State: m.State.String()}
		if m.Setup > 0 {
			row.Setup = &m.Setup
		}
		out = append(out, row)
	}
	return out
}

// finite turns what is no number into null.
func finite(f *float64) *float64 {
	if f == nil || math.IsNaN(*f) || math.IsInf(*f, 0) {
		return nil
	}
	return f
}

func textOrNull(s string) *string {
	if s == "" {
		return nil
	}
	return &s
}

// listed turns a nil list into an empty one.
func listed[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}
