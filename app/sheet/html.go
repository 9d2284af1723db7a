package sheet

import (
	"encoding/base64"
	"fmt"
	"html"
	"strings"

	"rsc.io/qr"

	"yokebook/app/draw"
)

// pageStyle is the look of the HTML form, on a screen and on paper.
const pageStyle = `body{font:15px/1.4 'DejaVu Sans Condensed','DejaVu Sans',Verdana,sans-serif;color:#1A222D;background:#fff;max-width:62rem;margin:1rem auto;padding:0 1rem}
h1{font-size:1.4rem;color:#0E4A5B}h2{font-size:1.15rem;color:#0E4A5B;border-bottom:1px solid #0E4A5B;margin:1.4rem 0 .4rem;break-after:avoid}
.first{font-size:1.2rem;border:2px solid #1A222D;padding:.5rem}.stop,.alarm,.strong{color:#9C1C1C}.stop{border-color:#9C1C1C}.small{color:#4A5462;font-size:.85rem}
table{border-collapse:collapse;width:100%;font-size:.88rem}th,td{text-align:left;vertical-align:top;padding:.15rem .6rem .15rem 0;border-bottom:1px solid #B4BCC4}tr{break-inside:avoid}
th{color:#4A5462;font-weight:normal}dl{display:grid;grid-template-columns:minmax(9rem,1fr) 2fr;margin:0;column-gap:1rem}dt{color:#4A5462}dd{margin:0}svg,figure{max-width:100%;height:auto;margin:.4rem 0}.code{float:right;width:7rem;image-rendering:pixelated}
@media(min-width:50rem){dl{grid-template-columns:1fr 1.5fr 1fr 1.5fr}}
`

// HTML writes the sheet as one page that needs nothing from elsewhere: drawings and code are in it.
func (s *Sheet) HTML() ([]byte, error) {
	var w strings.Builder
	title := s.Name + ": " + s.Title
	fmt.Fprintf(&w, "<!DOCTYPE html>\n<html lang=\"%s\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n<title>%s</title>\n<style>\n%s</style>\n</head>\n<body>\n",
		esc(s.Tag), esc(title), pageStyle)
	class := "first"
	if s.Alarm {
		class += " stop"
	}
	fmt.Fprintf(&w, "<p class=\"%s\">%s</p>\n", class, esc(s.First))
	code, err := qr.Encode(CodeText(s.Build, s.Code), qr.M)
	if err != nil {
		return nil, err
	}
	fmt.Fprintf(&w, "<img class=\"code\" alt=\"%s\" src=\"data:image/png;base64,%s\">\n", esc(CodeText(s.Build, s.Code)), base64.StdEncoding.EncodeToString(code.PNG()))
	fmt.Fprintf(&w, "<p>%s</p>\n<h1>%s</h1>\n", esc(s.Name), esc(s.Title))
	writePairs(&w, s.identity())
	for _, b := range s.Blocks {
		s.htmlBlock(&w, b)
	}
	w.WriteString("</body>\n</html>\n")
	return []byte(w.String()), nil
}

// identity is what tells a sheet from others.
func (s *Sheet) identity() []Pair {
	return []Pair{{s.says.Say("sheet.build"), string(s.Build)}, {s.says.Say("sheet.date"), s.Date()},
		{s.says.Say("sheet.check"), s.says.Say("sheet.ring", s.Code)}}
}

func esc(text string) string { return html.EscapeString(text) }

func (s *Sheet) htmlBlock(w *strings.Builder, b Block) {
	switch b.Kind {
	case Heading:
		fmt.Fprintf(w, "<h2>%s</h2>\n", esc(b.Text))
	case Para:
		fmt.Fprintf(w, "<p>%s</p>\n", esc(b.Text))
	case Alarm:
		fmt.Fprintf(w, "<p class=\"alarm\">%s</p>\n", esc(b.Text))
	case Small:
		fmt.Fprintf(w, "<p class=\"small\">%s</p>\n", esc(b.Text))
	case List:
		w.WriteString("<ul>\n")
		for _, item := range b.Items {
			fmt.Fprintf(w, "<li>%s</li>\n", esc(item))
		}
		w.WriteString("</ul>\n")
	case Facts:
		writePairs(w, b.Pairs)
	case Grid:
		writeTable(w, *b.Table)
	case Picture:
		fmt.Fprintf(w, "<figure>\n%s</figure>\n", b.Drawing.Lay(draw.Options{Wide: 1100, Far: 400}).SVG(onPaper()))
	}
}

func writePairs(w *strings.Builder, pairs []Pair) {
	w.WriteString("<dl>\n")
	for _, p := range pairs {
		fmt.Fprintf(w, "<dt>%s</dt><dd>%s</dd>\n", esc(p.Name), esc(p.Value))
	}
	w.WriteString("</dl>\n")
}

func writeTable(w *strings.Builder, t Table) {
	w.WriteString("<table>\n<thead><tr>")
	for _, c := range t.Columns {
		fmt.Fprintf(w, "<th scope=\"col\">%s</th>", esc(c.Head))
	}
	w.WriteString("</tr></thead>\n<tbody>\n")
	for _, row := range t.Rows {
		w.WriteString("<tr>")
		for _, c := range row {
			class := ""
			if c.Strong {
				class = " class=\"strong\""
			}
			fmt.Fprintf(w, "<td%s>%s</td>", class, esc(c.Text))
		}
		w.WriteString("</tr>\n")
	}
	w.WriteString("</tbody>\n</table>\n")
}
