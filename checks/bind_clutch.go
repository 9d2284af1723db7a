package checks

import (
	"fmt"
	"math"

	"yokebook/checks/clutch"
	"yokebook/measure"
)

var (
	gapPoints   = []string{"adapter.thickness", "bellhousing.depth", "bearing.height", "flywheel.face", "fingers.height"}
	hubPoints   = []string{"flywheel.face", "disc_hub.front", "disc_hub.rear", "adapter.thickness", "input_shaft.spline_start", "input_shaft.spline_end"}
	nosePoints  = []string{"adapter.thickness", "input_shaft.tip", "input_shaft.nose", "spigot.face", "spigot.length"}
	facingSizes = []string{"disc.od", "disc.id"}
)

var clutchRows = []Check{
	{Key: "clutch.release", Group: "clutch", Points: append(gapPoints[:len(gapPoints):len(gapPoints)], "slave.stroke", "fingers.wear",
		"fingers.travel", "fingers.travel_max"), Unit: "mm", whole: clutchRelease},
	{Key: "clutch.hub", Group: "clutch", Points: append(hubPoints[:len(hubPoints):len(hubPoints)], "disc_hub.length", "flywheel.bolt_clear"),
		Unit: "mm", whole: clutchHub},
	{Key: "clutch.boss", Group: "clutch", Points: []string{"flywheel.face", "disc_hub.rear", "fingers.height", "fingers.travel_max",
		"adapter.thickness", "bellhousing.depth", "guide_tube.length"}, Unit: "mm", Limit: "clutch.boss", perPart: clutchBoss,
		subjects: func(measure.Layout) []string { return []string{"fingers", "guide"} }},
	{Key: "clutch.spigot", Group: "clutch", Points: append(nosePoints[:len(nosePoints):len(nosePoints)], "spigot.bore_depth", "spigot.bore",
		"input_shaft.tip_dia"), Unit: "mm", whole: clutchSpigot},
	{Key: "clutch.fit", Group: "clutch", Points: []string{"disc.od", "flywheel.friction_od", "cover.friction_od"}, Unit: "mm",
		Limit: "clutch.fit", whole: clutchFit},
	{Key: "clutch.torque", Group: "clutch", Points: append(facingSizes[:len(facingSizes):len(facingSizes)], "cover.clamp_force", "disc.friction",
		"engine.torque_max"), Unit: "N·m", perPart: clutchTorque, advise: always(MsgStrongerClutch)},
}

func (e *engine) clutchless() bool { return e.build.Layout.Clutch == "none" }

// clutchRelease asks whether the release bearing keeps its gap to the end of the disc's life and
// still moves the fingers far enough, but not too far. The gap speaks; a worse one takes its place.
func clutchRelease(e *engine, c *Check) []Finding {
	if e.clutchless() {
		return nil
	}
	a := &asked{e: e}
	args, whole := a.readAll(gapPoints...)
	var gap *quantity
	if whole {
		gap = e.combine("gap", 1, func(x, out []float64) {
			out[0] = clutch.Stack{AdapterMM: x[0], DepthMM: x[1], BearingMM: x[2], FlywheelMM: x[3], FingersMM: x[4]}.GapMM()
		}, args...)[0]
	}
	switch e.build.Layout.Clutch {
	case "pull":
		a.notes = append(a.notes, Message{Key: MsgPullType})
		a.pull(gap)
	default:
		if e.build.Layout.Clutch == "" {
			a.notes = append(a.notes, Message{Key: MsgPushTaken})
		}
		a.push(gap)
	}
	f := a.finding(c, "")
	if gap != nil && !gap.bad {
		f.Notes = append(f.Notes, Message{MsgGap, []any{gap.best}})
	}
	if cure := a.cure(); f.Verdict == Unsure && cure.Key != "" {
		f.Notes = append(f.Notes, cure)
	}
	return []Finding{f}
}

// push asks for reserve at full wear, and for the fingers' travel in what is left of the stroke.
func (a *asked) push(gap *quantity) {
	e := a.e
	a.notes = append(a.notes, Message{Key: MsgConstantContact})
	stated, _ := a.readAll("fingers.wear", "slave.stroke", "fingers.travel", "fingers.travel_max")
	if gap == nil {
		return
	}
	wear, stroke, travel, most := stated[0], stated[1], stated[2], stated[3]
	if wear == nil {
		wear = exact(0) // what is not known yet can only ask for more
	}
	least := e.combine("wear and reserve", 1, func(x, out []float64) { out[0] = x[0] + x[1] }, wear, exact(e.setting("clutch.release")))[0]
	a.askWorked(gap, "clutch.release", "mm", "min", least, Message{})
	if stroke != nil {
		left := e.combine("stroke left", 1, func(x, out []float64) { out[0] = x[0] - x[1] }, stroke, gap)[0]
		if travel != nil {
			a.askStated(left, "fingers.travel", "mm", "min", travel, Message{})
		}
		if most != nil {
			a.askStated(left, "fingers.travel_max", "mm", "max", most, Message{})
		}
		a.notes = append(a.notes, Message{MsgStrokeLeft, []any{left.best}})
	}
	if len(a.missing) == 0 {
		a.cured(gap.best, func() (float64, float64, error) {
			return clutch.Push{StrokeMM: stroke.best, WearMM: wear.best, ReserveMM: e.setting("clutch.release"),
				TravelMM: travel.best, TravelMaxMM: most.best}.Window()
		}, travel.best+wear.best+e.setting("clutch.release"))
	}
}

// pull asks for the fingers' travel before the bearing meets its stop, and in its stroke.
func (a *asked) pull(gap *quantity) {
	stated, _ := a.readAll("slave.stroke", "fingers.travel", "fingers.travel_max")
	stroke, travel, most := stated[0], stated[1], stated[2]
	if gap == nil || travel == nil {
		return
	}
	a.askStated(gap, "fingers.travel", "mm", "min", travel, Message{})
	if stroke == nil {
		return
	}
	a.askStated(stroke, "fingers.travel", "mm", "min", travel, Message{MsgLongerStroke, []any{travel.best}})
	if most == nil {
		return
	}
	way := a.e.combine("way", 1, func(x, out []float64) { out[0] = math.Min(x[0], x[1]) }, gap, stroke)[0]
	a.askStated(way, "fingers.travel_max", "mm", "max", most, Message{})
	if len(a.missing) == 0 {
		a.cured(gap.best, func() (float64, float64, error) {
			if stroke.best < travel.best || most.best < travel.best {
				return 0, 0, fmt.Errorf("no way of the bearing suits these fingers")
			}
			return travel.best, most.best, nil
		}, travel.best)
	}
}

// cured gives every demand that has no advice the two ways of centring the bearing, each in mm: a
// spacer behind it, or the friction face moved; or the stroke it takes where no place of it suits.
func (a *asked) cured(gap float64, window func() (least, most float64, err error), stroke float64) {
	least, most, err := window()
	cure := Message{MsgLongerStroke, []any{stroke}}
	if err == nil {
		shift := clutch.CentreMM(gap, least, most)
		cure = Message{MsgBearingForward, []any{shift, shift}}
		if shift < 0 {
			cure = Message{MsgBearingBack, []any{-shift, -shift}}
		}
	}
	for i := range a.list {
		if a.list[i].advice.Key == "" {
			a.list[i].advice = cure
		}
	}
}

// cure is the advice of the first demand.
func (a *asked) cure() Message {
	if len(a.list) == 0 {
		return Message{}
	}
	return a.list[0].advice
}

// clutchFit asks whether the facing lies wholly on the friction faces of flywheel and cover.
func clutchFit(e *engine, c *Check) []Finding {
	if e.clutchless() {
		return nil
	}
	a := &asked{e: e}
	disc := a.read("disc.od")
	for _, face := range []string{"flywheel.friction_od", "cover.friction_od"} {
		ring := a.read(face)
		if disc == nil || ring == nil {
			continue
		}
		beyond := e.combine("beyond", 1, func(x, out []float64) { out[0] = x[0] - x[1] }, ring, disc)[0]
		a.ask(beyond, "clutch.fit", Message{MsgSmallerDisc, []any{face}})
	}
	return []Finding{a.finding(c, "")}
}

// clutchTorque is what the clutch holds, by uniform wear, against the engine's torque with the service
// factor; by even pressure, as a new facing, it holds a little more.
func clutchTorque(e *engine, _ string) answer {
	if e.clutchless() {
		return answer{lacking: true}
	}
	a := &asked{e: e}
	sizes, whole := a.readAll("disc.od", "disc.id", "cover.clamp_force")
	engine := a.read("engine.torque_max")
	if !whole {
		return answer{missing: a.missing}
	}
	friction := e.bench("disc.friction")
	if friction == nil {
		friction = e.unread("disc.friction", "clutch.friction")
		low, high := e.rangeOf("clutch.friction")
		a.notes = append(a.notes, Message{MsgFrictionUnread, []any{low, high}})
	}
	out := e.combine("clutch torque", 2, func(x, out []float64) {
		f := clutch.Facing{OuterMM: x[0], InnerMM: x[1], Friction: x[3], Faces: 2}
		out[0], out[1] = orNone(f.WearTorque(x[2])), orNone(f.PressureTorque(x[2]))
	}, append(sizes, friction)...)
	if !out[1].bad {
		a.notes = append(a.notes, Message{MsgNewFacing, []any{out[1].best}})
	}
	result := answer{q: out[0], notes: a.notes, missing: a.missing}
	if engine != nil {
		result.against = e.combine("service", 1, func(x, out []float64) { out[0] = float64(x[0] * x[1]) }, engine, exact(e.setting("clutch.torque")))[0]
		result.own = e.workedLimit("clutch.torque", result.against, "N·m", "min")
	}
	return result
}
