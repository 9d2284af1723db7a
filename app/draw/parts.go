package draw

import "math"

// shaftTubes draws shafts with their yokes. A tube is to scale where its diameter was read.
func (p *painter) shaftTubes() {
	for i, part := range p.bones.shafts {
		if !part.Known {
			continue
		}
		key := "tube.od"
		if part.Name == "front_shaft" {
			key = "front_shaft.tube_od"
		}
		style, wide := Outline, nominalTube
		if n, ok := p.bench(key); ok {
			style, wide = Body, n.Value
		}
		a, b := p.at(p.bones.joints[i]), p.at(p.bones.joints[i+1])
		way := a.toward(b)
		end := math.Min(1.25*wide, a.minus(b).length()/4)
		p.fork(a, way, end)
		p.fork(b, way.by(-1), end)
		p.area(style, "tube of "+part.Name, bar(a.plus(way.by(end)), b.minus(way.by(end)), wide)...)
	}
}

// fork draws the yoke at a shaft's end, its arms around the joint at a; way leads into the shaft.
func (p *painter) fork(a, way Point, long float64) {
	o := way.square()
	var half []Point
	for _, q := range [][2]float64{{1, 0.4}, {0.3, 0.36}, {-0.12, 0.36}, {-0.12, 0.22}, {0.25, 0.2}, {0.5, 0}} {
		half = append(half, a.plus(way.by(q[0]*long)).plus(o.by(q[1]*long)))
	}
	outline := half
	for i := len(half) - 2; i >= 0; i-- {
		d := half[i].minus(a)
		outline = append(outline, half[i].minus(o.by(2*d.along(o))))
	}
	p.area(Outline, "", outline...)
}

// ends draws what gearbox and pinion look like at their joints, in thin grey: nobody read their
// outlines.
func (p *painter) ends() {
	b, parts := p.bones, p.bones.stance.Parts
	n := len(parts)
	p.stub(parts[0].Name, parts[0].Known, p.at(b.joints[0]), p.at(b.stubs[0]))
	p.stub(parts[n-1].Name, parts[n-1].Known, p.at(b.joints[n-2]), p.at(b.stubs[1]))
	p.bearing()
}

func (p *painter) stub(name string, known bool, at, end Point) {
	if !known {
		return
	}
	way := at.toward(end)
	long := at.minus(end).length()
	small, big := nominalTube*0.9, nominalTube*2.2
	if name == "pinion" {
		big = nominalTube * 1.7
	}
	o := way.square()
	flange, neck := at.plus(way.by(nominalTube*0.75)), at.plus(way.by(nominalTube*1.05))
	wide := at.plus(way.by(math.Min(nominalTube*2.6, long*0.8)))
	p.area(Outline, "outline of "+name, neck.plus(o.by(small/2)), wide.plus(o.by(big/2)), end.plus(o.by(big/2)),
		end.plus(o.by(-big/2)), wide.plus(o.by(-big/2)), neck.plus(o.by(-small/2)))
	p.area(Outline, "flange of "+name, bar(flange, neck, nominalTube*1.5)...)
	p.area(Outline, "yoke of "+name, at.plus(o.by(0.22*nominalTube)), flange.plus(o.by(0.5*nominalTube)),
		flange.plus(o.by(-0.5*nominalTube)), at.plus(o.by(-0.22*nominalTube)))
	p.sign(CutSign, Outline, "", end, way)
}

// bearing draws the centre bearing of a two-piece line where it sits on the front shaft.
func (p *painter) bearing() {
	offset, ok := p.bench("centre_bearing.offset")
	if !ok || len(p.bones.shafts) < 2 || !p.bones.shafts[0].Known {
		return
	}
	first := p.bones.shafts[0]
	on := p.bones.joints[1].Plus(axisOf(first).By(offset.Value))
	at, way := p.at(on), p.seen(first)
	o := way.square()
	thick, high := way.by(14), o.by(nominalTube)
	p.area(Outline, "centre bearing", at.plus(thick).plus(high), at.minus(thick).plus(high), at.minus(thick).minus(high), at.plus(thick).minus(high))
	p.label(40, Below, Quiet, at.minus(high), p.says.Part("centre_bearing"))
}
