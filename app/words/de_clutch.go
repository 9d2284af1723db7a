package words

import "yokebook/checks"

// deClutch: splines, the clutch, and what holds a flange.
var deClutch = table{
	"check.spline.input":    "Verzahnung von Eingangswelle und Scheibennabe",
	"check.spline.output":   "Verzahnung von Ausgangswelle und Gleitgabel",
	"check.spline.slip":     "Verzahnung des Schiebestücks",
	"check.spline.capacity": "Festigkeit der Verzahnung",
	"check.spline.identity": "Normen, zu denen die Verzahnung gehören kann",
	"check.clutch.release":  "Spiel und Weg des Ausrücklagers",
	"check.clutch.hub":      "Scheibennabe auf ihrer Verzahnung",
	"subject.fingers":       "zu den Federzungen",
	"subject.guide":         "zur Führungshülse des Ausrücklagers",

	"check.clutch.boss":    "Raum hinter der Scheibennabe",
	"check.clutch.spigot":  "Eingangswelle in ihrem Pilotlager",
	"check.clutch.fit":     "Belag auf seinen Reibflächen",
	"check.clutch.torque":  "Moment, das die Kupplung hält",
	"check.retainer.clamp": "Klemmkraft des Gewindes, das den Flansch hält",

	"input.spline.application":  "Faktor für Stöße auf die Verzahnung",
	"input.spline.distribution": "Faktor für ungleich tragende Zähne",
	"input.spline.wear":         "Faktor für Umdrehungen bei vollem Moment",
	"input.spline.friction":     "Reibung des Schiebestücks",
	"input.retainer.spread":     "Streuung des Anziehfaktors",

	"word.flat_root":       "flacher Zahngrund",
	"word.fillet_root":     "gerundeter Zahngrund",
	"word.any_root":        "Zahngrund je nach Fräser",
	"word.straight_flanks": "gerade Flanken",

	checks.MsgOtherSpline: "{0} Zähne gegen {1}: ein Teil mit gleicher Zähnezahl nehmen; sonst passt das nie zusammen. Beide zuerst ab einer " +
		"Marke nachzählen",
	checks.MsgSplineTight:    "{0 point} ist größer als {1 point}: es geht nicht hinein; nie mit Gewalt oder Feile",
	checks.MsgSplineLoose:    "{0 point} ist um mehr als eine Größe kleiner als {1 point}: eine kleinere Verzahnung gleitet hinein und schert ab",
	checks.MsgSplineShort:    "{0 mm} mehr Zahnlänge müssen tragen, sonst sind sie schwächer als die Welle",
	checks.MsgStrongerSpline: "eine längere, größere oder härtere Verzahnung, oder weniger Moment; ein fertiges Teil nicht ohne geprüftes Verfahren härten oder schweißen",
	checks.MsgBearingForward: "das Ausrücklager sitzt zu weit hinten: eine Zwischenlage von {0 mm} dahinter, oder die Reibfläche {1 mm} näher zum " +
		"Getriebe durch Zwischenlage an Schwungrad oder Kurbelwelle; das zweite verschiebt auch Scheibe und Pilotlager",
	checks.MsgBearingBack: "das Ausrücklager sitzt zu weit vorn: um {0 mm} zurücksetzen, oder die Reibfläche {1 mm} näher zum Motor; das zweite " +
		"verschiebt auch Scheibe und Pilotlager",
	checks.MsgLongerStroke: "keine Lage des Ausrücklagers passt: es braucht einen Hub von {0 mm} oder mehr und Zungen, die ihn vertragen",
	checks.MsgHubOff:       "{0 mm} der Nabe stehen neben der Verzahnung: eine Scheibe mit weiter versetzter Nabe, oder andere Adapterplatte oder Welle",
	checks.MsgBossOnBolts:  "die Nabe stößt an die Schwungradschrauben: niedrigere Köpfe, oder eine Scheibe mit kürzerer Nabe auf dieser Seite",
	checks.MsgBossOnGuide: "die Nabe stößt an die Führungshülse des Ausrücklagers, bevor das Getriebe anliegt: nie mit den Schrauben beiziehen; eine Scheibe mit " +
		"kürzerer Nabe auf dieser Seite oder ein dickerer Adapter",
	checks.MsgBossInFingers: "die Nabe steht zwischen den Federzungen: sie muss ringsum frei durch den Kreis der Zungenspitzen passen, Zungen gedrückt; beides " +
		"messen, sonst eine Scheibe mit kürzerer Nabe",
	checks.MsgNoseShort: "der Zapfen reicht nicht: ein Pilotlager {0 mm} näher zum Getriebe, oder ein längeres",
	checks.MsgNoseLong: "die Eingangswelle steht {0 mm} zu weit hinein: sie würde an der Kurbelwelle aufsitzen; die Spitze kühl kürzen (schleifen) lassen, wo der " +
		"Hersteller es erlaubt, oder das Getriebe zurücksetzen",
	checks.MsgOtherSpigot: "ein Pilotlager mit passender Bohrung; beide mit der Bügelmessschraube messen",
	checks.MsgSmallerDisc: "der Belag ragt über {0 point} hinaus: eine kleinere Scheibe, oder die zugehörigen Teile",
	checks.MsgStrongerClutch: "mehr Anpresskraft (Ausrücklager, Nehmerzylinder und Axiallager der Kurbelwelle müssen sie ertragen), ein Belag mit mehr " +
		"Reibung oder eine größere Scheibe",
	checks.MsgMoreClamp: "mehr Anziehmoment, solange das Gewinde unter seiner Prüfkraft bleibt, ein größeres Gewinde oder weniger Schub: gefettete oder beschichtete " +
		"Verzahnung, oder ein größeres Schiebestück",
	checks.MsgLessTorque:     "das Gewinde würde über seine Prüfkraft gedehnt: weniger Moment, höhere Klasse oder größeres Gewinde; so Angezogenes wird ersetzt",
	checks.MsgLongerReach:    "{0 mm} mehr Gewinde müssen tragen: eine längere Mutter, Schraube oder ein längerer Bolzen",
	checks.MsgNotRecoverable: "ein Bolzen, an eine gehärtete Welle geschweißt: durch Rechnen nicht zu retten; die Welle ersetzen",
	checks.MsgLowEndFails: "das Moment allein beweist es nicht: am unteren Ende klemmt es mit {0 N}, verlangt sind {1 N}; die Dehnung der Schraube " +
		"messen, wo beide Enden zugänglich sind, oder mehr klemmen",

	checks.MsgTryByHand:       "Zähnezahlen gleich, Durchmesser passen; von Hand probieren, Spiel nicht gemessen",
	checks.MsgOddCount:        "ungerade Zahl: gerade Schenkel fassen keine zwei Köpfe; {0 point} zeigt zu wenig, also bis zum größten Wert wiegen oder einen Ring nehmen",
	checks.MsgSplineCandidate: "kann {0} sein, {1 word}, Flanken {2 deg}: Köpfe weichen {3 mm} ab, Zahngrund {4 mm}",
	checks.MsgSplineByTips:    "kann {0} sein, {1 word}, Flanken {2 deg}: Köpfe weichen {3 mm} ab",
	checks.MsgSplineByRoots:   "kann {0} sein, {1 word}, Flanken {2 deg}: Zahngrund weicht {3 mm} ab",
	checks.MsgSplineStraight:  "gerade Flanken: auch die Zahndicke vergleichen, {1 mm} für {0}",
	checks.MsgSplineUnknown:   "keine Größe der tabellierten Normen ist nahe; eine Werksverzahnung oder falsch gezählt",
	checks.MsgSplineAlike:     "mehrere kommen in Frage, und keine Messung dieses Programms trennt sie: ein bekanntes Teil probieren",
	checks.MsgSplineSettle:    "{0 point} würde einige davon trennen",
	checks.MsgPinsDontSit:     "{0 point}: solche Stifte liegen bei keiner davon dort an, wo sie sollen; das Maß über sie blieb weg",
	checks.MsgStressShares:    "Spannung {0 MPa} in der Welle, {1 MPa} in den Zähnen; {2 MPa} auf den Flanken",
	checks.MsgHardnessUnread:  "{0 point} wurde nicht gemessen: von weich bis einsatzgehärtet genommen",
	checks.MsgSlipForce:       "das Schiebestück kann unter vollem Moment mit {0 N} längs der Welle drücken oder ziehen",
	checks.MsgGap:             "Spalt zwischen Ausrücklager und Zungen: {0 mm}",
	checks.MsgStrokeLeft:      "Zungenweg am Hubende, neue Scheibe: {0 mm}",
	checks.MsgPushTaken:       "gedrückt oder gezogen wurde nicht angegeben: als gedrückt genommen",
	checks.MsgConstantContact: "für ein Lager mit Spalt; eines, das immer anliegt, hat keinen und muss so weit eingedrückt sein, wie sein Hersteller sagt",
	checks.MsgPullType:        "gezogene Bauart: die Zungen einer verschlissenen Scheibe stehen näher am Motor; dem Lager auch diesen Weg lassen",
	checks.MsgWornDisc:        "auch für eine verschlissene Scheibe gerechnet: Nabe {0 mm} näher am Motor",
	checks.MsgNewFacing:       "ein neuer Belag hält bei gleichmäßigem Druck {0 N·m}; beurteilt wird der eingelaufene",
	checks.MsgFrictionUnread:  "Reibung nicht angegeben: von {0} bis {1} genommen",
	checks.MsgNutFactor:       "Anziehfaktor {0}: was ein Moment klemmt, ist auf ± {1 percent} bekannt",
	checks.MsgRetainerCare: "nicht an Schrauben, Bolzen oder Wellenenden schweißen, auch nicht in ihrer Nähe: Hitze und Strom durch Lager schaden, ohne " +
		"dass man es sieht; neue Mutter und ihre Sicherung; Flächen sauber und trocken, Gewinde sauber, und trocken oder geölt, wie es zum Anziehfaktor gehört; örtliche Vorschriften und befugte Schweißer gehen vor",
	checks.MsgGradeUnknown: "Klasse {0} ist keine von 8.8, 10.9 und 12.9: ihre Festigkeit ist hier nicht bekannt; eine gekennzeichnete nehmen",
}
