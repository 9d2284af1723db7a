package words

// deFitting: the sheet for the one who fits the shaft that came back.
var deFitting = table{
	"sheet.name.fit":         "Einbaublatt für eine Gelenkwelle, wie gebaut",
	"sheet.first.stop.fit":   "NOCH NICHT FAHREN: {0}",
	"sheet.first.out.fit":    "WIE GEBAUT AUSSERHALB DER GRENZEN, vor dem Einbau lesen: {0}",
	"sheet.first.unsure.fit": "Zum Einbau, mit Zweifeln, die vor der Fahrt zu klären sind: {0}",
	"sheet.first.clear.fit":  "Zum Einbau: jeder Befund der Welle, wie gebaut, ist klar",

	"sheet.fit":         "Einbau der Welle",
	"sheet.fit.stands":  "C muss ausgezogen sein",
	"sheet.fit.no_slip": "Wie weit das Schiebestück ausgezogen sein muss, ist nicht bekannt: Länge der Welle im Stand messen, und was gebaut wurde, ganz eingeschoben.",
	"sheet.fit.made":    "Was gebaut wurde, neben dem Bestellten oder früher Gemessenen",
	"sheet.fit.asked":   "bestellt",
	"sheet.fit.built":   "gebaut",
	"sheet.fit.who":     "gemessen von",
	"sheet.fit.same":    "Wie gebaut weicht kein Befund vom Auftrag ab.",
	"sheet.fit.changed": "Diese Befunde weichen ab:",

	"sheet.fit.before": "Vor der Fahrt",
	"sheet.fit.marks":  "Passmarken über das Schiebestück und an beiden Flanschen in Linie; Gabeln im unten genannten Versatz.",
	"sheet.fit.clips":  "Jede Büchse sitzt, jeder Ring in seiner Nut, kein Nippel stößt an.",
	"sheet.fit.slip":   "In Fahrlage steht das Schiebestück so weit heraus wie oben genannt; messen, dann die Achse aus- und einfedern und nochmals messen.",
	"sheet.fit.bolts":  "Zentrierungen sitzen, ohne von den Schrauben hineingezogen zu werden; neue Schrauben der genannten Klasse, in Stufen auf das genannte Moment, markiert.",
	"sheet.fit.room":   "Raum zu allem neben der Welle bei hängenden Rädern, in Fahrlage und auf den Anschlägen.",
	"sheet.fit.turn":   "Fahrzeug sicher auf Böcken unter der Achse, stehende Räder verkeilt, Motor aus, Schlüssel ab: von Hand durchgedreht, nirgends schwer, nirgends Kontakt.",
	"sheet.fit.oil":    "Ölstände von Getriebe und Achse, Entlüftungen offen; Gelenke und Schiebestück geschmiert, bis sauberes Fett austritt.",
	"sheet.fit.again":  "Nach der ersten Fahrt: Schrauben nochmals prüfen, Schiebestück und Beugewinkel nochmals messen.",

	"help.flag.ordered": "das Auftragsblatt schreiben, auch wenn das Gebaute schon gemessen ist",
}
