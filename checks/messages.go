package checks

// Keys of the messages that findings carry; app/words makes the sentences. Behind each key stand
// its arguments in order: a number in the unit named, a point key, a state as State.String writes
// it, or plain text that a person entered.
const (
	// Advice: which knob and which way; amounts are worked out elsewhere.
	MsgTakeMissing    = "advice.take_missing"    // the readings named as missing are to be taken
	MsgLetDown        = "advice.let_down"        // (point) wheels hang: read again standing on the wheels
	MsgOffBump        = "advice.off_bump"        // not a state it runs in: read again at ride height
	MsgReadAgain      = "advice.read_again"      // (input point or instrument.zero, state) this one decides
	MsgZeroAgain      = "advice.zero_again"      // (instrument) its shared zero decides: turn it end for end
	MsgReadAssumed    = "advice.read_assumed"    // (point) it was never read and decides
	MsgTurnPinion     = "advice.turn_pinion"     // ("up" or "down": which way its front end goes)
	MsgTurnGearbox    = "advice.turn_gearbox"    // ("up" or "down": which way its front end goes)
	MsgSmallerAngle   = "advice.smaller_angle"   // (subject) bring the two axes at this joint nearer to one line
	MsgSmallerDrive   = "advice.smaller_drive"   // smaller angles between gearbox and this shaft, or a slower shaft
	MsgSmallerCoast   = "advice.smaller_coast"   // smaller angles between axle and this shaft, or a slower shaft
	MsgSlowerOrEven   = "advice.slower_or_even"  // make the joints cancel better, or run the shaft slower
	MsgOtherJoint     = "advice.other_joint"     // a joint that is allowed more, or a smaller angle at the worst height
	MsgLeastContested = "advice.least_contested" // sources dispute a least angle; pick one with a reason
	MsgDatumBoth      = "advice.datum_both"      // (older setup, newest setup) read datum.slope in both
	MsgContradiction  = "advice.contradiction"   // (state) ride and load can't go together: strike or correct
	MsgImplausible    = "advice.implausible"     // (point, value in base unit, low, high)
	MsgHeights        = "advice.heights"         // (point, difference in mm)
	MsgDisputedID     = "advice.disputed_id"     // (reading id) two records share it, or corrections run in a ring
	MsgReverse        = "advice.reverse"         // (instrument, setup) read one place both ways: its zero counts double
	MsgOutlier        = "advice.outlier"         // (point, value in base unit, reading id) stands apart: look, then strike or read again
	MsgThirdReading   = "advice.third_reading"   // (point) two readings differ by more than the tool explains: take a third
	MsgDisputedInput  = "advice.disputed_input"  // (key of a range that sources dispute) its range decides: pick a value with a reason
	MsgNoNumber       = "advice.no_number"       // the readings give no finite number: look for a wrong value

	// Notes: what else to know.
	MsgSideView       = "note.side_view"        // plan angles were not read: side view only
	MsgPhaseAssumed   = "note.phase_assumed"    // yokes taken as in line
	MsgHanging        = "note.hanging"          // hanging wheels: not the angles it runs at
	MsgOnBump         = "note.on_bump"          // on the bump stops: passed through, not run at
	MsgDoubleJoint    = "note.double_joint"     // taken as constant velocity, true only within its limit
	MsgSpeedEngine    = "note.speed_engine"     // (rev/min) highest shaft speed from the engine
	MsgSpeedRoad      = "note.speed_road"       // (rev/min, factor) from road speed, engine figures absent
	MsgSpeedGoverned  = "note.speed_governed"   // (rev/min, reason) from a governed road speed
	MsgSetupsBridged  = "note.setups_bridged"   // (older setup, newest setup) moved by the difference of datum.slope
	MsgHeightWidened  = "note.height_widened"   // (point, difference in mm, degrees) widened by Δh/L
	MsgZeroFound      = "note.zero_found"       // (instrument, setup, degrees that it shows too much, standard uncertainty)
	MsgWayUnsaid      = "note.way_unsaid"       // (instrument) which end faced forward was not said: taken as the same each time
	MsgBestPhase      = "note.best_phase"       // (point, deg, residual there in deg) the phase that leaves least
	MsgMatchNoVerdict = "note.match_no_verdict" // equal ends don't prove a small residual
	MsgWorstState     = "note.worst_state"      // (state) where the largest angle stands
	MsgDecidedBy      = "note.decided_by"       // (check, subject, state) the finding that holds the build back most
)
