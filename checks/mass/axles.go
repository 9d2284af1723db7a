package mass

// Load is a mass put into a vehicle, or with a negative mass one taken out.
type Load struct {
	Kg      float64
	AheadMM float64 // of the front axle line; behind it negative
}

// Axles returns by how much the axles carry more when a load is added, kg:
//
//	Δrear = −m·x/R,   Δfront = m − Δrear
//
// x is AheadMM, R the wheelbase. It errs when the wheelbase is not above 0. Source: a truck maker's
// body mounting directives 2020, 9.1.
func Axles(l Load, wheelbaseMM float64) (frontKg, rearKg float64, err error) {
	if err := positive("wheelbase", wheelbaseMM); err != nil {
		return 0, 0, err
	}
	rear := -float64(l.Kg*l.AheadMM) / wheelbaseMM
	return l.Kg - rear, rear, nil
}
