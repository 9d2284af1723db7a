// Package limits is one table of data: what findings are judged by, and what is assumed where a
// person gave nothing. Each row says what it means and who vouches for it, and where sources differ
// it says what the others hold.
//
// A source is a list, parted by semicolons. Each member holds the short name of a paper in
// testdata/reference/SOURCES.md, or says in one of the phrases of sources_test.go that there is none:
// "common practice, no source", "our judgement, no source", "worked apart from this code" … "From
// memory" marks what was not looked up.
package limits

import (
	"slices"
	"strings"
)

// Sense says on which side of a row's value one has to be.
type Sense string

// The senses. An Input is no limit but a number, or a range, that goes into the sums.
const (
	Max     Sense = "max"
	Min     Sense = "min"
	Between Sense = "between" // Value … Upper
	Equal   Sense = "equal"
	Input   Sense = "input"
)

// Row is one limit or one input.
type Row struct {
	Key     string
	Value   float64
	Upper   float64 // for Between, and for an Input whose sources dispute it: Value … Upper
	Unit    string  // as in files; "" for factors and shares
	Sense   Sense
	Source  string
	Meaning string  // in plain words
	Others  []Other // what other sources hold instead
}

// Other is what another source holds. Upper is 0 unless it gives a range.
type Other struct {
	Value, Upper float64
	Sense        Sense // only where it contradicts the row's
	Source       string
}

// SenseIn is on which side of the value of another source one has to be, in a row of the table.
func (o Other) SenseIn(r Row) Sense {
	if o.Sense == "" {
		return r.Sense
	}
	return o.Sense
}

// Table holds all rows, grouped and in a fixed order.
var Table = slices.Concat(jointRows, shaftRows, torqueRows, matchRows, runoutRows, massRows, derivedRows, doubtRows, assumedRows, readingRows, judgingRows, slipRows, travelRows, clutchRows, splineRows, retainRows, orderRows)

var index = func() map[string]int {
	m := make(map[string]int, len(Table))
	for i, r := range Table {
		m[r.Key] = i
	}
	return m
}()

// Of finds a row by key.
func Of(key string) (Row, bool) {
	i, ok := index[key]
	if !ok {
		return Row{}, false
	}
	return Table[i], true
}

// Tool is what is taken for a reading whose instrument doesn't say: one display step, ± of its
// accuracy, and the standard deviation of laying it on again. All in Unit.
type Tool struct {
	Resolution, Accuracy, Placing float64
	Unit                          string
}

// ToolOf returns the tool for an instrument kind ("tape", "caliper" …) or, where no instrument is
// named, for a quantity ("length", "spring rate" …). Not ok: there is none, as for counts.
func ToolOf(name string) (Tool, bool) {
	prefix := "doubt." + strings.ReplaceAll(name, " ", "_") + "."
	resolution, ok := Of(prefix + "resolution")
	if !ok {
		return Tool{}, false
	}
	accuracy, _ := Of(prefix + "accuracy")
	placing, _ := Of(prefix + "placing")
	return Tool{resolution.Value, accuracy.Value, placing.Value, resolution.Unit}, true
}
