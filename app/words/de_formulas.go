package words

// deFormulas: how each check reckons, in a sentence.
var deFormulas = table{
	"formula.build.chance": "Von 4.096 Ziehungen aus allem Zweifelhaften der Anteil, in dem jede beurteilte Grenze zugleich hält. Er sagt nichts über das, " +
		"was nicht gemessen, nicht beurteilt oder nicht geprüft wurde: er ist keine Erlaubnis zu fahren.",

	"formula.joint.angle": "Der räumliche Winkel zwischen den beiden Achsen, die sich im Gelenk treffen: sein Kosinus ist das Produkt ihrer " +
		"Richtungen, jede aus Neigung und Grundrisswinkel. Sind alle Grundrisswinkel 0, ist es der Unterschied der Neigungen.",
	"formula.joint.most_angle":  "Der größte Winkel dieses Gelenks in jedem gemessenen oder gerechneten Zustand, gegen das, was das Gelenk beugen darf.",
	"formula.joint.least_angle": "Der räumliche Winkel zwischen den beiden Achsen im Gelenk. Ein Gelenk, das nie beugt, verschleißt seine Nadeln an einer Stelle.",
	"formula.joint.match":       "Der größere Endwinkel weniger der kleinere. Gleiche Enden drehen noch nicht gleichförmig: wie gleichförmig, sagt der Restbeugewinkel.",
	"formula.joint.residual": "Der Winkel des einen Gelenks, das so viel Ungleichförmigkeit machte wie alle Gelenke zusammen: jedes ändert die " +
		"Drehzahl durch seinen Winkel um seine eigene Ebene, und Gabelversatz und Verdrehung der Ebenen sagen, wie viel sich aufhebt.",
	"formula.joint.ripple": "Größte weniger kleinste Drehzahl hinter allen Gelenken in einer Umdrehung, als Anteil der Drehzahl davor.",
	"formula.joint.torsional": "Die größte Drehbeschleunigung, die ein Gelenk mit dem Restbeugewinkel bei höchster Wellendrehzahl macht: bei kleinen Winkeln " +
		"Drehzahl im Quadrat mal Winkel im Quadrat.",
	"formula.joint.inertia_drive": "Die größte Drehbeschleunigung dieser Welle bei ihrer höchsten Drehzahl, durch alle Gelenke zwischen Getriebe und ihr.",
	"formula.joint.inertia_coast": "Die größte Drehbeschleunigung dieser Welle bei ihrer höchsten Drehzahl, durch alle Gelenke zwischen Achse und ihr.",
	"formula.joint.torque": "Das Moment an der Welle im niedrigsten Gang (Motormoment mal Übersetzungen und Verluste); auf der Straße nicht mehr, als die " +
		"beladenen Räder durchdrehen lässt. Gegen das zulässige Moment des Gelenks. Stöße (hart einfallende Kupplung, ein durchdrehendes Rad, das wieder " +
		"greift) stecken nicht darin.",
	"formula.joint.couple": "Moment der Welle mal Tangens oder Sinus des Beugewinkels: was Welle und Lager zweimal je Umdrehung biegt.",
	"formula.joint.life": "Stunden, die neun von zehn Gelenken überdauern: 1.500.000 durch Winkel und Drehzahl, mal Verhältnis von zulässigem zu mittlerem " +
		"Moment hoch 3 oder 10/3. Es zählt der größte Winkel, mit dem es läuft, auch beladen und unter Moment; unter 3° zählt er als 3°.",

	"formula.travel.agreement": "Was in einem Zustand gemessen wurde, weniger was die Bahn der Achse aus Federn oder Lenkern für seine Höhe ergibt.",
	"formula.slip.travel":      "Längster weniger kürzester Abstand, dem das Schiebestück zwischen ganz ausgefedert und ganz eingefedert folgen muss.",
	"formula.slip.engaged":     "Das kleinste aus Wellenverzahnung, Hülsenverzahnung und dem nicht Ausgezogenen, in der längsten Stellung.",
	"formula.slip.closing":     "Wie weit das Schiebestück noch heraussteht, wenn die Achse dort ist, wo die Welle am kürzesten ist.",
	"formula.slip.seal": "Länge des blanken Gleitgabelschafts weniger Tiefe der Dichtlippe und weniger größtem Auszug: was noch innerhalb der Lippe " +
		"steht.",
	"formula.slip.length": "Die Länge, bei der beide Enden des Federwegs ihren Hub behalten: in der Mitte dessen, was Einschieben und Ausziehen lassen.",

	"formula.shaft.critical_speed": "Biegekritische Drehzahl (die erste) eines Rohrs auf zwei Gelenken: wächst mit dem Durchmesser, fällt mit dem Quadrat der Länge und mit dem, " +
		"was an den Enden wiegt. Gegen die höchste Wellendrehzahl, mit Abstand. Für ein gerades, gewuchtetes Rohr auf steifen Lagern; " +
		"eine wirkliche Welle liegt tiefer.",
	"formula.shaft.half_critical": "Die Hälfte der biegekritischen Drehzahl, wo die zwei Stöße der Gelenke je Umdrehung sie treffen, gegen die gefahrenen Drehzahlen.",
	"formula.shaft.stress": "Schubspannung außen am Rohr: Moment durch polares Widerstandsmoment. Gegen einen Anteil der Streckgrenze. Für ein heiles Rohr: " +
		"Stöße, Nähte, Dellen und Rost stecken nicht darin.",
	"formula.shaft.twist":   "Wie weit sich das Rohr bei vollem Moment verdreht: Moment mal Länge durch Schubmodul und polares Flächenmoment.",
	"formula.shaft.balance": "Wuchtgüte mal Masse durch Winkelgeschwindigkeit, je Ende die Hälfte.",
	"formula.shaft.clearance": "Raum von der Linie der Gelenkmitten bis zum Hindernis, weniger halbes Rohr, weniger was die Welle dort irgendwo im Federweg näher " +
		"kommt.",
	"formula.flange.match": "Zählt, was sich am Fahrzeug und an der Welle unterscheidet: Zahl der Schrauben, Lochkreis, Art und Durchmesser der Zentrierung, und soweit gemessen ihre Höhe, Schraubengröße und Steigung; bei Bügeln und Schellen die Büchsen. Wie viel Spiel die Zentrierung haben darf, folgt aus Drehzahl und Wuchtgüte.",

	"formula.clutch.flywheel": "Schrauben, Lochkreis und Zentrierung des Schwungrads, jeweils weniger die der Kurbelwelle.",
	"formula.clutch.runout":   "Was die Uhr über eine ganze Umdrehung zeigt; bei einer Bohrung das Doppelte ihres Versatzes.",
	"formula.clutch.release": "Vom Lager ganz zurück bis zu den Zungen: (Adapter + Glockentiefe − Lagerhöhe) − (Schwungradfläche + Zungenhöhe), dazu was der " +
		"Verschleiß nimmt, und was vom Hub bleibt gegen den Weg der Zungen.",
	"formula.clutch.hub": "Die Nabenlänge, die auf der Verzahnung der Getriebewelle liegt, beide ab der Blockfläche gelegt, und der Spalt zu den Schwungradschrauben.",
	"formula.clutch.boss": "Vom getriebeseitigen Ende der Nabe, Scheibe neu, der Länge nach: zu den Zungenspitzen, so weit gedrückt, wie sie dürfen, und zum Ende der " +
		"Führungshülse des Ausrücklagers. Wie dick die Nabe ist, steckt nicht darin.",
	"formula.clutch.spigot": "Die Zapfenlänge, die im Pilotlager liegt, beide ab der Blockfläche gelegt, und der Spalt bis zum Grund der Bohrung.",
	"formula.clutch.fit":    "Außendurchmesser der Reibfläche weniger der der Scheibe.",
	"formula.clutch.torque": "Zwei Flächen (eine Scheibe) mal Reibung mal Anpresskraft mal ein Viertel der Summe beider Belagdurchmesser (eingelaufen), " +
		"gegen das Motormoment mit Betriebsfaktor. Öl am Belag, Hitze und eine lahme Feder stecken nicht darin.",

	"formula.spline.input":    "Zähnezahlen, Durchmesser und Längen beider Teile, jeweils im Rahmen ihres Zweifels verglichen. Nie steht da, dass sie passen: Spiel wird nicht gemessen.",
	"formula.spline.output":   "Zähnezahlen, Durchmesser und Längen beider Teile, jeweils im Rahmen ihres Zweifels verglichen. Nie steht da, dass sie passen: Spiel wird nicht gemessen.",
	"formula.spline.slip":     "Zähnezahlen, Durchmesser und Längen beider Teile, jeweils im Rahmen ihres Zweifels verglichen. Nie steht da, dass sie passen: Spiel wird nicht gemessen.",
	"formula.spline.capacity": "Druck auf den Flanken und Schub am Zahnfuß bei vollem Moment, über die Länge im Eingriff, gegen das, was der Stahl verträgt.",
	"formula.spline.identity": "Wie viele der tabellierten Normen diese Zähnezahl und diese Durchmesser im Rahmen ihres Zweifels haben.",
	"formula.retainer.clamp":  "Klemmkraft aus Moment durch Anziehfaktor und Gewindedurchmesser, gegen das, was die Klasse hält und der Flansch braucht.",

	"formula.mass.axles": "Die gewogene Last jeder Achse, dazu was Motor und Getriebe neu bringen, weniger was die alten nahmen, geteilt nach dem Abstand zu " +
		"den Achsen.",
	"formula.mount.load": "Anteil des Gewichts von Motor und Getriebe auf jedem Lager, nach dem Abstand zum Schwerpunkt.",
	"formula.lift.slings": "Last durch Zahl der tragenden Stränge und den Sinus ihres Winkels zur Waagrechten: je flacher, desto mehr zieht jeder. Von drei oder mehr Strängen " +
		"wird mit zweien gerechnet. Haken, Kran und Hebestellen stecken nicht darin.",

	"formula.fit.direction":  "Was eine Person geantwortet hat.",
	"formula.fit.starter":    "Was eine Person geantwortet hat.",
	"formula.fit.dowels":     "Was eine Person geantwortet hat.",
	"formula.fit.selector":   "Was eine Person geantwortet hat.",
	"formula.fit.speedo":     "Was eine Person geantwortet hat.",
	"formula.fit.handbrake":  "Was eine Person geantwortet hat.",
	"formula.fit.exhaust":    "Was eine Person geantwortet hat.",
	"formula.fit.loop":       "Was eine Person geantwortet hat.",
	"formula.fit.brakehose":  "Was eine Person geantwortet hat.",
	"formula.fit.breather":   "Was eine Person geantwortet hat.",
	"formula.fit.bumpstop":   "Was eine Person geantwortet hat.",
	"formula.fit.ground":     "Was eine Person geantwortet hat.",
	"formula.reading.setup":  "Zählt Messungen älterer Aufstellungen, deren Neigungen noch nicht vergleichbar sind, weil die Rahmenmarke nicht in beiden gemessen wurde.",
	"formula.reading.spread": "Größte weniger kleinste Messung einer Stelle, gegen das, was das Messmittel streuen darf; bei drei oder mehr, wie weit eine herausfällt.",
	"formula.reading.zero":   "Zählt Aufstellungen, in denen der Winkelmesser umgedreht und sein Nullpunkt nicht gefunden wurde: der halbe Unterschied zweier Messungen einer Stelle.",
	"formula.reading.state":  "Zählt Messungen, deren Federlage, Last, Höhe oder Größe nicht oder kaum sein kann.",

	"formula.derived.agreement": "Gemessenes weniger was aus anderen Messungen geometrisch folgt.",
}

// dePhone: what only a phone asks.
var dePhone = table{
	"phone.leaving":      "{0} ist getippt und nicht behalten",
	"phone.leaving.note": "Beim Verlassen steht es wieder hier, wenn dieser Umbau geöffnet wird.",
	"phone.leaving.stay": "Zurück dazu",
	"phone.leaving.go":   "Zur Liste der Umbauten",
}
