package words

// enStates: how the vehicle stood, and where a value comes from.
var enStates = table{
	"state.whole":            "the build as a whole",
	"state.droop/none":       "wheels hanging",
	"state.droop/kerb":       "wheels hanging, own weight (they can't carry it)",
	"state.droop/laden":      "wheels hanging, laden (they can't carry it)",
	"state.ride/none":        "at ride height, no weight (one of the two is wrong)",
	"state.ride/kerb":        "at ride height, own weight",
	"state.ride/laden":       "at ride height, laden",
	"state.ride/kerb/drive":  "at ride height, own weight, pulling hard",
	"state.ride/kerb/coast":  "at ride height, own weight, engine braking",
	"state.ride/laden/drive": "at ride height, laden, pulling hard",
	"state.ride/laden/coast": "at ride height, laden, engine braking",
	"state.bump/none":        "on the bump stops, no weight (one of the two is wrong)",
	"state.bump/kerb":        "on the bump stops, own weight",
	"state.bump/laden":       "on the bump stops, laden",
	"state.bench":            "off the vehicle",

	"ride.droop": "hanging",
	"ride.ride":  "at ride height",
	"ride.bump":  "on the bump stops",
	"ride.bench": "off the vehicle",

	"load.none":  "no weight on the wheels",
	"load.kerb":  "own weight with fluids",
	"load.laden": "loaded as used",

	"basis.measured":  "measured",
	"basis.stated":    "stated",
	"basis.estimated": "estimated",
}
