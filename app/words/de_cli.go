package words

// deCLI: what the verbs print.
var deCLI = table{
	"cli.counts":           "{0} außerhalb, {1} unsicher, {2} wartend, {3} klar",
	"cli.headline":         "Wahrscheinlichkeit, dass alle beurteilten Grenzen halten: {0 percent}",
	"cli.headline_waiting": "Wahrscheinlichkeit, dass alle beurteilten Grenzen halten: {0}",
	"cli.headline_note":    "  {0}",
	"cli.predicted":        "von den klaren gerechnet und nicht gemessen: {0}",
	"cli.resting":          "von den klaren auf angegebenen oder geschätzten Werten beruhend: {0}",
	"cli.build":            "Umbau {0} ({1})",
	"cli.unsealed":         "diese Datei ist nicht versiegelt: sie hat keine Prüfsumme, Änderungen von Hand oder aus Versehen sind nicht zu sehen",

	"cli.finding":             "{0}: {1}",
	"cli.untouched":           "wartet, und noch nichts davon gemessen:",
	"cli.untouched.line":      "    {0}",
	"cli.finding.value_limit": "    {0}, Grenze {1}",
	"cli.finding.value":       "    {0}",
	"cli.finding.chance":      "    {0}",
	"cli.finding.why":         "    {0}",
	"cli.finding.missing":     "    fehlt: {0}",
	"cli.finding.advice":      "    zu tun: {0}",
	"cli.finding.note":        "    Hinweis: {0}",
	"cli.finding.source":      "    Quelle der Grenze: {0}",

	"cli.kept":      "behalten {0 point} {1}, {2 state}, Aufstellung {3}, als Messung {4}",
	"cli.ask":       "{0}; nichts wurde behalten; mit --yes bleibt es, wie es dasteht",
	"cli.changed":   "geänderte Befunde: {0}",
	"cli.unchanged": "kein Befund hat sich geändert",
	"cli.gone":      "nicht mehr da: {0}",
	"cli.next":      "als Nächstes: {0 point}, {1 state}",

	"cli.merged":    "{0} Dateien vereint: {1} Messungen und {2} Striche in {3}",
	"cli.source":    "{0}: {1} Einträge, {2} davon in keiner anderen Datei",
	"cli.conflicts": "anzusehen: {0}",

	"conflict.same id":     "    zwei Einträge unter der Kennung {1} in {0}; eine Messung zählt nicht, bis einer davon gestrichen ist",
	"conflict.ring":        "    Berichtigungen im Kreis in {0}: {1}; keine davon zählt, den Wert neu messen",
	"conflict.corrections": "    mehrere Berichtigungen einer Messung, alle zählen: {1}; alle bis auf eine streichen",
	"conflict.field":       "    {0} wurde an zwei Stellen geändert; die letzte Änderung zählt, zum Klären neu setzen",
	"conflict.member":      "    {0}, das diese Fassung nicht kennt, hat zwei Werte; der größere blieb",

	"cli.exported":  "Umbau {0} geschrieben nach {1}",
	"cli.imported":  "{0}: Umbau {1} liegt im Speicher dieses Geräts",
	"cli.no_builds": "noch keine Umbauten im Speicher dieses Geräts",
	"cli.damaged":   "nicht lesbar: {0}",
	"cli.aside":     "{0}; beschädigte Einträge beiseitegelegt: {1}",

	"start.headless": "yokebook: dieses Programm wurde ohne Fenster gebaut; ein Verb benutzen, etwa `yokebook check FILE`, oder " +
		"`yokebook --help` ansehen",
	"start.no_display": "yokebook: es gibt keine Anzeige für das Fenster; ein Verb benutzen, etwa `yokebook check FILE`, oder " +
		"`yokebook --help` ansehen",
	"start.failed": "yokebook: {0}",

	"cli.arguments":   "gegebene Angaben: {0}, verlangt ist aber `yokebook {1}`",
	"cli.optional":    "({0})",
	"cli.unit.text":   "Text",
	"cli.unit.answer": "Antwort",

	"cli.column.points.point":  "PUNKT",
	"cli.column.points.unit":   "EINHEIT",
	"cli.column.points.states": "VERLANGT IN (NACH WUNSCH)",
	"cli.column.points.place":  "WO DAS MESSMITTEL HINKOMMT",

	"cli.sense.max":     "höchstens",
	"cli.sense.min":     "mindestens",
	"cli.sense.between": "zwischen",
	"cli.sense.equal":   "gleich",
	"cli.sense.input":   "genommen als",
	"cli.other_limit":   "  andere halten",

	"cli.column.limits.limit":  "GRENZE",
	"cli.column.limits.sense":  "SINN",
	"cli.column.limits.value":  "WERT",
	"cli.column.limits.unit":   "EINHEIT",
	"cli.column.limits.source": "QUELLE",

	"cli.column.builds.build":    "UMBAU",
	"cli.column.builds.title":    "TITEL",
	"cli.column.builds.readings": "MESSUNGEN",
	"cli.column.builds.wanted":   "NOCH VERLANGT",
	"cli.column.builds.worst":    "SCHLECHTESTES",
	"cli.column.builds.work":     "LETZTE ARBEIT",
}

// deHelp: the help of the command line.
var deHelp = table{
	"help.root": "Messungen unter einem Fahrzeug, und was sie bedeuten",
	"help.root.long": `Messungen unter einem Fahrzeug, das einen fremden Motor mit Getriebe bekommt, und was sie bedeuten: jeder Befund mit
Wert und Zweifel, Grenze und Quelle, was ihn entscheidet und was zu tun ist. Ohne Verb öffnet sich das Fenster.

Es ist ein rechnendes Notizbuch, keine Zulassung: örtliche Vorschriften, Herstellerangaben und befugte Praxis gehen vor.
Niemand geht unter ein Fahrzeug, das auf einem Heber ruht; Böcke auf beiden Seiten, Räder verkeilt.

Rückgabe: 0 erledigt, 1 eine Person ist gefragt, 2 falsche Eingabe, 3 nicht zu schreiben.`,

	"help.check": "eine Umbaudatei beurteilen: alle Befunde, die schlechtesten zuerst",
	"help.check.long": `Beurteilt eine Umbaudatei und druckt, wie viele Befunde außerhalb, unsicher, wartend und klar sind, dann jeden Befund,
die schlechtesten zuerst: Wert und Zweifel, Grenze, die schwächste Messung, was zu tun ist.

Rückgabe 1 heißt, dass etwas außerhalb ist; mit --strict, dass etwas nicht klar ist.`,

	"help.add": "einer Umbaudatei eine Messung hinzufügen",
	"help.add.long": `Fügt einer Umbaudatei eine Messung hinzu und druckt die geänderten Befunde. POINT ist einer von denen, die
"yokebook points" auflistet. VALUE ist die abgelesene Zahl: -2.4, 2,4, 2°30', 3 1/2", oder ein Text für Reifengröße oder
Festigkeitsklasse. Eine Neigung ist positiv, wenn das VORDERE Ende des Teils höher liegt.

Eine Messung am Fahrzeug braucht --ride und --load; ein angegebener Wert keines von beiden. Ohne --setup gilt die neueste
Aufstellung dieses Zustands, oder eine neue, wenn das Fahrzeug noch nie so stand.

Nach einem Wert, den kein solches Teil hat, oder einem Zustand, der sich widerspricht, wird gefragt (Rückgabe 1); mit
--yes bleibt er.`,

	"help.merge": "Dateien eines Umbaus vereinen",
	"help.merge.long": `Vereint beliebige Dateien eines Umbaus zu einer: nichts geht verloren, und die Reihenfolge ist gleichgültig. Einträge,
die einander widersprechen, werden genannt, beide bleiben, und keiner zählt, bis eine Person einen streicht.`,

	"help.points": "auflisten, was gemessen werden kann",
	"help.points.long": `Listet jeden Punkt auf: seinen Schlüssel für "yokebook add", seine Einheit, die Zustände, in denen er verlangt ist (in
Klammern: nach Wunsch), und wo das Messmittel hinkommt.`,

	"help.limits": "die Grenzen auflisten, nach denen Befunde beurteilt werden",
	"help.limits.long": `Listet jede Grenze mit Wert, Einheit, Sinn und Quelle. Wo Quellen abweichen, stehen die anderen darunter; ein Umbau
kann mit Begründung eine wählen.`,

	"help.schema":      "das JSON-Schema der Umbaudateien drucken",
	"help.schema.long": "Druckt das JSON-Schema (Entwurf 2020-12) der Umbaudateien.",

	"help.builds":      "die Umbauten im Speicher dieses Geräts auflisten",
	"help.builds.long": "Listet die Umbauten im Speicher dieses Geräts, dem Ordner $YOKEBOOK_HOME oder dem eigenen des Benutzers.",

	"help.export":      "einen Umbau aus dem Speicher dieses Geräts in eine Datei schreiben",
	"help.export.long": "Schreibt einen Umbau aus dem Speicher dieses Geräts in eine Umbaudatei. ID steht in \"yokebook builds\".",

	"help.import": "Umbaudateien in den Speicher dieses Geräts einlesen",
	"help.import.long": `Liest Umbaudateien in den Speicher dieses Geräts ein. Ein schon vorhandener Umbau wird damit vereint, nichts geht
verloren; eine Datei zweimal einzulesen ändert nichts.`,

	"help.completion": "drucken, was Verben, Punkte und Dateien in einer Shell ergänzt",
	"help.completion.long": `Druckt ein Skript, mit dem die Shell Verben, Schalter, Punkte und Dateien ergänzt. SHELL ist bash, zsh, fish oder
powershell. Für bash: source <(yokebook completion bash)`,

	"help.help":      "sagen, wie ein Verb benutzt wird",
	"help.help.long": "Sagt, wie ein Verb benutzt wird; \"yokebook VERB --help\" tut dasselbe.",

	"help.flag.json":       "JSON drucken, immer englisch",
	"help.flag.strict":     "mit 1 enden, wenn nicht jeder Befund klar ist",
	"help.flag.output":     "zu schreibende Datei",
	"help.flag.unit":       "Einheit von VALUE, etwa deg, mm, in, kg, lb (sonst die des Punkts)",
	"help.flag.ride":       "wie die Räder standen: droop, ride, bump oder bench",
	"help.flag.load":       "Gewicht auf den Rädern: none, kerb oder laden",
	"help.flag.height":     "zugleich Nabenmitte bis Radlaufkante, in mm",
	"help.flag.setup":      "Nummer der Aufstellung, höher nach jedem Bewegen, Anheben oder Ablassen",
	"help.flag.instrument": "Kennung des Messmittels im Umbau",
	"help.flag.basis":      "woher der Wert kommt: measured, stated oder estimated",
	"help.flag.replaces":   "Kennung der Messung, die diese berichtigt",
	"help.flag.tag":        "unterscheidet mehrere Messungen eines Punkts, etwa zwei Hindernisse",
	"help.flag.by":         "wer maß, wo das mehr sagt als das Gerät: builder für den Wellenbauer",
	"help.flag.note":       "was sonst zu sehen war",
	"help.flag.way":        "welches Ende des Winkelmessers nach vorn zeigte: 1 oder 2",
	"help.flag.lay":        "wie er lag: längs des Teils (along) oder auf seiner Fläche (face)",
	"help.flag.yes":        "einen Wert behalten, nach dem gefragt wird",
	"help.flag.new":        "die Datei mit diesem Titel anlegen",
}

// deDiff: what differs between two files of a build, and between a shaft as ordered and as built.
var deDiff = table{
	"help.diff": "sagen, was eine Datei eines Umbaus hat und die andere nicht",
	"help.diff.long": `Sagt in Worten, was jede von zwei Dateien eines Umbaus hat und die andere nicht: Messungen, Striche, ausgelassene Stellen
und geänderte Angaben; und welche Befunde sich unterscheiden.`,
	"cli.diff.only":       "Nur {0} hat {1}:",
	"cli.diff.line":       "  {0}",
	"cli.diff.reading":    "{0} {1}, {2}, {3} ({4})",
	"cli.diff.by":         "{0}, von {1}",
	"cli.diff.corrects":   "{0}; berichtigt {1}",
	"cli.diff.strike":     "gestrichen: {0} {1}, „{2}“ ({3})",
	"cli.diff.skip":       "ausgelassen: {0}, {1}, „{2}“",
	"cli.diff.unskip":     "wieder gefragt: {0}, {1}",
	"cli.diff.obstacle":   "{0} bei Hindernis {1}",
	"cli.diff.head":       "{0} gesetzt auf {1}",
	"cli.diff.same":       "Beide enthalten dieselben Einträge.",
	"cli.diff.no_finding": "Kein Befund unterscheidet sich.",
	"cli.diff.findings":   "Unterschiedliche Befunde: {0}",
	"cli.diff.finding":    "{0}",
	"cli.diff.was":        "  erste:  {0}",
	"cli.diff.is":         "  zweite: {0}",
	"cli.diff.none":       "nicht da",

	"help.flag.as_built":   "die Welle beurteilen, wie sie gebaut wurde, und sagen, was vom Auftrag abweicht",
	"cli.built.no_finding": "Wie gebaut weicht nichts vom Auftrag ab.",
	"cli.built.findings":   "Wie gebaut weichen diese vom Auftrag ab: {0}",
	"cli.built.finding":    "{0}",
	"cli.built.was":        "  bestellt: {0}",
	"cli.built.is":         "  gebaut:   {0}",
}
