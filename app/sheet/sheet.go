package sheet

import (
	"time"

	"yokebook/app/draw"
	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// Options say for whom a sheet is made. The zero Options make an A4 sheet in English and metric units.
type Options struct {
	Paper    Paper
	Language *words.Language
	Units    words.Units
	// Ordered makes the order sheet also where the shaft came back and was read as built.
	Ordered bool
}

// Sheet is an order sheet as data. It is read only once made.
type Sheet struct {
	Name   string // what kind of sheet it is
	First  string // the first line: what the sheet may be used for
	Alarm  bool   // First forbids manufacture or tells of something out of its limit
	Title  string
	Build  measure.ID
	Code   string    // check code, in two groups of four
	At     time.Time // of the newest record; zero where no record has a time
	Paper  Paper
	Tag    string // of the language
	Blocks []Block
	says   *words.Language
}

// Kind says what a block is.
type Kind int

// The kinds of blocks.
const (
	Heading Kind = iota
	Para         // a paragraph
	Alarm        // a paragraph that must not be overlooked
	Small        // lesser text: how to read what stands above
	List         // Items, one under the other
	Facts        // Pairs of a name and what is known of it
	Grid         // a table
	Picture      // a drawing
)

// Block is one piece of the sheet. Only the members of its kind are set.
type Block struct {
	Kind    Kind
	Text    string
	Items   []string
	Pairs   []Pair
	Table   *Table
	Drawing *draw.Drawing
	Scaled  bool // the drawing is to scale
}

// Pair is a fact: its name and what is known of it.
type Pair struct{ Name, Value string }

// Table is a table. Rows have as many cells as there are columns.
type Table struct {
	Columns []Column
	Rows    [][]Cell
}

// Column is a column of a table: its heading and its share of the width.
type Column struct {
	Head  string
	Share float64
}

// Cell is one cell. Strong ones stand out: a verdict that is out, say.
type Cell struct {
	Text   string
	Strong bool
}

// Make makes the sheet of a build with what Run found of it. Once what was built was read it is a fitting
// sheet, judged by the shaft as built. b is not changed. It errs when the build
// can't be written as a file, since its check code is that of the file.
func Make(b *measure.Build, found *checks.Result, o Options) (*Sheet, error) {
	sum, err := document.Sum(b)
	if err != nil {
		return nil, err
	}
	if o.Language == nil {
		o.Language = words.English
	}
	if o.Paper.Name == "" {
		o.Paper = A4
	}
	says := o.Language.WithChosen(words.Chosen{}).WithUnits(o.Units)
	m := newMaker(b, found, says)
	if made, built := checks.AsBuilt(b); built && !o.Ordered {
		again := checks.Run(made, nil)
		was := m
		m = newMaker(made, again, says)
		m.ordered = &asOrdered{was, checks.Differences(found.Findings, again.Findings)}
	}
	s := &Sheet{Name: says.Say(m.key("sheet.name")), Title: words.Plain(b.Title), Build: b.ID, Code: CheckCode(sum), At: b.LastRecord(), Paper: o.Paper, Tag: says.Tag, says: says}
	s.First, s.Alarm = m.first()
	s.Blocks = m.all()
	return s, nil
}
