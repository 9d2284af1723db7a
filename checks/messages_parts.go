package checks

// Keys of the messages about the shaft's tube and torque, its ends, masses, lifting, and what a
// person answers.
const (
	MsgWiderTube      = "advice.wider_tube"       // a wider tube or a shorter shaft: two pieces; a thicker wall does not help
	MsgDontDwell      = "advice.dont_dwell"       // (rev/min, rev/min) don't drive steadily between these
	MsgStrongerTube   = "advice.stronger_tube"    // a wider or thicker tube, or a stronger steel
	MsgStrongerJoint  = "advice.stronger_joint"   // a larger joint, or less torque
	MsgLongerLife     = "advice.longer_life"      // a smaller angle or a larger joint
	MsgMoreRoom       = "advice.more_room"        // move the obstacle or the shaft, or a tube of less diameter
	MsgAdapterFlange  = "advice.adapter_flange"   // an adapter flange piloted on both sides; never drill to suit
	MsgPilotFiner     = "advice.pilot_finer"      // (point, point) a caliper can't settle it: micrometer, or repeats
	MsgOtherJointSize = "advice.other_joint_size" // a joint made for both cap sizes
	MsgOwnFlywheel    = "advice.own_flywheel"     // a flywheel made for this crank
	MsgTrueFace       = "advice.true_face"        // clean and look for burrs, then have the face trued
	MsgMoveDowels     = "advice.move_dowels"      // (mm) offset: move the dowels by that
	MsgPutRight       = "advice.put_right"        // (point) answered no: put it right, then answer again
	MsgAxleOverloaded = "advice.axle_overloaded"  // the axle may not carry that: less load, or other parts
	MsgStrongerMount  = "advice.stronger_mount"   // a mount that may carry that
	MsgOutsideMounts  = "advice.outside_mounts"   // the centre of mass lies outside the mounts: it tips
	MsgStrongerSling  = "advice.stronger_sling"   // a stronger sling or a steeper one
	MsgTooFlat        = "advice.too_flat"         // (degrees) don't lift below that
	MsgLookAtBoth     = "advice.look_at_both"     // (point) read and worked out differ: one is wrong

	MsgSteelTaken      = "note.steel_taken"       // the tube's material was not stated: steel
	MsgEndsTaken       = "note.ends_taken"        // (kg, kg) the shaft was not weighed: its ends taken in this range
	MsgDwellRoad       = "note.dwell_road"        // (km/h, km/h) the same as road speeds
	MsgTorqueLesser    = "note.torque_lesser"     // (N·m lowest gear, N·m slipping wheels) the lesser
	MsgTorqueOffroad   = "note.torque_offroad"    // (N·m) lowest gear alone: off the road
	MsgGripTaken       = "note.grip_taken"        // (factor) friction of tyre and ground was not stated
	MsgTorqueNoGrip    = "note.torque_no_grip"    // (N·m) lowest gear alone: grip of the wheels not known
	MsgTwistNoVerdict  = "note.twist_no_verdict"  // no limit; it adds to the phase under torque
	MsgBalanceGrade    = "note.balance_grade"     // (mm/s) per end, by balance grade
	MsgCoupleForce     = "note.couple_force"      // (N, mm) force on the supports of a shaft so long
	MsgLifeFullSpeed   = "note.life_full_speed"   // reckoned at the highest shaft speed
	MsgNearestState    = "note.nearest_state"     // (state) where it comes nearest
	MsgCountsDiffer    = "note.counts_differ"     // (point, point, count, count)
	MsgSizesDiffer     = "note.sizes_differ"      // (point, point, mm apart, mm allowed)
	MsgPilotsAlike     = "note.pilots_alike"      // (point, point, kind, kind) both male or both female
	MsgPilotPlay       = "note.pilot_play"        // (mm that balance bears, rev/min, balance grade in mm/s)
	MsgPilotByHand     = "note.pilot_by_hand"     // sizes prove no seat: try it by hand
	MsgPilotBottoms    = "note.pilot_bottoms"     // (point, point, mm) the pilot is higher than its recess is deep
	MsgOffset          = "note.offset"            // (mm) the axes lie that far apart: half the needle's way
	MsgOwnWeightOnly   = "note.own_weight_only"   // weighed without load: the load comes on top
	MsgStaticAndTorque = "note.static_and_torque" // standing and at full torque only, no bumps
	MsgMountPulled     = "note.mount_pulled"      // (kg) torque pulls it upward
	MsgNoLiftPlan      = "note.no_lift_plan"      // a number, no lift plan
	MsgStiffLegs       = "note.stiff_legs"        // (legs, legs that count)
	MsgReadAndDerived  = "note.read_and_derived"  // (point, read, worked out)
)
