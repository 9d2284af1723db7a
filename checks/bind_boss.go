package checks

// clutchBoss is the room lengthwise between the gearbox end of the disc's hub, disc new, and what it
// could meet there.
//
//	fingers: (fingers' height − the most that they are pressed) − hub
//	guide:   (adapter + bellhousing depth − sleeve) − (flywheel face + hub)
//
// A hub that passes through the circle of the fingers' tips may well stand among them, and nobody reads
// that circle here: too little room there is unsure, never out. A pull type draws the fingers away from
// the hub. Source: common practice, no source; the sums worked apart from this code.
func clutchBoss(e *engine, subject string) answer {
	if e.clutchless() {
		return answer{lacking: true}
	}
	a := &asked{e: e}
	if subject == "guide" {
		x, whole := a.readAll("adapter.thickness", "bellhousing.depth", "guide_tube.length", "flywheel.face", "disc_hub.rear")
		if !whole {
			return answer{missing: a.missing}
		}
		room := e.combine("hub to sleeve", 1, func(v, out []float64) { out[0] = v[0] + v[1] - v[2] - v[3] - v[4] }, x...)[0]
		return answer{q: room, advice: Message{Key: MsgBossOnGuide}}
	}
	x, whole := a.readAll("fingers.height", "disc_hub.rear")
	pressed := exact(0)
	if e.build.Layout.Clutch != "pull" {
		if pressed = a.read("fingers.travel_max"); pressed == nil {
			whole = false
		}
	}
	if !whole {
		return answer{missing: a.missing}
	}
	room := e.combine("hub to fingers", 1, func(v, out []float64) { out[0] = v[0] - v[1] - v[2] }, x[0], x[1], pressed)[0]
	return answer{q: room, gentle: true, advice: Message{Key: MsgBossInFingers}}
}
