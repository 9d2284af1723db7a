package remedy

import (
	"math"

	"yokebook/checks"
)

// costsOfPinion: a nose that rises starves the front pinion bearing, one that drops floods the seal; on
// a front axle the steering's caster goes with the housing.
func costsOfPinion(v *vehicle, deg float64) []checks.Message {
	nose := deg * v.toward() // the nose is the front end, or on a front axle the rear end
	out := []checks.Message{{Key: MsgPinionOil, Args: []any{nose}}}
	if nose < 0 {
		out[0] = checks.Message{Key: MsgPinionDown, Args: []any{-nose}}
	}
	if v.build.Layout.PinionInFront() {
		out = append(out, checks.Message{Key: MsgCaster, Args: []any{deg}})
	}
	if !v.has("rear_joint.x", "rear_joint.z") {
		out = append(out, checks.Message{Key: MsgJointUnplaced})
	}
	return out
}

func costOfSump(deg float64) checks.Message {
	if deg < 0 {
		return checks.Message{Key: MsgSumpDown, Args: []any{-deg}}
	}
	return checks.Message{Key: MsgSumpUp, Args: []any{deg}}
}

func costsOfMount(v *vehicle, mm float64) []checks.Message {
	lever, _ := v.lever()
	deg := v.tilt(mm)
	out := []checks.Message{{Key: MsgMountLever, Args: []any{math.Abs(deg), lever}}, costOfSump(deg), {Key: MsgRoomGearbox, Args: []any{mm}}}
	if !v.has("wheelbase.length", "rear_joint.x", "shaft.length") || v.build.Layout.Shafts != 1 {
		out = append(out, checks.Message{Key: MsgJointAtMount})
	}
	return out
}

func costsOfGearbox(_ *vehicle, deg float64) []checks.Message {
	return []checks.Message{costOfSump(deg), {Key: MsgGearboxTurn}}
}

func costsOfPhase(v *vehicle, deg float64) []checks.Message {
	out := []checks.Message{{Key: MsgWeldPhase}}
	if teeth, ok := v.bench("slip_male.splines"); ok && teeth >= 4 && v.build.Layout.Slip == "shaft" {
		out[0] = checks.Message{Key: MsgTeeth, Args: []any{int(math.Round(math.Abs(deg) * teeth / 360))}}
	}
	return append(out, checks.Message{Key: MsgMatchMarks})
}
