package sheet

import (
	"bytes"
	"image/color"
	"time"

	"codeberg.org/go-fonts/dejavu/dejavusanscondensed"
	"codeberg.org/go-pdf/fpdf"

	"yokebook/app/draw"
)

// onPaper is the theme of print: ink on white.
func onPaper() draw.Theme {
	t := draw.Light
	t.Paper = color.NRGBA{R: 0xFF, G: 0xFF, B: 0xFF, A: 0xFF}
	return t
}

// undated stands for the date of a document without one; the library would take the clock for none.
var undated = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// face is the name that the document gives its one font.
const face = "body"

// PDF writes the sheet as a document to print: text that can be selected, the font embedded, drawings as
// vectors. The same sheet gives the same bytes.
func (s *Sheet) PDF() ([]byte, error) {
	pdf := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: s.Paper.Wide, Ht: s.Paper.High}})
	at := s.At
	if at.IsZero() {
		at = undated
	}
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(at)
	pdf.SetModificationDate(at)
	pdf.SetTitle(s.Name+": "+s.Title, true)
	pdf.SetSubject(s.First, true)
	pdf.SetKeywords(CodeText(s.Build, s.Code), true)
	pdf.SetProducer("yokebook", true)
	pdf.SetLang(s.Tag)
	pdf.SetDisplayMode("fullwidth", "continuous")
	pdf.SetMargins(0, 0, 0)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetLineCapStyle("round")
	pdf.SetLineJoinStyle("round")
	pdf.AddUTF8FontFromBytes(face, "", dejavusanscondensed.TTF)
	theme := onPaper()
	for _, p := range s.Pages() {
		pdf.AddPage()
		for _, v := range p.Vectors(theme) {
			stroke(pdf, v)
		}
		pdf.SetDashPattern(nil, 0)
		for _, t := range p.Texts {
			letter(pdf, t, theme)
		}
	}
	var out bytes.Buffer
	err := pdf.Output(&out)
	return out.Bytes(), err
}

// stroke draws one vector.
func stroke(pdf *fpdf.Fpdf, v draw.Vector) {
	way := ""
	if v.Fill != nil {
		pdf.SetFillColor(int(v.Fill.R), int(v.Fill.G), int(v.Fill.B))
		way = "F"
	}
	if v.Width > 0 {
		pdf.SetDrawColor(int(v.Ink.R), int(v.Ink.G), int(v.Ink.B))
		pdf.SetLineWidth(v.Width / unitsPerMM)
		dash := make([]float64, len(v.Dash))
		for i, d := range v.Dash {
			dash[i] = d / unitsPerMM
		}
		pdf.SetDashPattern(dash, 0)
		way += "D"
	}
	if way == "" {
		return
	}
	for i, p := range v.Points {
		if i == 0 {
			pdf.MoveTo(p.X/unitsPerMM, p.Y/unitsPerMM)
			continue
		}
		pdf.LineTo(p.X/unitsPerMM, p.Y/unitsPerMM)
	}
	if v.Closed {
		pdf.ClosePath()
	}
	pdf.DrawPath(way)
}

// letter writes the lines of a text where they stand.
func letter(pdf *fpdf.Fpdf, t draw.Text, theme draw.Theme) {
	ink := theme.TextInk(t.Style)
	pdf.SetTextColor(int(ink.R), int(ink.G), int(ink.B))
	pdf.SetFont(face, "", t.Size*72/160)
	for i, line := range t.Lines {
		pdf.Text(t.Box.Min.X/unitsPerMM, t.Baseline(i)/unitsPerMM, line)
	}
}
