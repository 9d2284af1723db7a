package words

// deNames: units, tools, groups, and how two words join. A point is its dimension, then its part:
// "Neigung Getriebe".
var deNames = table{
	"point": "{1} {0}",
	"list":  "{0} und {1}",

	"unit.deg":     "°",
	"unit.count":   "",
	"unit.rev/min": "1/min",

	"tool.angle":     "Winkelmesser",
	"tool.tape":      "Maßband",
	"tool.caliper":   "Messschieber",
	"tool.indicator": "Messuhr",
	"tool.scale":     "Waage",
	"tool.torque":    "Drehmoment-Schlüssel",

	"group.slopes":                "Neigungen und Grundrisswinkel",
	"group.stated":                "angegebene Werte",
	"group.before a shaft exists": "bevor es eine Welle gibt",
	"group.heights":               "Höhen",
	"group.shaft":                 "Welle",
	"group.clearance":             "Freigang",
	"group.ends":                  "Enden der Welle",
	"group.leaf spring":           "Blattfeder",
	"group.links":                 "Lenker",
	"group.splines":               "Verzahnungen",
	"group.clutch stack":          "Kupplungsaufbau",
	"group.engine side":           "Motorseite",
	"group.retention":             "Flanschbefestigung",
	"group.mass and mounts":       "Massen und Lager",
	"group.fit":                   "Einbau, von einer Person beantwortet",
	"group.order":                 "Auftrag: was der Wellenbauer fragt",
	"group.as built":              "wie gebaut",

	"word.up":   "nach oben",
	"word.down": "nach unten",

	"by.builder": "Wellenbauer",
}

// deParts: what the parts are called.
var deParts = table{
	"part.adapter":            "Adapterplatte",
	"part.as_built":           "(wie gebaut)",
	"part.axle":               "Achse",
	"part.bearing":            "Ausrücklager",
	"part.bellhousing":        "Kupplungsglocke",
	"part.bump":               "Anschlagpuffer",
	"part.centre_bearing":     "Mittellager",
	"part.converter":          "Wandler",
	"part.cover":              "Kupplungsdeckel",
	"part.crank":              "Kurbelwellenflansch",
	"part.datum":              "Rahmenmarke",
	"part.disc":               "Kupplungsscheibe",
	"part.disc_hub":           "Scheibennabe",
	"part.engine":             "Motor",
	"part.engine_gearbox":     "Motor mit Getriebe",
	"part.fingers":            "Deckelzungen",
	"part.fit":                "(Einbau)",
	"part.flywheel":           "Schwungrad",
	"part.front_axle":         "Vorderachse",
	"part.front_end":          "vorderer Flansch am Fahrzeug",
	"part.front_flange":       "vorderer Flansch",
	"part.front_mate":         "vorderer Flansch der Welle",
	"part.front_shaft":        "vordere Welle",
	"part.gear":               "Gang",
	"part.gearbox":            "Getriebe",
	"part.hub":                "Nabe",
	"part.hub_left":           "linke Nabe",
	"part.hub_right":          "rechte Nabe",
	"part.input_shaft":        "Eingangswelle",
	"part.joint":              "Gelenk",
	"part.lift_front":         "vordere Hebewaage",
	"part.lift_rear":          "hintere Hebewaage",
	"part.lower_link":         "unterer Lenker",
	"part.mount_left":         "linkes Lager",
	"part.mount_rear":         "hinteres Lager",
	"part.mount_right":        "rechtes Lager",
	"part.obstacle":           "Hindernis",
	"part.old_engine_gearbox": "alter Motor mit Getriebe",
	"part.order":              "(Auftrag)",
	"part.output_shaft":       "Ausgangswelle",
	"part.pinion":             "Ritzel",
	"part.rear_axle":          "Hinterachse",
	"part.rear_end":           "hinterer Flansch am Fahrzeug",
	"part.rear_flange":        "hinterer Flansch",
	"part.rear_joint":         "achsseitiges Gelenk",
	"part.rear_mate":          "hinterer Flansch der Welle",
	"part.retainer":           "Flanschmutter",
	"part.ring_gear":          "Zahnkranz",
	"part.road":               "Straße",
	"part.shaft":              "Welle",
	"part.guide_tube":         "Führungshülse des Ausrücklagers",
	"part.slave":              "Nehmerzylinder",
	"part.sling":              "Gehänge",
	"part.slip":               "Schiebestück",
	"part.slip_female":        "Hülse des Schiebestücks",
	"part.slip_male":          "Welle des Schiebestücks",
	"part.slip_yoke":          "Gleitgabel",
	"part.spigot":             "Pilotlager",
	"part.spring":             "Feder",
	"part.starter":            "Anlasser",
	"part.tail_bush":          "Buchse im Getriebedeckel",
	"part.tail_seal":          "Dichtring im Getriebedeckel",
	"part.track":              "Spur",
	"part.transfer":           "Verteilergetriebe",
	"part.tube":               "Rohr",
	"part.tyre":               "Reifen",
	"part.upper_link":         "oberer Lenker",
	"part.wheelbase":          "Radstand",
}

// deStates: how the vehicle stood, and where a value comes from.
var deStates = table{
	"state.whole":            "der Umbau als Ganzes",
	"state.droop/none":       "Räder hängend",
	"state.droop/kerb":       "Räder hängend, Eigengewicht (sie können es nicht tragen)",
	"state.droop/laden":      "Räder hängend, beladen (sie können es nicht tragen)",
	"state.ride/none":        "in Fahrlage, ohne Gewicht (eines von beiden stimmt nicht)",
	"state.ride/kerb":        "in Fahrlage, Eigengewicht",
	"state.ride/laden":       "in Fahrlage, beladen",
	"state.ride/kerb/drive":  "in Fahrlage, Eigengewicht, unter vollem Zug",
	"state.ride/kerb/coast":  "in Fahrlage, Eigengewicht, Motorbremse",
	"state.ride/laden/drive": "in Fahrlage, beladen, unter vollem Zug",
	"state.ride/laden/coast": "in Fahrlage, beladen, Motorbremse",
	"state.bump/none":        "auf den Anschlägen, ohne Gewicht (eines von beiden stimmt nicht)",
	"state.bump/kerb":        "auf den Anschlägen, Eigengewicht",
	"state.bump/laden":       "auf den Anschlägen, beladen",
	"state.bench":            "ausgebaut",

	"ride.droop": "hängend",
	"ride.ride":  "in Fahrlage",
	"ride.bump":  "auf den Anschlägen",
	"ride.bench": "ausgebaut",

	"load.none":  "ohne Gewicht auf den Rädern",
	"load.kerb":  "Eigengewicht mit Flüssigkeiten",
	"load.laden": "beladen wie im Gebrauch",

	"basis.measured":  "gemessen",
	"basis.stated":    "angegeben",
	"basis.estimated": "geschätzt",
}

// deCautions: what can hurt, as in English.
var deCautions = table{
	"caution.under": "Niemand geht unter ein Fahrzeug, das auf einem Heber ruht. Fester, ebener Boden, Räder verkeilt, Unterstellböcke " +
		"ausreichender Tragkraft auf beiden Seiten, dann am Fahrzeug rütteln, bevor man darunter geht. Örtliche Vorschriften gehen vor.",
	"caution.hanging": "Räder hängend: die Böcke tragen den RAHMEN an den Stützstellen des Herstellers, auf beiden Seiten. Langsam " +
		"ablassen, die Räder am Boden verkeilen und von der Achse wegbleiben: sie kann fallen und pendeln.",
	"caution.bump": "Auf den Anschlägen sind die Federn hoch gespannt. Die Achse mit einem tragfähigen Heber oder durch echte Last " +
		"anheben, nie mit Gurt oder losem Klotz; Hände und Kopf bleiben aus dem Spalt.",
	"caution.lift": "Heben: niemand unter oder neben der Last. Gehänge, Haken und Hebestellen bekannter Tragkraft; zwei Stränge oder mehr, 45° " +
		"oder mehr zur Waagrechten, nie unter 30°: an einem Strang dreht und kippt die Last. Diese Zahlen sind kein Hebeplan; wo Vorschriften eine befugte Person verlangen, diese holen.",
	"caution.turning": "Eine drehende Welle erfasst Kleidung, Haare und Handschuhe. Motor aus, Schlüssel ab, Batterie ab, Getriebe im Leerlauf, Räder " +
		"am Boden verkeilt; die Welle nur von Hand drehen und aus ihrer Linie bleiben.",
	"caution.clutch": "Belagstaub kann Asbest enthalten: feucht abwischen, nie ausblasen oder bürsten. Die Feder der Druckplatte ist gespannt: alle " +
		"Schrauben reihum, jede ein wenig. Getriebe und Schwungrad sind schwer: zugelassener Heber, niemand darunter.",
	"caution.weld": "Schweißen an Welle, Gabel oder gehärtetem Bolzen ändert Festigkeit und Wuchtung, ohne dass man es sieht. Das einem " +
		"befugten Wellenbauer überlassen, der danach wuchtet; Batterie ab, Kraftstoff und Fett weg.",
	"caution.firstrun": "Erster Lauf: Böcke unter der ACHSE in Fahrlage, nie hängend; nur im Leerlauf, denn hält man ein Rad, dreht das andere doppelt so " +
		"schnell. Niemand in der Linie der Welle oder neben einem Rad, Abgas nach draußen. Passmarken, " +
		"Sicherungsringe prüfen, und dass das Schiebestück in seinen Marken steht. Bei jedem Brummen anhalten, das mit der " +
		"Fahrgeschwindigkeit steigt statt mit der Motordrehzahl.",
}

// deDoubts: what is asked back before an entry is kept.
var deDoubts = table{
	"doubt.implausible": "{0 point} {1 base} liegt außerhalb von {2 base} bis {3 base}, wo solche Teile liegen: nochmals hinsehen",
	"doubt.contradiction": "Räder {0 ride} mit {1 load} passt nicht zusammen: hängende Räder tragen nichts, stehende Räder tragen " +
		"etwas",
	"doubt.same_setup": "Aufstellung {0} galt {1 state}, und jetzt steht es {2 state}: ein bewegtes, angehobenes oder abgelassenes " +
		"Fahrzeug bekommt eine neue Aufstellungsnummer",
}
