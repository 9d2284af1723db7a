package checks

// Keys of the messages about the axle's travel and the sliding spline.
const (
	MsgSlipLonger   = "advice.slip_longer"   // (mm) make the shaft longer by that, or engage more spline
	MsgSlipShorter  = "advice.slip_shorter"  // (mm) make the shaft shorter by that
	MsgSlipStroke   = "advice.slip_stroke"   // (mm) no length makes this spline do: the stroke it takes
	MsgSlipSeal     = "advice.slip_seal"     // (mm) a longer barrel, or a longer shaft, by that
	MsgStateAssumed = "advice.state_assumed" // (point) it was worked out or taken for granted and decides: have it stated
	MsgStateFiner   = "advice.state_finer"   // (point) a stated value that decides by its last digit: state more digits
	MsgPathDisputed = "advice.path_disputed" // readings and sizes don't agree: look at both

	MsgSlipFalls    = "note.slip_falls"    // the spline can come apart: the shaft falls out
	MsgPath         = "note.path"          // (way: fixed, links, leaf, read, straight) how the axle's path is known
	MsgEyeInFront   = "note.eye_in_front"  // which spring eye is fixed was not said: the front one
	MsgComputedFrom = "note.computed_from" // (state) a state that was not read, computed from one that was
	MsgHeightMoved  = "note.height_moved"  // (point, difference in mm) moved along the axle's path
	MsgSlipExtremes = "note.slip_extremes" // (mm of height where it is shortest, mm where it is longest)
	MsgSlipNeeds    = "note.slip_needs"    // (mm) the stroke it takes with what must be left at both ends
	MsgSlipExposed  = "note.slip_exposed"  // (mm) the length is fully closed; drawn out by that at ride height
	MsgSlipTail     = "note.slip_tail"     // the length is from joint centre to joint centre
	MsgSlipWound    = "note.slip_wound"    // (mm in drive, mm on the overrun) further out at ride height by wind-up, not counted
	MsgWindUpWorked = "note.windup_worked" // (degrees, N·m on the axle, N·m/rad) worked out, estimated
)
