package draw

import (
	"math"

	"yokebook/checks"
	"yokebook/checks/clutch"
	"yokebook/measure"
)

// Sizes of the clutch picture that nobody reads, mm: they only show where a part is.
const (
	nominalDisc   = 220.0 // outside diameter
	nominalShaftR = 13.0  // radius of an input shaft
	facingThick   = 8.0
	bodyThick     = 14.0
)

// stackPainter draws the clutch cut open, its upper half: x counts from the engine block's face toward
// the gearbox, y from the shaft's axis.
type stackPainter struct {
	*Scene
	*Drawing
	missing []string
	rim     float64 // radius of the disc
	adapter float64
}

// stack draws the clutch in section with gap, stroke and engagements.
func (s *Scene) stack() Drawing {
	d := Drawing{View: StackView, Box: emptyBox(), Title: s.says.Say("draw.title.stack")}
	if s.build.Layout.Clutch == "none" {
		d.note(s.says.Say("draw.no_clutch"))
		return d
	}
	p := &stackPainter{Scene: s, Drawing: &d, rim: nominalDisc / 2}
	if n, ok := s.bench("disc.od"); ok {
		p.rim = n.Value / 2
	}
	adapter, hasAdapter := p.want("adapter.thickness")
	p.adapter = adapter.Value
	face, hasFace := p.want("flywheel.face")
	depth, hasDepth := p.want("bellhousing.depth")
	if !hasFace && !hasDepth {
		p.missing = append(p.missing, "fingers.height", "bearing.height")
		p.note(p.unread(p.missing))
		return d
	}
	p.block(hasAdapter)
	if hasDepth && hasAdapter {
		p.housing(p.adapter + depth.Value)
	}
	p.shaft(hasAdapter, p.adapter+depth.Value, hasDepth)
	if hasFace {
		p.flywheel(face.Value)
		p.release(face.Value, p.adapter+depth.Value, hasDepth && hasAdapter)
	}
	p.spigot(hasAdapter)
	p.note(p.says.Say("draw.legend.stack"))
	p.note(p.unread(p.missing))
	return d
}

// want is a point of the stack; one that nobody read is named below the picture.
func (p *stackPainter) want(point string) (checks.Number, bool) {
	n, ok := p.bench(point)
	if !ok {
		p.missing = append(p.missing, point)
	}
	return n, ok
}

func (p *stackPainter) box(style Style, name string, x0, x1, y0, y1 float64) {
	p.area(style, name, Point{x0, y0}, Point{x1, y0}, Point{x1, y1}, Point{x0, y1})
}

// block draws the engine block's face and the adapter plate on it.
func (p *stackPainter) block(hasAdapter bool) {
	top := p.rim + 30
	p.line(Body, "block face", Point{0, p.rim + 10}, Point{0, top})
	for i := range 4 {
		y := p.rim + 13 + 6*float64(i)
		p.Shapes = append(p.Shapes, Shape{Style: Outline, Points: []Point{{0, y}, {0, y}}, Reach: Point{-10, -7}})
	}
	p.label(30, Left, Plain, Point{0, p.rim + 12}, p.says.Say("draw.block_face"))
	if hasAdapter && p.adapter > 0 {
		p.box(Body, "adapter", 0, p.adapter, p.rim+14, p.rim+30)
		p.label(32, Above, Plain, Point{p.adapter * 0.6, p.rim + 30}, p.named("adapter.thickness"))
	}
	p.line(Guide, "middle line", Point{-60, 0}, Point{p.adapter + 60, 0})
}

// named letters a point with its value.
func (p *stackPainter) named(point string) string {
	n, ok := p.bench(point)
	if !ok {
		return ""
	}
	q, _ := measure.PointOf(point)
	return p.says.Say("draw.point", p.says.Point(point), p.number(n, string(q.Quantity.Base())))
}

// housing draws the bellhousing and the gearbox's front face.
func (p *stackPainter) housing(back float64) {
	p.line(Outline, "bellhousing", Point{p.adapter, p.rim + 30}, Point{p.adapter + 8, p.rim + 30}, Point{back - 6, p.rim * 0.78}, Point{back, p.rim * 0.78})
	p.line(Body, "gearbox face", Point{back, nominalShaftR * 1.6}, Point{back, p.rim * 0.9})
	p.label(31, Above, Plain, Point{back, p.rim * 0.9}, p.says.Say("draw.gearbox_face"))
}

// flywheel draws the friction face, the disc on it and the disc's hub.
func (p *stackPainter) flywheel(face float64) {
	outer := p.rim * 1.03
	if n, ok := p.bench("flywheel.friction_od"); ok {
		outer = n.Value / 2
	}
	inner := p.rim * 0.62
	if n, ok := p.bench("disc.id"); ok {
		inner = n.Value / 2
	}
	p.box(Outline, "flywheel", face-bodyThick, face, p.rim*0.3, outer+6)
	p.line(Body, "friction face", Point{face, inner - 4}, Point{face, outer})
	p.box(Outline, "facing", face, face+facingThick, inner, p.rim)
	p.label(35, Left, Plain, Point{face - bodyThick, p.rim * 0.85}, p.named("flywheel.face"))
	front, hasFront := p.want("disc_hub.front")
	rear, hasRear := p.want("disc_hub.rear")
	if !hasFront || !hasRear {
		return
	}
	r := p.shaftRadius()
	p.box(Body, "disc hub", face+front.Value, face+rear.Value, r, r+11)
	p.line(Outline, "", Point{face + facingThick/2, r + 11}, Point{face + facingThick/2, inner})
}

// shaftRadius is that of the input splines, to scale where their diameter was read.
func (p *stackPainter) shaftRadius() float64 {
	if n, ok := p.bench("input_shaft.major"); ok {
		return n.Value / 2
	}
	return nominalShaftR
}

// release draws finger tips and release bearing, with gap and stroke.
func (p *stackPainter) release(face, back float64, hasBack bool) {
	fingers, hasFingers := p.want("fingers.height")
	height, hasHeight := p.want("bearing.height")
	ring := p.rim * 0.36
	if hasFingers {
		tip := face + fingers.Value
		root := face + fingers.Value*0.55
		p.line(Outline, "cover", Point{face, p.rim + 4}, Point{root, p.rim}, Point{root, p.rim * 0.85})
		p.line(Outline, "finger", Point{root, p.rim * 0.88}, Point{tip - 2, ring * 1.35}, Point{tip, ring * 1.1})
		p.line(Body, "finger tips", Point{tip, ring * 0.75}, Point{tip, ring * 1.1})
	}
	if !hasBack || !hasHeight {
		return
	}
	contact := back - height.Value
	p.box(Outline, "release bearing", contact, contact+bodyThick*1.4, ring*0.7, ring*1.25)
	p.line(Body, "bearing face", Point{contact, ring * 0.7}, Point{contact, ring * 1.25})
	p.line(Outline, "bearing tube", Point{contact + bodyThick*1.4, ring * 0.75}, Point{back, ring * 0.75})
	p.label(50, Right, Quiet, Point{contact + bodyThick*1.4, ring * 1.1}, p.says.Part("bearing"))
	if stroke, ok := p.want("slave.stroke"); ok {
		y := ring * 1.7
		p.line(Measure, "stroke", Point{contact, y}, Point{contact - stroke.Value, y})
		p.sign(ArrowSign, Measure, "", Point{contact - stroke.Value, y}, Point{-1, 0})
		p.line(Guide, "", Point{contact, ring * 1.25}, Point{contact, y + 3})
		p.label(12, Right, Plain, Point{contact, y}, p.named("slave.stroke"))
	}
	if hasFingers {
		p.gap(face+fingers.Value, contact, ring*0.62)
	}
}

// gap letters the way from finger tips to bearing, with the verdict where it was judged.
func (p *stackPainter) gap(tip, contact, y float64) {
	p.line(Measure, "gap", Point{tip, y}, Point{contact, y})
	for _, x := range []float64{tip, contact} {
		p.line(Measure, "", Point{x, y - 4}, Point{x, y + 6})
	}
	text, style := p.says.Number(contact-tip, "mm", 0.1), Plain
	for _, f := range p.findings {
		if f.Check != "clutch.release" || f.Value == nil || f.Unit != "mm" {
			continue
		}
		if f.Limit != nil && math.Abs(*f.Value-(contact-tip)) < 0.005 {
			text = p.says.Say("draw.judged", p.saidOf(&f), p.verdict(f))
			style = styleOf(f.Verdict)
		}
	}
	p.label(5, Below, style, Point{(tip + contact) / 2, y - 4}, p.says.Say("draw.gap", text))
}

// verdict is the word of a finding, with what it rests on in short.
func (s *Scene) verdict(f checks.Finding) string {
	word := s.says.Verdict(f.Verdict)
	if f.Verdict == checks.Clear && f.Predicted {
		word = s.says.Say("verdict.predicted", word)
	}
	if f.Verdict == checks.Clear && len(f.RestsOn) > 0 {
		word = s.says.Say("draw.if_stated", word)
	}
	return word
}

// styleOf is the style of a label that carries a verdict.
func styleOf(v checks.Verdict) Style {
	switch v {
	case checks.Out:
		return Worst
	case checks.Unsure:
		return Unsettled
	}
	return Plain
}

// shaft draws the input shaft with its splines and how far the hub sits on them.
func (p *stackPainter) shaft(hasAdapter bool, back float64, hasBack bool) {
	start, hasStart := p.want("input_shaft.spline_start")
	end, hasEnd := p.want("input_shaft.spline_end")
	if !hasAdapter || !hasStart || !hasEnd {
		return
	}
	r := p.shaftRadius()
	on := clutch.Span{FromMM: p.adapter + start.Value, ToMM: p.adapter + end.Value}
	if hasBack {
		p.box(Outline, "input shaft", on.ToMM, back, 0, r)
	}
	p.box(Body, "splines", on.FromMM, on.ToMM, 0, r)
	for i := range 3 {
		y := r * (0.3 + 0.25*float64(i))
		p.line(Outline, "", Point{on.FromMM, y}, Point{on.ToMM, y})
	}
	front, hasFront := p.bench("disc_hub.front")
	rear, hasRear := p.bench("disc_hub.rear")
	face, hasFace := p.bench("flywheel.face")
	if !hasFront || !hasRear || !hasFace {
		return
	}
	hub := clutch.Span{FromMM: face.Value + front.Value, ToMM: face.Value + rear.Value}
	if held := hub.OverlapMM(on); held > 0 {
		from := math.Max(hub.FromMM, on.FromMM)
		p.dimensionAt(Point{from, -4}, Point{from + held, -4}, "hub on splines", p.says.Say("draw.engaged", p.says.Number(held, "mm", 0.5)), 8)
	}
}

// dimensionAt draws a short dimension without feet.
func (p *stackPainter) dimensionAt(a, b Point, name, text string, rank int) {
	p.line(Measure, name, a, b)
	p.sign(ArrowSign, Measure, "", a, Point{-1, 0})
	p.sign(ArrowSign, Measure, "", b, Point{1, 0})
	p.label(rank, Below, Plain, a.middle(b), text)
}

// spigot draws the nose of the input shaft in the crank's bearing.
func (p *stackPainter) spigot(hasAdapter bool) {
	tip, hasTip := p.want("input_shaft.tip")
	nose, hasNose := p.want("input_shaft.nose")
	face, hasFace := p.want("spigot.face")
	length, hasLength := p.want("spigot.length")
	r := nominalShaftR * 0.6
	if n, ok := p.bench("input_shaft.tip_dia"); ok {
		r = n.Value / 2
	}
	if hasFace && hasLength {
		p.box(Body, "spigot bearing", -face.Value-length.Value, -face.Value, r, r+7)
		p.label(36, Above, Plain, Point{-face.Value - length.Value/2, r + 7}, p.says.Part("spigot"))
	}
	if bore, ok := p.want("spigot.bore_depth"); ok {
		p.line(Body, "bottom of bore", Point{-bore.Value, 0}, Point{-bore.Value, r + 12})
	}
	if !hasTip || !hasNose || !hasAdapter {
		return
	}
	at := p.adapter - tip.Value
	p.box(Body, "nose", at, at+nose.Value, 0, r)
	if start, ok := p.bench("input_shaft.spline_start"); ok {
		p.box(Outline, "", at+nose.Value, p.adapter+start.Value, 0, p.shaftRadius()*0.85)
	}
	if !hasFace || !hasLength {
		return
	}
	in := clutch.Nose{AdapterMM: p.adapter, TipMM: tip.Value, NoseMM: nose.Value, FaceMM: face.Value, BearingMM: length.Value}.EngagedMM()
	if in > 0 {
		from := math.Max(at, -face.Value-length.Value)
		p.dimensionAt(Point{from, -4}, Point{from + in, -4}, "nose in spigot", p.says.Say("draw.engaged", p.says.Number(in, "mm", 0.5)), 9)
	}
}
