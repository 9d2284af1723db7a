package remedy

// Keys of what a change costs beside the findings that it changes; app/words makes the sentences.
// Behind each stand its arguments. Amounts carry their sign.
const (
	MsgPinionOil     = "cost.pinion_oil"     // (deg that the nose goes up) oil to the pinion bearings, and the maker's limit
	MsgPinionDown    = "cost.pinion_down"    // (deg that the nose goes down) oil level and breather of the axle
	MsgCaster        = "cost.caster"         // (deg) front axle: caster changes one to one
	MsgJointUnplaced = "cost.joint_unplaced" // where the joint stands on the axle was not read: its own rise is left out
	MsgSumpUp        = "cost.sump_up"        // (deg that the front end goes up) pick-up in the sump, oil level, fuel bowl
	MsgSumpDown      = "cost.sump_down"      // (deg that it goes down) the same, and the fan
	MsgMountLever    = "cost.mount_lever"    // (deg, mm of lever) what the mount's height turns
	MsgJointAtMount  = "cost.joint_at_mount" // the joint was taken at the mount: nobody placed it
	MsgRoomGearbox   = "cost.room_gearbox"   // (mm up) room to the floor or to the ground, lever, exhaust
	MsgGearboxTurn   = "cost.gearbox_turn"   // turned about its output joint: both ends move
	MsgMatchMarks    = "cost.match_marks"    // marks of the shaft no longer hold: balance again
	MsgTeeth         = "cost.teeth"          // (teeth) of the sliding spline that it is set over by
	MsgWeldPhase     = "cost.weld_phase"     // the yokes are welded: a shaft builder's work
	MsgSlower        = "cost.slower"         // less road speed in top gear; a governor that holds
	MsgShaftMade     = "cost.shaft_made"     // a shaft builder's work, balanced afterwards
	MsgOutAtRide     = "cost.out_at_ride"    // (mm) drawn out at ride height then
	MsgLongerSpline  = "cost.longer_spline"  // both halves as long, room for the sleeve
	MsgTube          = "cost.tube"           // (mm outside, mm wall, kg) another tube, weld yokes to suit
	MsgTubeRoom      = "cost.tube_room"      // (mm) so much less room to everything beside the shaft, half of what it grows
	MsgBearing       = "cost.bearing"        // (mm) spacer behind the bearing: slave's stroke, sleeve long enough
	MsgFlywheel      = "cost.flywheel"       // (mm) flywheel thicker: ring gear and starter mesh, weight
	MsgFlywheelThin  = "cost.flywheel_thin"  // (mm) flywheel machined: its least thickness
	MsgAdapterPlate  = "cost.adapter_plate"  // (mm) adapter plate: shaft moves back, dowels, starter
	MsgOtherDisc     = "cost.other_disc"     // another disc, or its hub set over
	MsgSpigotMoved   = "cost.spigot_moved"   // (mm) another spigot bearing, or a carrier for it
	MsgAdapterFlange = "cost.adapter_flange" // (mm) piloted on both sides; never drilled to suit
	MsgAdapterShort  = "cost.adapter_short"  // (mm) the shaft gets that much less room between its ends
	MsgObstacle      = "cost.obstacle"       // what the obstacle carries must still work
	MsgRetorque      = "cost.retorque"       // thread and nut new, clean and dry; never beyond the grade
	MsgPlaceMoved    = "cost.place_moved"    // (mm forward) engine and gearbox: mounts, shaft length, everything that hangs on them
	MsgStiffer       = "cost.stiffer"        // a mount that carries more is stiffer: more is heard
	MsgSteeperSling  = "cost.steeper_sling"  // longer legs, more height under the hook
)

// Keys of why a reading is worth taking.
const (
	MsgNextRead    = "next.read"    // (point, state) it was not read
	MsgNextState   = "next.state"   // (point) from a plate, a book or the maker: not read under the vehicle
	MsgNextMeasure = "next.measure" // (point, state) it is stated or estimated: measure it
	MsgNextTurned  = "next.turned"  // (instrument, point, state, setup) once more with the finder turned end for end
	MsgNextRepeat  = "next.repeat"  // (point, state) four times more, laid on anew each time
	MsgNextBetter  = "next.better"  // (point, state) with a tool twice as good whose zero is known
)
