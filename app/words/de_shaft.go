package words

import "yokebook/checks"

// deShaft: the shaft's tube, torque and room, its ends, masses, lifting and a person's answers.
var deShaft = table{
	"check.shaft.critical_speed": "biegekritische Drehzahl der Welle",
	"check.shaft.half_critical":  "halbe biegekritische Drehzahl",
	"check.shaft.stress":         "Schubspannung im Rohr",
	"check.shaft.twist":          "Verdrehung des Rohrs bei vollem Moment",
	"check.shaft.balance":        "zulässige Restunwucht je Ende",
	"check.shaft.clearance":      "Raum neben der Welle",
	"check.joint.torque":         "Moment an den Gelenken",
	"check.joint.couple":         "Biegemoment des Gelenks bei vollem Moment",
	"check.joint.life":           "Lebensdauer des Gelenks",
	"check.flange.match":         "Unterschiede zwischen Flansch und Gegenflansch",
	"check.clutch.flywheel":      "Unterschiede zwischen Schwungrad und Kurbelwelle",
	"check.clutch.runout":        "Rundlauf",
	"check.mass.axles":           "Achslast nach dem Umbau",
	"check.mount.load":           "Last auf dem Lager",
	"check.lift.slings":          "Zug in einem Strang des Gehänges",
	"check.derived.agreement":    "Gemessenes gegen das, was aus anderen Messungen folgt",
	"check.fit.direction":        "Drehrichtung",
	"check.fit.starter":          "Anlasser",
	"check.fit.dowels":           "Passstifte der Kupplungsglocke",
	"check.fit.selector":         "Schalthebel",
	"check.fit.speedo":           "Tachoantrieb",
	"check.fit.handbrake":        "Handbremse",
	"check.fit.exhaust":          "Auspuff",
	"check.fit.loop":             "Fangbügel",
	"check.fit.brakehose":        "Bremsschläuche",
	"check.fit.breather":         "Entlüftungen",
	"check.fit.bumpstop":         "Anschlagpuffer",
	"check.fit.ground":           "Masseband",

	"value.flange.match":    "{0} davon",
	"value.clutch.flywheel": "{0} davon",
	"value.fit.direction":   "Antwort {0} (1 ja, 0 nein)",
	"value.fit.starter":     "Antwort {0} (1 ja, 0 nein)",
	"value.fit.dowels":      "Antwort {0} (1 ja, 0 nein)",
	"value.fit.selector":    "Antwort {0} (1 ja, 0 nein)",
	"value.fit.speedo":      "Antwort {0} (1 ja, 0 nein)",
	"value.fit.handbrake":   "Antwort {0} (1 ja, 0 nein)",
	"value.fit.exhaust":     "Antwort {0} (1 ja, 0 nein)",
	"value.fit.loop":        "Antwort {0} (1 ja, 0 nein)",
	"value.fit.brakehose":   "Antwort {0} (1 ja, 0 nein)",
	"value.fit.breather":    "Antwort {0} (1 ja, 0 nein)",
	"value.fit.bumpstop":    "Antwort {0} (1 ja, 0 nein)",
	"value.fit.ground":      "Antwort {0} (1 ja, 0 nein)",

	"subject.bore":                "Glockenbohrung",
	"subject.face":                "Glockenfläche",
	"subject.front_end":           "vorderes Ende",
	"subject.rear_end":            "hinteres Ende",
	"subject.engine_gearbox.mass": "Masse von Motor mit Getriebe",
	"subject.engine_gearbox.x":    "Schwerpunkt von Motor mit Getriebe",
	"subject.gearbox.plan":        "Grundriss Getriebe",
	"subject.pinion.plan":         "Grundriss Ritzel",
	"subject.shaft.length":        "Länge Welle",
	"subject.shaft.plan":          "Grundriss Welle",
	"subject.shaft.slope":         "Neigung Welle",

	"input.shaft.end_station":   "Lage dessen, was an den Wellenenden wiegt",
	"input.joint.life_exponent": "Exponent des Moments in der Lebensdauer",
	"input.torque.net_share":    "Nettoanteil des Motormoments",

	"point.tube.material": "Rohrwerkstoff",

	checks.MsgWiderTube: "bis dahin deutlich unter dieser Drehzahl bleiben: eine Welle in Resonanz kann sich losreißen. Ein größeres Rohr oder eine " +
		"kürzere Welle (zweiteilig mit Mittellager); dickere Wand hilft nicht, Aluminium allein auch nicht",
	checks.MsgDontDwell: "nicht gleichmäßig fahren, solange die Welle zwischen {0 rev/min} und {1 rev/min} dreht (gerechnet; die wirkliche liegt eher " +
		"tiefer); durchfahren ist üblich. Anhalten bei jedem Brummen, das mit dem Tempo steigt",
	checks.MsgStrongerTube: "ein größeres oder dickeres Rohr, festerer Stahl, oder weniger Moment im niedrigsten Gang; geschweißt wird beim Wellenbauer, " +
		"danach gewuchtet",
	checks.MsgStrongerJoint: "größere Gelenke, oder weniger Moment im niedrigsten Gang; bis dahin darin kein Vollgas",
	checks.MsgLongerLife: "ein kleinerer Winkel, ein größeres Gelenk, oder ein früherer Termin zum Nachsehen: rostroter Staub an den Dichtungen, " +
		"Spiel oder Rauheit, von Hand zu fühlen",
	checks.MsgMoreRoom: "versetzen, was im Weg ist, oder die Welle, oder ein dünneres Rohr, wenn die Drehzahl es erlaubt; Brems- und " +
		"Kraftstoffleitungen nie nur wegbiegen: sie bleiben befestigt und frei, ausgefedert, eingefedert und bei rollendem Motor",
	checks.MsgAdapterFlange: "einen beidseitig zentrierten Adapterflansch fertigen lassen; nie passend bohren, nie die Schrauben zentrieren lassen",
	checks.MsgPilotFiner: "mit diesen Messmitteln nicht zu entscheiden: {0 point} und {1 point} mit der Bügelmessschraube messen, oder beide fünfmal mit ein und " +
		"demselben Messschieber; von Hand gleitet die Zentrierung gerade hinein, ohne fühlbares Spiel",
	checks.MsgPilotPlay: "die Zentrierungen dürfen bei {1 rev/min} um {0 mm} voneinander abweichen: die Hälfte davon ist, wie weit die Welle bei Wuchtgüte G {2} " +
		"neben ihrer Achse sitzen darf (unsere Rechnung; am Flansch eingebaut gewuchtet geht mehr)",
	checks.MsgPilotByHand: "gleiche Maße beweisen keinen Sitz: sauber und trocken von Hand versuchen; die Zentrierung gleitet gerade hinein, ohne fühlbares " +
		"Spiel und ohne dass Schrauben sie hineinziehen",
	checks.MsgOtherJointSize: "ein Gelenk mit je einer Büchsengröße pro Seite; nie eine Büchse unterlegen",
	checks.MsgOwnFlywheel: "ein Schwungrad für diese Kurbelwelle fertigen oder ausdrehen lassen, auf dem Ansatz zentriert, von einem Betrieb, der es auch " +
		"wuchtet; Schrauben zentrieren nicht, und ein Schwungrad, das sich löst oder zerspringt, durchschlägt den Boden",
	checks.MsgTrueFace: "beide Flächen reinigen, Grate suchen und nochmals messen; bleibt es, die Fläche in der Werkstatt planen lassen, ein Schwungrad " +
		"nie unter seine Mindestdicke",
	checks.MsgMoveDowels: "die Achsen liegen {0 mm} auseinander: exzentrische Passstifte versetzen die Glocke um so viel, zu der Seite, wo die Bohrung " +
		"den Taster am weitesten eindrückt; dann nochmals messen. Kurbelwelle nur von Hand drehen, Batterie ab",
	checks.MsgPutRight: "mit Nein beantwortet: in Ordnung bringen, bevor das Fahrzeug fährt, dann die Antwort streichen und neu geben",
	checks.MsgAxleOverloaded: "so viel darf die Achse nicht tragen: leichtere Teile, weiter hinten oder vorn, oder weniger Last; das Schild entscheidet, " +
		"nicht diese Rechnung",
	checks.MsgStrongerMount: "ein Lager, das so viel darf, oder Lager weiter auseinander; die Einheit abfangen, bevor eines gelöst wird",
	checks.MsgOutsideMounts: "der Schwerpunkt liegt außerhalb der drei Lager: die Einheit kippt; ein Lager versetzen, bevor sie aufgesetzt wird",
	checks.MsgStrongerSling: "nicht damit heben: ein stärkeres Gehänge, oder längere Stränge, die steiler ziehen",
	checks.MsgTooFlat:       "nicht heben: ein Strang zieht flacher als {0 deg} zur Waagrechten; längere Stränge oder eine Traverse",
	checks.MsgLookAtBoth:    "{0 point} wurde gemessen und folgt auch aus anderen Messungen, und beide weichen ab: eine ist falsch, beide ansehen",

	checks.MsgSteelTaken: "Rohr als Stahl genommen: sein Werkstoff wurde nicht angegeben",
	"help.tubes":         "Rohrgrößen auflisten, aus denen eine Welle gebaut werden könnte",
	"help.tubes.long": `Beurteilt die Größen, in denen Wellenrohr verkauft wird (EN 10305 und Zollgrößen), für jede Welle eines Umbaus, mit
denselben Messungen und Grenzen wie check: biegekritische Drehzahl, Schub bei vollem Moment, Raum daneben über den Federweg.
Die klaren kommen zuerst, die kleinste voran; die außerhalb bleiben weg, außer --all verlangt sie.`,
	"help.flag.tubes_all":        "auch die Größen auflisten, die außerhalb sind",
	"cli.tubes.shaft":            "Rohre für: {0}",
	"cli.tubes.note":             "    Hinweis: {0}",
	"cli.tubes.none":             "keine Größe der Reihe genügt: --all listet sie mit dem, was jeder fehlt",
	"cli.column.tubes.outer":     "AUSSEN",
	"cli.column.tubes.wall":      "WAND",
	"cli.column.tubes.series":    "REIHE",
	"cli.column.tubes.mass":      "KG JE M",
	"cli.column.tubes.critical":  "KRIT. DREHZAHL",
	"cli.column.tubes.stress":    "SCHUB",
	"cli.column.tubes.twist":     "VERDREHUNG",
	"cli.column.tubes.clearance": "RAUM",
	"cli.column.tubes.verdict":   "URTEIL",
	checks.MsgEndsTaken:          "nicht gewogen: was an den Wellenenden wiegt, ist mit {0 kg} bis {1 kg} genommen und macht sie langsamer; die Welle wiegen",
	checks.MsgDwellRoad:          "das sind {0 km/h} bis {1 km/h} auf der Straße",
	checks.MsgTorqueLesser:       "das kleinere aus {0 N·m} im niedrigsten Gang und {1 N·m} bei durchdrehenden Rädern",
	checks.MsgTorqueOffroad:      "{0 N·m} im niedrigsten Gang, was auch die Räder tun: im Gelände",
	checks.MsgTorqueNoGrip:       "{0 N·m} im niedrigsten Gang: Achslast beladen, Achsübersetzung oder Reifen sind nicht bekannt, für durchdrehende Räder wird nichts abgezogen",
	checks.MsgGripTaken:          "Reibung von Reifen und Boden nicht angegeben: mit {0} genommen; griffige Reifen auf trockenem Boden oder Last auf der Achse geben mehr",
	checks.MsgTwistNoVerdict:     "nicht beurteilt, keine Quelle nennt eine Grenze; unter Moment kommt es zur Stellung der Gabeln hinzu",
	checks.MsgBalanceGrade:       "Wuchtgüte G {0}; die Praxis des Wuchters geht vor",
	checks.MsgCoupleForce:        "auf die Lagerungen einer {1 mm} langen Welle bis zu {0 N}, zweimal je Umdrehung",
	checks.MsgLifeFullSpeed:      "gerechnet, als liefe sie immer mit höchster Drehzahl; die mittlere Lebensdauer ist etwa fünfmal so lang",
	checks.MsgNearestState:       "am nächsten kommt es hier: {0 state}",
	checks.MsgCountsDiffer:       "{0 point} {2} und {1 point} {3} sind nicht gleich",
	checks.MsgSizesDiffer:        "{0 point} und {1 point} liegen {2 mm} auseinander; {3 mm} wären gut",
	checks.MsgPilotsAlike:        "beide Zentrierungen sind von gleicher Art: Ansatz muss auf Vertiefung treffen",
	checks.MsgPilotBottoms:       "{0 point} ist {2 mm} mehr als {1 point}: so kämen die Flächen nicht zusammen",
	checks.MsgOffset:             "die Achsen liegen {0 mm} auseinander: die Hälfte des Zeigerwegs",
	checks.MsgOwnWeightOnly:      "ohne Ladung gewogen: was es trägt, kommt hinzu",
	checks.MsgStaticAndTorque:    "nur im Stand und bei vollem Moment im niedrigsten Gang: keine Stöße, kein Bremsen",
	checks.MsgMountPulled:        "volles Moment zieht es mit {0 kg} nach oben: auch das muss es halten",
	checks.MsgNoLiftPlan: "eine Rechnung, kein Hebeplan: Gehänge, Haken, Kran und Hebestellen haben je ihre eigene Grenze; niemand unter " +
		"der Last",
	checks.MsgStiffLegs:      "von {0} Strängen an starrer Last zählen {1}",
	checks.MsgReadAndDerived: "{0 point}: gemessen {1 base}, gerechnet {2 base}",
}
