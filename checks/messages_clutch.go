package checks

// Keys of the messages about splines, the clutch and what holds a flange.
const (
	MsgOtherSpline     = "advice.other_spline"    // (teeth of one half, of the other) counts differ: a part with the same count
	MsgSplineTight     = "advice.spline_tight"    // (point, point) the male one is the larger
	MsgSplineLoose     = "advice.spline_loose"    // (point, point) more clearance than one size of spline has
	MsgSplineShort     = "advice.spline_short"    // (mm) longer teeth in engagement, that much at least
	MsgStrongerSpline  = "advice.stronger_spline" // a longer, larger or harder spline, or less torque
	MsgBearingForward  = "advice.bearing_forward" // (mm spacer behind the bearing, mm of friction face toward the gearbox) either centres it
	MsgBearingBack     = "advice.bearing_back"    // (mm bearing further back, mm of friction face toward the engine) either centres it
	MsgLongerStroke    = "advice.longer_stroke"   // (mm) no place of the bearing suits: the stroke it takes
	MsgHubOff          = "advice.hub_off"         // (mm) hub or spline is to move along the axis by that
	MsgBossOnBolts     = "advice.boss_on_bolts"   // flatter bolt heads, or a disc with a shorter boss
	MsgBossOnGuide     = "advice.boss_on_guide"   // the hub meets the release bearing's sleeve
	MsgBossInFingers   = "advice.boss_in_fingers" // the hub stands among the fingers: compare its diameter with their circle
	MsgNoseShort       = "advice.nose_short"      // (mm) a spigot bearing nearer to the gearbox by that
	MsgNoseLong        = "advice.nose_long"       // (mm) the tip is to be shorter, or the gearbox further back, by that
	MsgOtherSpigot     = "advice.other_spigot"    // a spigot bearing with another bore
	MsgSmallerDisc     = "advice.smaller_disc"    // the facing runs off the friction face
	MsgStrongerClutch  = "advice.stronger_clutch" // more clamp, more friction or a larger facing
	MsgMoreClamp       = "advice.more_clamp"      // more torque, a larger thread, or less thrust from the spline
	MsgLessTorque      = "advice.less_torque"     // the thread is stretched: less torque or a higher grade
	MsgLongerReach     = "advice.longer_reach"    // (mm) more thread held, that much at least
	MsgNotRecoverable  = "advice.not_recoverable" // a stud welded to a hardened shaft: no calculation makes it good
	MsgLowEndFails     = "advice.low_end_fails"   // (N at the low end, N asked for) the torque alone does not prove the clamp
	MsgTryByHand       = "note.try_by_hand"       // counts equal, diameters agree; try by hand, lash not measured
	MsgOddCount        = "note.odd_count"         // (point) odd count: flat jaws don't span the tips
	MsgSplineCandidate = "note.spline_candidate"  // (standard and size, what its root is, flank in deg, mm off at the tips, mm off at the roots)
	MsgSplineByTips    = "note.spline_by_tips"    // the same without the roots
	MsgSplineByRoots   = "note.spline_by_roots"   // the same without the tips
	MsgSplineStraight  = "note.spline_straight"   // (standard and size, tooth width in mm) compare that too
	MsgSplineUnknown   = "note.spline_unknown"    // none of the tabled standards is near
	MsgSplineAlike     = "note.spline_alike"      // several fit and no reading in the table tells them apart: a trial fit
	MsgSplineSettle    = "note.spline_settle"     // (point) reading it would tell candidates apart
	MsgPinsDontSit     = "note.pins_dont_sit"     // (point) these pins touch no candidate where they should: left out
	MsgStressShares    = "note.stress_shares"     // (MPa under the teeth, MPa in the teeth, MPa on the flanks)
	MsgHardnessUnread  = "note.hardness_unread"   // (point) not read: taken anywhere in the range
	MsgSlipForce       = "note.slip_force"        // (N) thrust that the sliding spline can send along the shaft
	MsgGap             = "note.gap"               // (mm) gap between release bearing and fingers
	MsgStrokeLeft      = "note.stroke_left"       // (mm) the fingers' travel at the end of the stroke
	MsgConstantContact = "note.constant_contact"  // a bearing that always rests on the fingers has no gap: its maker's figure
	MsgPushTaken       = "note.push_taken"        // push or pull was not said: taken as push
	MsgPullType        = "note.pull_type"         // pull type: worn fingers move away from the bearing's stop
	MsgWornDisc        = "note.worn_disc"         // (mm) reckoned for a hub that much nearer to the engine
	MsgNewFacing       = "note.new_facing"        // (N·m) of a new facing, by even pressure
	MsgFrictionUnread  = "note.friction_unread"   // (least, most) friction not stated: taken anywhere in the range
	MsgNutFactor       = "note.nut_factor"        // (factor, share) clamp from torque: known to ± that share
	MsgRetainerCare    = "note.retainer_care"     // no welding to bolts, studs or shaft ends; new nut; clean and dry
	MsgGradeUnknown    = "note.grade_unknown"     // (grade) is not one of ISO 898-1
)
