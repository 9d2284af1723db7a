package checks

import "yokebook/measure"

// Tool is what an instrument is good to, in the base unit of what it reads.
type Tool struct {
	Resolution float64 // one display step
	Accuracy   float64 // ± this, for each reading
	Zero       float64 // ± this, shared by all readings of one setup
	Placing    float64 // standard deviation of laying it on again
}

// ToolOf is what the instrument of a reading is good to: what its owner states, else the default of its
// kind or of the quantity. r need not be a reading of b. All is 0 for what is counted or answered.
func ToolOf(b *measure.Build, r measure.Reading) Tool {
	p, _ := measure.PointOf(r.Point)
	t := emptyEngine(b).toolOf(r, p.Quantity)
	return Tool{t.resolution, t.accuracy, t.zero, t.placing}
}
