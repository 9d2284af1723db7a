package sheet

import (
	"strings"
	"unicode/utf8"
)

// wide is how many characters a line of the text form holds.
const wide = 78

// Text writes the sheet as plain text for a message: UTF-8, lines of up to 78 characters.
func (s *Sheet) Text() []byte {
	var w textWriter
	w.para(s.First, "", "")
	w.line("")
	w.para(s.Name+": "+s.Title, "", "")
	w.block(Block{Kind: Facts, Pairs: s.identity()})
	for _, b := range s.Blocks {
		w.block(b)
	}
	return []byte(w.out.String())
}

// Date is the day of the newest record.
func (s *Sheet) Date() string {
	if s.At.IsZero() {
		return s.says.Say("sheet.undated")
	}
	return s.At.Format("2006-01-02")
}

type textWriter struct{ out strings.Builder }

func (w *textWriter) line(text string) { w.out.WriteString(strings.TrimRight(text, " ") + "\n") }

// para writes a text wrapped, its first line after one lead and the others after another.
func (w *textWriter) para(text, lead, next string) {
	line := lead
	for i, word := range strings.Fields(text) {
		switch {
		case i == 0:
			line += word
		case utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > wide:
			w.line(line)
			line = next + word
		default:
			line += " " + word
		}
	}
	w.line(line)
}

func (w *textWriter) block(b Block) {
	switch b.Kind {
	case Heading:
		w.line("")
		w.line(strings.ToUpper(b.Text))
		w.line(strings.Repeat("-", utf8.RuneCountInString(b.Text)))
	case Para, Small:
		w.para(b.Text, "", "")
	case Alarm:
		w.para(b.Text, "! ", "  ")
	case List:
		for _, item := range b.Items {
			w.para(item, "- ", "  ")
		}
	case Facts:
		for _, p := range b.Pairs {
			w.para(p.Name+": "+p.Value, "", "    ")
		}
	case Grid:
		w.grid(*b.Table)
	case Picture:
		w.para("["+b.Drawing.Title+"]", "", " ")
		for _, l := range b.Drawing.Labels {
			w.para(l.Text, "  ", "    ")
		}
	}
}

// grid writes a table as one paragraph a row: its first cell, then heading and value of each other. A
// message has no columns that could be relied on.
func (w *textWriter) grid(t Table) {
	for _, row := range t.Rows {
		var parts []string
		for i, c := range row[1:] {
			if c.Text != "" {
				parts = append(parts, t.Columns[i+1].Head+" "+c.Text)
			}
		}
		w.para(row[0].Text+": "+strings.Join(parts, "; "), "- ", "  ")
	}
}
