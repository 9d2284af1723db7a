package words

// enDrawing is what the page of drawings says.
var enDrawing = table{
	"screen.more.drawing":  "Drawings of this build",
	"drawing.views":        "Another drawing",
	"drawing.which":        "What do you want to see?",
	"drawing.view.side":    "Shaft line from the side",
	"drawing.view.top":     "Shaft line from above",
	"drawing.view.travel":  "Travel chart",
	"drawing.view.stack":   "Clutch cut open",
	"drawing.view.mounts":  "Mounts from above",
	"drawing.view.ends":    "Flange faces",
	"drawing.view.splines": "Spline teeth",
	"drawing.hanging":      "wheels hanging",
	"drawing.bump":         "bump stops",
	"drawing.lower":        "Axle down",
	"drawing.higher":       "Axle up",
}
