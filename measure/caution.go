package measure

// Keys of the cautions that points and states carry; the words stand with the other texts of the
// program. They remind of the usual dangers and replace neither local rules nor licensed practice.
const (
	CautionUnder   = "caution.under"   // under a vehicle: stands, chocks, never on a jack alone
	CautionHanging = "caution.hanging" // wheels hanging: stands under the frame
	CautionBump    = "caution.bump"    // springs pressed hard onto the bump stops
	CautionLift    = "caution.lift"    // a heavy part hangs or is raised
	CautionTurning = "caution.turning" // something that turns, if only by hand
	CautionClutch  = "caution.clutch"  // facing dust, loaded cover springs, a heavy gearbox
	CautionWeld    = "caution.weld"    // hardened or welded shafts, yokes and studs

	CautionFirstRun = "caution.firstrun" // before the shaft is run by the engine
)

// Caution returns the key of the caution that belongs to a state, empty for the bench.
func (s State) Caution() string {
	switch s.Ride {
	case Droop:
		return CautionHanging
	case Bump:
		return CautionBump
	case AtRide:
		return CautionUnder
	}
	return ""
}
