package words

import "yokebook/checks"

// deChecks: what the checks are called, and how a finding is said.
var deChecks = table{
	"verdict.clear":     "klar",
	"verdict.out":       "außerhalb",
	"verdict.unsure":    "unsicher",
	"verdict.waiting":   "wartet",
	"verdict.unsaid":    "nicht beurteilt",
	"verdict.predicted": "{0}, vorausberechnet",
	"verdict.if_one":    "{0}, wenn {1 point} stimmt",
	"verdict.if_all":    "{0}, wenn {1} stimmen",

	"check": "{0}, {1}",

	"finding.around":         "({0})",
	"value.joint.match":      "Enden bis auf {0} gleich",
	"finding.title":          "{0}, {1 state}",
	"finding.chance":         "Wahrscheinlichkeit, die Grenze einzuhalten: {0 percent}",
	"finding.weakest":        "schwächste Größe: {0 input}, {1 percent} des Zweifels (Messung {2 id})",
	"finding.weakest_shared": "schwächste Größe: {0 input}, {1 percent} des Zweifels",
	"finding.missing":        "{0 point}, {1 state}",
	"finding.missing_setup":  "{0 point}, {1 state}, in Aufstellung {2}",
	"finding.side_view":      "nur Seitenansicht: {0} nicht gemessen, als 0 genommen",
	"finding.assumed":        "{0} nicht gemessen, als 0 genommen",

	"input.zero": "Nullpunkt von {0 subject}",

	"limit.max":     "höchstens {0}",
	"limit.min":     "mindestens {0}",
	"limit.equal":   "gleich {0}",
	"limit.between": "von {0} bis {1}",
	"limit.chosen":  "für diesen Umbau gewählt: {1} (sonst {0})",

	"subject.front":  "vorderes Gelenk",
	"subject.centre": "mittleres Gelenk",
	"subject.rear":   "hinteres Gelenk",
	"subject.finder": "Winkelmesser",

	"check.joint.angle":         "Beugewinkel",
	"check.joint.most_angle":    "größter Beugewinkel über den Federweg",
	"check.joint.least_angle":   "kleinster Beugewinkel",
	"check.joint.match":         "Gleichheit der Beugewinkel",
	"check.joint.residual":      "Restbeugewinkel aller Gelenke zusammen",
	"check.joint.ripple":        "Ungleichförmigkeit aller Gelenke zusammen",
	"check.joint.torsional":     "Drehbeschleunigung an der Achse",
	"check.joint.inertia_drive": "Beschleunigung der Welle bei Zug",
	"check.joint.inertia_coast": "Beschleunigung der Welle bei Schub",
	"check.reading.setup":       "vergleichbare Aufstellungen",
	"check.reading.spread":      "Streuung wiederholter Messungen",
	"check.reading.zero":        "Nullpunkte der Messmittel",
	"check.reading.state":       "Zustände und glaubhafte Werte",
	"check.build.chance":        "Wahrscheinlichkeit, dass alle beurteilten Grenzen halten",
}

// deAdvice: what to do about a finding, and what else to know.
var deAdvice = table{
	checks.MsgTakeMissing: "die fehlenden Messungen nehmen",
	checks.MsgLetDown: "hier hängen die Räder, so läuft es nicht: auf die Räder ablassen oder die Böcke unter die Achse stellen " +
		"und {0 point} nochmals messen",
	checks.MsgOffBump:     "hier kommt es nur durch: in Fahrlage nochmals messen",
	checks.MsgReadAgain:   "{0 input} nochmals messen, {1 state}: das entscheidet",
	checks.MsgZeroAgain:   "der Nullpunkt von {0 subject} entscheidet: am selben Ort umdrehen und beide Richtungen ablesen",
	checks.MsgReadAssumed: "{0 point} wurde nie gemessen und entscheidet: messen",
	checks.MsgTurnPinion: "das Vorderende des Ritzels {0 word} drehen (Keil, Lenker); auf das Öl seiner Lager achten, an der Vorderachse auf den " +
		"Nachlauf. Erst Rahmen und Achse auf Böcke: Federn sind gespannt, eine lose Achse rollt",
	checks.MsgTurnGearbox: "das Vorderende des Getriebes {0 word} bringen (Höhe der Lager); auf Ölansaugung und Ölstand achten. Motor und Getriebe " +
		"abfangen, bevor ein Lager gelöst wird",
	checks.MsgSmallerAngle: "die beiden Achsen am Gelenk ({0 subject}) näher in eine Linie bringen: versetzen, was sie trägt (Getriebelager, Mittellager, " +
		"Keil an der Achse)",
	checks.MsgSmallerDrive: "kleinere Winkel an den Gelenken zwischen Getriebe und dieser Welle (Getriebelager, Mittellager), oder eine langsamere Welle",
	checks.MsgSmallerCoast: "kleinere Winkel an den Gelenken zwischen Achse und dieser Welle (Keil, Lenker, Mittellager), oder eine langsamere Welle",
	checks.MsgSlowerOrEven: "die Gelenke besser ausgleichen (gleiche Winkel, Gabeln richtig zueinander) oder die Welle langsamer laufen lassen",
	checks.MsgOtherJoint: "die Gabeln können anstoßen und Gelenk oder Welle brechen: dort nicht laufen lassen. Ein Gelenk, das mehr darf, weniger " +
		"Federweg, oder den Winkel dort verkleinern, wo er am größten ist",
	checks.MsgLeastContested: "kein Fehler: ob und welchen Mindestwinkel ein Gelenk für seine Nadeln braucht, ist umstritten; unter den Grenzen mit " +
		"Begründung wählen",
	checks.MsgDatumBoth:     "die Neigung der Rahmenmarke in Aufstellung {0} und in Aufstellung {1} messen, damit beide vergleichbar sind",
	checks.MsgContradiction: "{0 state}: die Messung streichen oder berichtigen",
	checks.MsgImplausible:   "{0 point} zeigt {1 base}, und solche Teile haben {2 base} bis {3 base}: nochmals hinsehen, dann berichtigen oder behalten",
	checks.MsgHeights:       "{0 point} wurde in Höhen gemessen, die {1 mm} auseinanderliegen: in einer Höhe nochmals messen",
	checks.MsgDisputedID: "Messung {0 id} zählt nicht: zwei Einträge haben ihre Kennung, oder ihre Berichtigungen laufen im Kreis; " +
		"den falschen streichen",
	checks.MsgReverse: "{0 subject} wurde in Aufstellung {1} umgedreht, sein Nullpunkt zählt also doppelt: an einer Stelle beide Richtungen " +
		"ablesen und jedes Mal angeben, welches Ende nach vorn zeigte",
	checks.MsgOutlier:       "{0 point} {1 base} fällt aus den Wiederholungen heraus: nochmals hinsehen, dann mit Begründung streichen oder noch einmal messen",
	checks.MsgThirdReading:  "{0 point}: die beiden Messungen weichen mehr ab, als das Messmittel erklärt; eine dritte nehmen",
	checks.MsgDisputedInput: "über {0 input} sind die Quellen uneins, und die Spanne entscheidet: mit Begründung einen Wert wählen",
	checks.MsgNoNumber:      "aus diesen Messungen ergibt sich keine Zahl: nach einem falschen Wert suchen",

	checks.MsgSideView:      "nur Seitenansicht: Grundrisswinkel wurden nicht gemessen",
	checks.MsgPhaseAssumed:  "Gabeln als in Linie genommen: der Gabelversatz wurde nicht gemessen",
	checks.MsgHanging:       "Räder hängend: nicht die Winkel, in denen es läuft",
	checks.MsgOnBump:        "auf den Anschlägen: nur durchfahren, nicht gelaufen",
	checks.MsgDoubleJoint:   "das Doppelgelenk gilt als gleichförmig, was nur innerhalb seiner Grenze stimmt",
	checks.MsgSpeedEngine:   "höchste Wellendrehzahl {0 rev/min}, vom Motor",
	checks.MsgSpeedRoad:     "höchste Wellendrehzahl {0 rev/min}, aus der Geschwindigkeit mal {1}: Motorangaben fehlen",
	checks.MsgSpeedGoverned: "höchste Wellendrehzahl {0 rev/min}, aus einer abgeregelten Geschwindigkeit: {1}",
	checks.MsgSetupsBridged: "Neigungen aus Aufstellung {0} wurden über die beiden Messungen der Rahmenmarke auf Aufstellung {1} übertragen",
	checks.MsgHeightWidened: "{0 point} wurde {1 mm} höher oder tiefer gemessen: um {2 deg} erweitert",
	checks.MsgZeroFound: "{0 subject}, Aufstellung {1}: umgedreht steht sein Nullpunkt bei {2 deg}, auf {3 deg} genau; seine Messungen dort " +
		"sind damit berichtigt",
	checks.MsgWayUnsaid:      "welches Ende von {0 subject} nach vorn zeigte, wurde nicht angegeben: als immer gleich genommen, sein Nullpunkt hebt sich auf",
	checks.MsgBestPhase:      "am gleichmäßigsten mit {0 point} {1 deg}: Restbeugewinkel {2 deg}",
	checks.MsgMatchNoVerdict: "gleiche Enden beweisen keinen kleinen Restbeugewinkel; auf diesen schauen",
	checks.MsgWorstState:     "der größte Winkel steht hier: {0 state}",
	checks.MsgDecidedBy:      "am meisten hält zurück: {0 finding}",
}

// deTravel: the axle's travel and the sliding spline.
var deTravel = table{
	"check.travel.agreement": "Weg der Achse, gemessen und gerechnet",
	"check.slip.travel":      "Schiebeweg über den Federweg",
	"check.slip.engaged":     "Eingriff der Verzahnung in der längsten Stellung",
	"check.slip.closing":     "Resthub in der kürzesten Stellung",
	"check.slip.seal":        "Gleitgabel im Dichtring in der längsten Stellung",
	"check.slip.length":      "Länge, in der die Welle zu bauen ist",

	"help.sweep": "die Achse über ihren Federweg bewegen: Länge, Winkel, Hub",
	"help.sweep.long": `Bewegt die Achse von hängenden Rädern bis auf die Anschläge, höchstens 10 mm je Schritt, und druckt zu jeder Höhe die
Länge der Welle, die Beugewinkel, Restbeugewinkel und Ungleichförmigkeit aller Gelenke zusammen und wie weit das Schiebestück
ausgezogen ist. Gemessene Höhen nennen ihren Zustand; alle anderen sind daraus gerechnet, auf dem Weg, den die erste
Zeile nennt. Werte sind ± ihre 95-%-Schranke.`,
	"cli.sweep.note":            "{0}",
	"cli.sweep.missing":         "fehlt: {0}",
	"cli.sweep.predicted":       "gerechnet",
	"cli.sweep.from_ride":       "Fahrlage {0}",
	"cli.column.sweep.height":   "HÖHE",
	"cli.column.sweep.travel":   "FEDERWEG",
	"cli.column.sweep.known":    "GEMESSEN",
	"cli.column.sweep.length":   "LÄNGE",
	"cli.column.sweep.out":      "AUSZUG",
	"cli.column.sweep.residual": "RESTWINKEL",
	"cli.column.sweep.ripple":   "UNGLEICH",

	"input.travel.radius":    "Wölbung der Bahn zwischen zwei Höhen",
	"input.travel.leaf_link": "Lenker, der für eine halbe Blattfeder steht",

	"word.fixed":    "die Achse bewegt sich nicht",
	"word.links":    "aus ihren Lenkern, genau gelöst",
	"word.leaf":     "aus ihren Blattfedern, eine halbe Feder als Lenker genommen",
	"word.read":     "durch die gemessenen Zustände gezogen",
	"word.straight": "senkrecht hinauf, Federn oder Lenker nicht gemessen: weit",

	checks.MsgSlipLonger:   "die Welle um {0 mm} länger machen oder mehr Verzahnung in Eingriff bringen; dann noch einmal nach dem Hub an der kürzesten Stelle sehen",
	checks.MsgSlipShorter:  "die Welle um {0 mm} kürzer machen, sonst stößt sie an und drückt auf die Lager von Getriebe und Ritzel; dann noch einmal nach dem Eingriff sehen",
	checks.MsgSlipStroke:   "mit keiner Länge reicht dieses Schiebestück: mit dem, was an beiden Enden bleiben muss, braucht es {0 mm} nutzbaren Hub",
	checks.MsgSlipSeal:     "ein längerer Schaft oder eine längere Welle, um {0 mm}; dann noch einmal nach dem Hub an der kürzesten Stelle sehen",
	checks.MsgPathDisputed: "Messungen und die Maße von Federn oder Lenkern passen nicht zusammen: Höhen und beides ansehen",

	checks.MsgSlipFalls: "GEFAHR: das Schiebestück kann auseinandergehen, die Welle fallen oder schlagen. Nicht fahren und die Räder mit dieser Welle " +
		"nicht hängen lassen: Achse abstützen, Welle hochbinden, niemand darunter",

	checks.MsgPath:         "Weg der Achse: {0 word}",
	checks.MsgEyeInFront:   "welches Federauge fest ist, wurde nicht angegeben: das vordere genommen",
	checks.MsgComputedFrom: "gerechnet, nicht gemessen: aus der Messung {0 state}",
	checks.MsgHeightMoved:  "{0 point} wurde {1 mm} neben der Höhe gemessen und längs der Achsbahn übertragen",
	checks.MsgSlipExtremes: "am kürzesten bei einer Nabenhöhe von {0 mm}, am längsten bei {1 mm}",
	checks.MsgSlipNeeds:    "nutzbarer Hub mit dem, was an beiden Enden bleiben muss: {0 mm}",
	checks.MsgSlipExposed:  "von Gelenkmitte zu Gelenkmitte, ganz eingeschoben; so gebaut steht es in Fahrlage {0 mm} ausgezogen",
	checks.MsgSlipTail:     "von Gelenkmitte zu Gelenkmitte",
	checks.MsgStateFiner: "{0 point} wurde angegeben und entscheidet, auf eine halbe letzte Stelle genau: mit mehr Stellen angeben (direkter " +
		"Gang als 1,000) oder messen",
	checks.MsgStateAssumed: "{0 point} wurde nicht angegeben und entscheidet: vom Hersteller angeben lassen, oder aus einem Versuch mit denselben Federn",
	checks.MsgSlipWound:    "nicht gezählt: Moment verdreht die Achse und bewegt es um {0 mm} bei Zug, {1 mm} bei Schub (auseinander positiv), in Fahrlage",
	checks.MsgWindUpWorked: "Verdrehung gerechnet, eine Schätzung: {0 deg} unter {1 N·m} an der Achse",
}
