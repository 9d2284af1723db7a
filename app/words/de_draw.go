package words

// deDraw: what the drawings letter.
var deDraw = table{
	"draw.title":        "{0}: {1}",
	"draw.title.side":   "Wellenstrang von der Seite, Fahrzeugfront links",
	"draw.title.top":    "Wellenstrang von oben, Fahrzeugfront links",
	"draw.state_height": "{0}, Nabe {1 mm} unter dem Radlauf",
	"draw.height":       "Nabe {0 mm} unter dem Radlauf",
	"draw.computed":     "{0}, gerechnet und nicht gemessen",

	"draw.slope":           "{0} {1}",
	"draw.plan":            "{0} {1}",
	"draw.plan_unread":     "{0} {1}, nicht gemessen",
	"draw.joint":           "{0} {1}",
	"draw.no_length":       "Länge nicht gemessen",
	"draw.slip":            "Schiebestück ausgezogen {0}",
	"draw.worst":           "{0}: {1}, Grenze {2}",
	"draw.end":             "{0 state}, Nabe bei {1 mm}",
	"draw.figure.at":       "{0 mm} unter dem Radlauf",
	"draw.figure.residual": "Restbeugewinkel {0}",
	"draw.residual":        "Restbeugewinkel aller Gelenke zusammen: {0}.",

	"draw.obstacle":        "{0}: Abstand {1}",
	"draw.room":            "{0}; kleinster Raum über den Federweg {1}: {2}, Grenze {3}",
	"draw.obstacle_beside": "{0}: Abstand {1}, daneben; links oder rechts nicht gemessen",

	"draw.unread": "Nicht gemessen: {0}.",
	"draw.legend.side": "Neigungen zählen nach vorn ansteigend. Volle Linien sind gemessen, Bänder ihr Zweifel, gestrichelte gerechnet. Dünne " +
		"graue Umrisse zeigen nur, wo ein Teil ist. Ein Maßstab in beiden Richtungen.",
	"draw.legend.top": "Grundrisswinkel zählen vorn nach links; die linke Fahrzeugseite ist unten. Volle Linien sind gemessen, Bänder " +
		"ihr Zweifel, gestrichelte gerechnet oder angenommen. Dünne graue Umrisse zeigen nur, wo ein Teil ist.",
	"draw.not_to_scale": "Niemand hat die Länge der Welle gemessen: sie ist als {0 mm} gezeichnet, und nur Winkel stimmen.",

	"draw.title.travel":   "Über den Federweg, links hängende Räder",
	"draw.panel.angles":   "Beugewinkel, °",
	"draw.panel.residual": "Restbeugewinkel, °",
	"draw.panel.length":   "Länge der Welle, mm",
	"draw.panel.slide":    "Schiebestück gegen Fahrlage, mm",
	"draw.limit":          "Grenze {0}",
	"draw.no_travel":      "Der Federweg der Achse ist nicht bekannt.",
	"draw.legend.travel": "Unten: Höhe der Nabe unter dem Radlauf, mm. Punkte mit Strichen sind gemessen, gestrichelte Linien gerechnet, Bänder " +
		"ihr Zweifel.",

	"draw.title.stack":  "Kupplung im Schnitt, Motor links",
	"draw.no_clutch":    "Dieser Umbau hat keine Kupplung.",
	"draw.block_face":   "Blockfläche",
	"draw.gearbox_face": "Getriebefläche",
	"draw.point":        "{0} {1}",
	"draw.gap":          "Spalt {0}",
	"draw.judged":       "{0}: {1}",
	"draw.if_stated":    "{0}, wenn das Angegebene stimmt",
	"draw.engaged":      "im Eingriff {0}",
	"draw.legend.stack": "Maßstäblich längs der Welle. Dicke Linien sind gemessen; dünne graue Umrisse zeigen nur, wo ein Teil ist.",

	"draw.title.mounts": "Motor und Getriebe auf ihren Lagern von oben, Fahrzeugfront links",
	"draw.load":         "{0} {1}",
	"draw.of":           "{0} von {1}",
	"draw.mass":         "Schwerpunkt, {0}",
	"draw.mass_unread":  "Schwerpunkt, Masse nicht gemessen",
	"draw.front_axle":   "Vorderachslinie",
	"draw.middle":       "Fahrzeugmitte",
	"draw.legend.mounts": "Maßstäblich; die linke Fahrzeugseite ist unten. Lasten sind die größten, im Stand oder bei vollem Moment im niedrigsten " +
		"Gang. Der Schwerpunkt liegt im Band.",

	"draw.title.ends":      "Flanschflächen maßstäblich, oben am Fahrzeug, unten an der Welle",
	"draw.face.front_end":  "vorn, Fahrzeug",
	"draw.face.front_mate": "vorn, Welle",
	"draw.face.rear_end":   "hinten, Fahrzeug",
	"draw.face.rear_mate":  "hinten, Welle",

	"draw.pilot":        "Zentrierung ⌀ {0}",
	"draw.pilot_male":   "Zentrierung ⌀ {0}, Ansatz",
	"draw.pilot_female": "Zentrierung ⌀ {0}, Vertiefung",
	"draw.bolt_circle":  "Lochkreis ⌀ {0}",
	"draw.bolts":        "{0} × ⌀ {1} auf ⌀ {2}",
	"draw.legend.ends":  "Dicke Kreise sind gemessen; der dünne graue Rand zeigt nur, wo der Flansch ist. Löcher gleichmäßig geteilt gezeichnet.",

	"draw.title.splines": "Zahnformen, die zum Gemessenen passen, übereinandergelegt",
	"draw.candidate":     "{0} {1}, Flanken {2}",
	"draw.read_diameter": "gemessen ⌀ {0}",
	"draw.no_candidate":  "Keine genormte Verzahnung passt zum Gemessenen, oder es war zu wenig: {0}.",
	"draw.no_splines":    "Es wurden keine Zähne gezählt.",
	"draw.legend.splines": "Dicke Bögen sind die gemessenen Durchmesser, gestrichelt die Formen der Normen. T: Zähne. Dass Maße passen, sagt nichts über das " +
		"Spiel: von Hand probieren.",

	"cli.drawn": "gezeichnet in {0}",

	"help.draw": "einen Umbau als Bild zeichnen",
	"help.draw.long": `Zeichnet einen Umbau in eine SVG- oder PNG-Datei. VIEW ist eines von

  side, top  der Wellenstrang maßstäblich, mit Neigungen, Winkeln und Längen, den Enden des Federwegs, Hindernissen und Abständen
  travel     Beugewinkel, Restbeugewinkel und Länge über der Höhe der Achse
  stack      die Kupplung im Schnitt, mit Spalt, Hub und Eingriff
  mounts     Motor und Getriebe auf ihren Lagern von oben, mit Lasten und Schwerpunkt
  ends       die Flanschflächen mit Zentrierung und Lochkreis
  splines    die Zahnformen genormter Verzahnungen, die zum Gemessenen passen

--at bewegt die Achse auf eine Höhe von Nabe bis Radlauf, in mm, zwischen hängend und Anschlag; sonst steht das Fahrzeug,
wie es gemessen wurde. Was nicht gemessen wurde, wird nicht gezeichnet: eine Zeile unter dem Bild nennt es.`,

	"help.flag.picture": "zu schreibende Datei, .svg oder .png",
	"help.flag.view":    "was zu zeichnen ist",
	"help.flag.at":      "Höhe der Nabe unter dem Radlauf, auf die die Achse bewegt wird, in mm",
	"help.flag.theme":   "hell oder dunkel (light, dark)",
}
