package tool

// Places along the clutch in its picture: u grows to the right, toward the gearbox.
const (
	blockX, adapterX, frictionX, tipsX = 46.0, 60.0, 80.0, 112.0
	bearingX, boxX, axisY              = 134.0, 196.0, 62.0
	shaftTipX, splinesX, splinesEndX   = 28.0, 84.0, 134.0
)

// along is a measured length of the clutch from one place to another, at a height of the picture.
type along struct{ from, to, y float64 }

var stackLengths = map[string]along{
	"adapter.thickness": {blockX, adapterX, 8}, "flywheel.face": {blockX, frictionX, 20},
	"fingers.height": {frictionX, tipsX, 44}, "fingers.travel": {tipsX, tipsX - 10, 50}, "fingers.travel_max": {tipsX, tipsX - 18, 50},
	"fingers.wear": {tipsX, tipsX + 9, 50}, "bellhousing.depth": {adapterX, boxX, 112}, "bearing.height": {bearingX, boxX, 40},
	"guide_tube.length": {bearingX + 10, boxX, 56}, "slave.stroke": {bearingX, bearingX - 20, 40}, "input_shaft.spline_start": {adapterX, splinesX, 76},
	"input_shaft.spline_end": {adapterX, splinesEndX, 76}, "input_shaft.tip": {adapterX, shaftTipX, 78}, "input_shaft.nose": {shaftTipX, shaftTipX + 16, 78},
	"disc_hub.front": {frictionX, frictionX - 8, 76}, "disc_hub.rear": {frictionX, frictionX + 20, 76},
	"spigot.face": {blockX, blockX - 6, 82}, "spigot.length": {blockX - 18, blockX - 6, 82}, "spigot.bore_depth": {blockX, 14, 82},
	"flywheel.bolt_clear": {frictionX, frictionX - 9, 40},
}

var stackDiameters = map[string]along{ // from and to count across here, y along
	"disc.od": {24, 100, frictionX + 5}, "disc.id": {44, 80, frictionX + 5}, "flywheel.friction_od": {20, 104, frictionX},
	"cover.friction_od": {22, 102, frictionX + 12}, "spigot.bore": {55, 69, blockX - 12}, "input_shaft.tip_dia": {57, 67, shaftTipX + 6},
}

// stackAt draws the clutch cut open with one of its lengths or diameters.
func (d *picture) stackAt(key string) bool {
	long, isLong := stackLengths[key]
	wide, isWide := stackDiameters[key]
	if !isLong && !isWide {
		return false
	}
	d.stack()
	if isWide {
		d.line(wide.y, wide.from, wide.y, wide.to, mark, 3)
		d.feet(wide.y, wide.from, 214, wide.from)
		d.feet(wide.y, wide.to, 214, wide.to)
		d.gauge(212, wide.from, 212, wide.to)
		return true
	}
	y := 118.0
	if long.y < axisY {
		y = 2
	}
	d.feet(long.from, long.y, long.from, y)
	d.feet(long.to, long.y, long.to, y)
	d.gauge(long.from, y, long.to, y)
	return true
}

// stack draws engine block, flywheel, disc, cover, release bearing, bellhousing and input shaft.
func (d *picture) stack() {
	d.shape(fill, line, 1.6, 0, 14, blockX, 14, blockX, 110, 0, 110)
	d.shape(fill, quiet, 1.4, 14, 55, blockX, 55, blockX, 69, 14, 69)
	d.shape(fill, line, 1.6, blockX-18, 55, blockX-6, 55, blockX-6, 69, blockX-18, 69)
	d.shape(fill, line, 1.6, blockX, 10, adapterX, 10, adapterX, 18, blockX, 18)
	d.shape(fill, line, 1.6, blockX, 106, adapterX, 106, adapterX, 114, blockX, 114)
	d.stroke(quiet, 1.6, point{adapterX, 12}, point{boxX, 26}, point{boxX, 98}, point{adapterX, 112})
	d.line(boxX, 20, boxX, 104, line, 2.4)
	d.shape(fill, line, 1.6, blockX+8, 18, frictionX, 18, frictionX, 106, blockX+8, 106)
	d.shape(fill, line, 1.6, frictionX, 24, frictionX+7, 24, frictionX+7, 44, frictionX, 44)
	d.shape(fill, line, 1.6, frictionX, 80, frictionX+7, 80, frictionX+7, 100, frictionX, 100)
	d.line(shaftTipX, axisY, boxX, axisY, quiet, 1)
	d.bar(shaftTipX, axisY, boxX, axisY, 10, fill, line, 1.6)
	d.bar(splinesX, axisY, splinesEndX, axisY, 14, fill, line, 1.6)
	d.shape(fill, line, 1.6, frictionX-8, 52, frictionX+20, 52, frictionX+20, 57, frictionX-8, 57)
	d.shape(fill, line, 1.6, frictionX-8, 67, frictionX+20, 67, frictionX+20, 72, frictionX-8, 72)
	for _, side := range []float64{-1, 1} {
		d.stroke(line, 1.6, point{frictionX, axisY + side*44}, point{frictionX + 20, axisY + side*40}, point{tipsX, axisY + side*16})
		d.line(tipsX, axisY+side*18, tipsX, axisY+side*12, line, 2.6)
		d.shape(fill, line, 1.6, bearingX, axisY+side*10, bearingX+14, axisY+side*10, bearingX+14, axisY+side*20, bearingX, axisY+side*20)
	}
}
