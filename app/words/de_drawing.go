package words

// deDrawing is what the page of drawings says.
var deDrawing = table{
	"screen.more.drawing":  "Zeichnungen dieses Umbaus",
	"drawing.views":        "Andere Zeichnung",
	"drawing.which":        "Was soll zu sehen sein?",
	"drawing.view.side":    "Wellenstrang von der Seite",
	"drawing.view.top":     "Wellenstrang von oben",
	"drawing.view.travel":  "Kurven über den Federweg",
	"drawing.view.stack":   "Kupplung im Schnitt",
	"drawing.view.mounts":  "Lager von oben",
	"drawing.view.ends":    "Flanschflächen",
	"drawing.view.splines": "Keilwellenzähne",
	"drawing.hanging":      "Räder hängen",
	"drawing.bump":         "Anschlag",
	"drawing.lower":        "Achse tiefer",
	"drawing.higher":       "Achse höher",
}
