package words

// deFlangeAsked: TEIL is in the dative, after "am" or "vom".
var deFlangeAsked = map[string]asked{
	"pilot":       {"Durchmesser der Zentrierung am TEIL?", "Messschieber über den Ansatz oder in die Vertiefung, sauber, an zwei Stellen um 90° versetzt."},
	"pilot_depth": {"Wie hoch ist der Zentrieransatz am TEIL, oder wie tief seine Vertiefung?", "Tiefenmaß des Messschiebers, rechtwinklig zur Flanschfläche."},
	"pilot_kind":  {"Steht die Zentrierung am TEIL vor (Ansatz), oder ist sie eine Vertiefung?", "In die Mitte der Flanschfläche schauen."},
	"bolts":       {"Wie viele Schraubenlöcher sind am TEIL?", "Ab einer Marke ein zweites Mal zählen. Bügel und Bügelschrauben: ihre Schenkel zählen."},
	"bolt_size":   {"Nenndurchmesser der Schrauben am TEIL?", "Messschieber über das Gewinde einer passenden Schraube, auf das Nennmaß aufgerundet."},
	"bolt_circle": {"Durchmesser des Lochkreises am TEIL?", "Ferne Kante bis nahe Kante gegenüberliegender Löcher. Ungerade Zahl oder kein Kreis: stattdessen die Sehnen."},
	"bolt_chord":  {"Mitte zu Mitte zweier benachbarter Löcher am TEIL?", "Linke Kante zu linker Kante. Bei ungleichen Abständen das weitere Paar."},
	"bolt_chord_2": {"Das nächste Lochpaar am TEIL, wo die Abstände ungleich sind: Mitte zu Mitte?",
		"Linke Kante zu linker Kante der nächsten zwei Löcher."},
	"cap_dia":     {"Außendurchmesser einer Lagerbüchse des Gelenks am TEIL?", "Messschieber über die blanke Büchse, frei von Ring und Dichtung."},
	"cap_span":    {"Über die Enden zweier gegenüberliegender Büchsen des Gelenks am TEIL?", "Messschieber über die ebenen Enden. Innere Ringe: zwischen ihren Nuten."},
	"cap_dia_2":   {"Außendurchmesser der anderen beiden Büchsen des Gelenks am TEIL, wenn sie abweichen?", "Messschieber über die blanke Büchse, 90° weiter."},
	"cap_span_2":  {"Über die Enden der anderen beiden Büchsen des Gelenks am TEIL, wenn das abweicht?", "Messschieber über die ebenen Enden, 90° weiter. Innere Ringe: zwischen ihren Nuten."},
	"ear_gap":     {"Wie weit sind die Ohren der Gabel am TEIL auseinander?", "Innenmaß zwischen den bearbeiteten Flächen der Ohren."},
	"clip":        {"Was hält die Lagerbüchsen des Gelenks am TEIL?", "Ringe außen an den Gabelohren, Ringe innen an den Büchsen, Bügel oder Bügelschrauben."},
	"face_od":     {"Außendurchmesser vom TEIL?", "Messschieber über den Rand; eckiger Flansch: über die Ecken."},
	"face_thick":  {"Wie dick ist es am TEIL, wo die Schrauben durchgehen?", "Messschieber neben einem Loch, ohne Ansatz und Naht."},
	"hole_dia":    {"Durchmesser der Schraubenlöcher am TEIL?", "Innenschenkel in einem sauberen Loch. Gewindeloch: das Nenngewinde, und das anmerken."},
	"bolt_pitch":  {"Gewindesteigung der Schrauben am TEIL?", "Gewindelehre, oder über zehn Gänge durch zehn. Zollgewinde: 25,4 durch die Gänge je Zoll."},
	"bolt_length": {"Wie lang sind die Schrauben am TEIL, unter dem Kopf?", "Von der Auflage unter dem Kopf bis zum Gewindeende."},
	"bolt_grade":  {"Welche Festigkeitsklasse steht auf den Schrauben am TEIL?", "Auf den Köpfen."},
	"bolt_torque": {"Mit welchem Moment werden die Schrauben am TEIL angezogen?", "Vom Hersteller des Flanschs oder der Schrauben."},
	"runout":      {"Einmal von Hand durchdrehen. Wie weit wandert der Zeiger am TEIL insgesamt?", "Messuhr auf der Zentrierung, rechtwinklig zur Achse; kleinster bis größter Wert: der doppelte Versatz."},
}

// deMaleAsked and deFemaleAsked: teeth outside and inside.
var (
	deMaleAsked = map[string]asked{
		"splines":   {"TEIL: wie viele Zähne? Ab einer Marke zweimal zählen.", "Um einen verzählt ist der häufigste Fehler: einen Zahn markieren und nochmals herum."},
		"major":     {"TEIL: Durchmesser über die Zahnköpfe?", "Messschieber über gegenüberliegende Köpfe. Ungerade Zahl: bis zum größten Wert wiegen, oder mit einem Ring."},
		"minor":     {"TEIL: Durchmesser am Zahngrund?", "Schneiden des Messschiebers in gegenüberliegende Lücken."},
		"over_pins": {"TEIL: Maß über zwei gleiche Stifte in gegenüberliegenden Lücken?", "Stifte, die an den Flanken anliegen und über die Köpfe ragen; ungerade Zahl: die beiden Lücken, die sich am nächsten gegenüberliegen."},
	}
	deFemaleAsked = map[string]asked{
		"splines":   {"TEIL: wie viele Zähne? Ab einer Marke zweimal zählen.", "Um einen verzählt ist der häufigste Fehler: einen Zahn markieren und nochmals herum."},
		"major":     {"TEIL: Durchmesser am Zahngrund, der größere?", "Innenspitzen des Messschiebers in gegenüberliegende Lücken."},
		"minor":     {"TEIL: Durchmesser zwischen den Zahnköpfen, der kleinere?", "Innenspitzen auf gegenüberliegende Köpfe. Ungerade Zahl: der größte Dorn, der hineingeht."},
		"over_pins": {"TEIL: Maß zwischen zwei gleichen Stiften in gegenüberliegenden Lücken?", "Stifte, die an den Flanken anliegen, nicht am Grund; ungerade Zahl: die beiden Lücken, die sich am nächsten gegenüberliegen."},
	}
)

var deSplineAsked = map[string]asked{
	"pin_dia":  {"TEIL: Durchmesser dieser Stifte?", "Messschieber an den Stiften; Bohrerschäfte genügen."},
	"length":   {"TEIL: wie lang ist der volle, nutzbare Teil der Zähne?", "Nur Zähne voller Tiefe: weder Anlauf noch Auslauf."},
	"flank":    {"TEIL: in welchem Winkel stehen die Zahnflanken? Gerade, parallele Flanken: 0.", "Mit einer Lehre: üblich sind 0, 30, 37,5 und 45."},
	"hardness": {"TEIL: wie hart?", "Härteprüfer oder Prüffeilen an einer Fläche, die nichts trägt."},
}

var deSlipYokeAsked = map[string]asked{
	"slip_yoke.barrel":        {"Außendurchmesser des Schafts der Gleitgabel?", "Messschieber auf dem blanken Teil, der in Buchse und Dichtung läuft."},
	"slip_yoke.barrel_length": {"Wie lang ist der blanke, runde Teil des Schafts der Gleitgabel?", "Vom offenen Ende bis zum Beginn des Schmiedeteils."},
	"tail_bush.bore":          {"Bohrung der Buchse im hinteren Getriebedeckel?", "Innenschenkel des Messschiebers, Gabel ausgebaut, an zwei Stellen um 90° versetzt."},
	"tail_seal.depth":         {"Wie weit innerhalb des Gehäuseendes steht die Dichtlippe?", "Tiefenmaß, von der hinteren Gehäusefläche bis zur Lippe."},
}

var deMountAsked = map[string]asked{
	"x":      {"Liegt das TEIL vor oder hinter der Vorderachslinie, und wie weit?", "Bis zur Mitte des Lagergummis."},
	"y":      {"Auf welcher Seite der Fahrzeugmitte liegt das TEIL, und wie weit?", "Bis zur Mitte des Lagergummis."},
	"rating": {"Welche Last darf das TEIL tragen?", "Vom Hersteller des Lagers."},
}

// deSupplyAsked: what the shaft builder makes or is handed.
var deSupplyAsked = map[string]asked{
	"supply":    {"TEIL: wer bringt es, der Wellenbauer oder der Auftraggeber?", "Vor dem ersten Schnitt vereinbaren; was übergeben wird, beschriften."},
	"condition": {"TEIL: in welchem Zustand, wenn es übergeben wird?", "Sauber, bei gutem Licht: Bohrungen und Laufbahnen der Büchsen, Verzahnung, Flächen, Risse."},
}

var deStatedAsked = map[string]asked{
	"engine.rpm_max":      {"Welche höchste Motordrehzahl wird gefahren?", "Wo der rote Bereich beginnt, oder wo Regler oder Begrenzer eingreifen."},
	"gear.highest":        {"Übersetzung des höchsten Gangs? Direkt: 1,000; ein Schongang liegt unter 1.", "Motorumdrehungen je Umdrehung des Getriebeausgangs, aus den Getriebedaten."},
	"transfer.high":       {"Übersetzung des Verteilergetriebes in der Straßenstufe? Direkt: 1,000.", "Umdrehungen des Eingangs je Umdrehung des Ausgangs, aus seinen Daten."},
	"joint.angle_limit":   {"Bis zu welchem Winkel dürfen die Gelenke beugen, bevor etwas anstößt?", "Vom Hersteller der Gelenke, oder wo Gabel an Gabel stößt, von Hand gebeugt."},
	"axle.ratio":          {"Übersetzung der Achse: Umdrehungen der Welle je Umdrehung der Räder?", "Vom Schild der Achse, oder Zähne des Tellerrads durch Zähne des Ritzels."},
	"tyre.code":           {"Welche Größe steht auf dem Reifen?", "Auf der Flanke der Reifen, mit denen gefahren wird."},
	"tyre.radius":         {"Wie weit rollt das Fahrzeug bei einer Radumdrehung, geteilt durch 6,283?", "Reifen und Boden markieren, eine Umdrehung geradeaus auf ebenem Boden rollen, Weg messen, durch 2π teilen."},
	"road.speed_max":      {"Welche höchste Geschwindigkeit wird gefahren?", "Vom Halter, oder wo ein Begrenzer sie hält."},
	"engine.torque_max":   {"Welches höchste Drehmoment hat der Motor?", "Aus den Motordaten, so wie eingebaut und abgestimmt."},
	"gear.lowest":         {"Übersetzung des niedrigsten Vorwärtsgangs?", "Motorumdrehungen je Umdrehung des Getriebeausgangs, aus den Getriebedaten."},
	"transfer.low":        {"Übersetzung des Verteilergetriebes in der Geländestufe?", "Umdrehungen des Eingangs je Umdrehung des Ausgangs, aus seinen Daten."},
	"converter.ratio":     {"Um wie viel erhöht der Drehmomentwandler das Moment im Stand?", "Aus den Wandlerdaten; bei einer Reibkupplung weglassen."},
	"joint.torque_rating": {"Welches Moment dürfen die Gelenke höchstens tragen?", "Vom Hersteller der Gelenke."},
	"joint.life_torque":   {"Welches Moment tragen die Gelenke 5000 h lang bei 3° und 100 1/min?", "Aus der Lebensdauertabelle des Herstellers."},
	"shaft.torque_mean":   {"Welches Moment trägt die Welle im Gebrauch durchschnittlich?", "Aus dem Gebrauch, nicht die Spitze: Stunden bei Spitzenmoment sagen nichts."},
	"tube.yield":          {"Wie hoch ist die Streckgrenze des Wellenrohrs?", "Aus dem Zeugnis des Rohrherstellers oder der Stahlsorte."},
	"cover.clamp_force":   {"Mit welcher Kraft presst der Kupplungsdeckel?", "Vom Hersteller des Deckels, für eine neue Scheibe."},
	"disc.friction":       {"Welche Reibungszahl hat der Scheibenbelag?", "Vom Hersteller der Scheibe."},
	"tyre.friction":       {"Welche Reibungszahl haben Reifen und Boden?", "Aus den Reifendaten oder nach üblicher Praxis für den Boden."},
}

var deRetentionAsked = map[string]asked{
	"retainer.kind":       {"Hält den Flansch ein in die Welle geschnittenes Gewinde oder ein angeschweißter Bolzen?", "Am Wellenende nach einer Naht suchen. Ein Bolzen an einer gehärteten Welle ist nicht zu retten."},
	"retainer.thread":     {"Nenndurchmesser des Gewindes, das den Flansch hält?", "Messschieber über das Gewinde, auf das Nennmaß aufgerundet."},
	"retainer.pitch":      {"Steigung dieses Gewindes, von Gang zu Gang?", "Gewindelehre, oder über zehn Gänge durch zehn. Zollgewinde: 25,4 durch die Gänge je Zoll."},
	"retainer.grade":      {"Welche Festigkeitsklasse steht auf Schraube oder Mutter?", "Auf dem Kopf der Schraube oder der Fläche der Mutter."},
	"retainer.torque":     {"Mit welchem Moment wird angezogen?", "Wie am Drehmomentschlüssel eingestellt, weniger das Laufmoment einer selbstsichernden Mutter."},
	"retainer.reach":      {"Auf welcher Länge trägt das Gewinde wirklich?", "Volle Gänge im Eingriff, alles an seinem Platz; weder Fase noch Auslauf zählen."},
	"retainer.nut_factor": {"Welcher Anziehfaktor gehört zu diesem Gewinde und seiner Schmierung?", "Aus einem Buch oder vom Hersteller; die Quellen weichen um ein Drittel ab."},
}

var deFitAsked = map[string]asked{
	"fit.direction": {"Motor im ersten Gang von Hand gedreht: drehen die Räder VORWÄRTS?", "Räder frei auf Böcken, Zündung aus. Eine umgedrehte Achse kann fünf Rückwärtsgänge ergeben."},
	"fit.starter":   {"Greift das Anlasserritzel voll ein, steht in Ruhe frei und spurt richtig herum ein?", "Zähnezahl und Teilung gleich, Spalt in Ruhe, voller Eingriff; Batterie ab, solange nachgesehen wird."},
	"fit.dowels":    {"Zentrieren Passstifte, nicht Schrauben, die Kupplungsglocke am Motor?", "Beide Stifte vorhanden, in ganzer Länge, in passenden Bohrungen."},
	"fit.selector":  {"Erreicht und hält der Hebel jeden Gang?", "Jeden Gang von Hand, Motor aus, Hebel frei vom Tunnel."},
	"fit.speedo":    {"Hat der Tacho einen Antrieb, der richtig zählt?", "Antrieb oder Geber vorhanden, auf Reifen und Achse abgestimmt."},
	"fit.handbrake": {"Hält die Handbremse, und ist ihr Seil ausgefedert UND eingefedert frei von der Welle?", "Seillänge und Weg an beiden Enden des Federwegs. Eine Bremstrommel am Flansch baut länger."},
	"fit.exhaust":   {"Ist der Auspuff über den ganzen Federweg frei von Welle, Bremsleitungen und Boden?", "Aus- und eingefedert entlangsehen; Motorkippen mitrechnen."},
	"fit.loop":      {"Ist ein Fangbügel um die Welle nahe dem vorderen Gelenk?", "Stark, am Rahmen verschraubt, frei von der Welle. Ob er verlangt ist, sagt die örtliche Vorschrift."},
	"fit.brakehose": {"Räder hängen: sind die Bremsschläuche locker und frei?", "Ganz ausgefedert, bei gelenkter Achse voll eingeschlagen."},
	"fit.breather":  {"Können Achse und Getriebe atmen, mit lockerem Schlauch beim Ausfedern?", "Entlüftung offen, über der Wasserlinie, Schlauch nicht gespannt."},
	"fit.bumpstop":  {"Treffen die Anschlagpuffer, bevor sonst etwas anstößt?", "Achse an beide Anschläge gebracht; Welle, Wanne, Auspuff und Schläuche ansehen."},
	"fit.ground":    {"Ist der Motor mit einem eigenen Band an den Rahmen gemasst?", "Blankes Metall an beiden Enden: sonst fließt der Strom durch Lager und Seile."},
}

var deOrderAsked = map[string]asked{
	"order.number":      {"Nummer oder Name dieses Auftrags, wie danach gefragt wird?", "Die eigene, nicht die des Wellenbauers; sie steht auf Schildern und Papieren."},
	"order.name":        {"Wer bestellt: Name?", "Die Person, bei der der Wellenbauer rückfragt."},
	"order.phone":       {"Unter welcher Telefonnummer ist diese Person zu erreichen?", "Mit den Zeiten, zu denen abgenommen wird."},
	"order.mail":        {"Welche Adresse nimmt Nachrichten und die zurückkommende Datei an?", "Buchstabe für Buchstabe."},
	"order.vehicle":     {"Für welches Fahrzeug?", "Art, Jahr und Radstand, wie in den Papieren."},
	"order.measured_by": {"Wer hat gemessen?", "Die Person unter dem Fahrzeug."},
	"order.needed_by":   {"Bis wann wird die Welle gebraucht?", "Ein Tag, oder weglassen."},
	"order.cross":       {"Welches Kreuz ist gewünscht, wenn bekannt?", "Nummer oder Größenklasse; sonst sagen es die Büchsenmaße beider Enden."},
	"order.change":      {"Was ändert sich am Fahrzeug noch, bevor es fährt?", "Aufbau, Last, Tank, Reifen, Lager, die sich setzen: alles, was Achse oder Getriebe bewegt."},
	"order.quantity":    {"Wie viele Wellen dieser Art werden bestellt?", "Eine, oder eine mehr als Reserve."},
	"order.work":        {"Was soll der Wellenbauer tun?", "Ein schon einmal geschweißtes Rohr verträgt vielleicht keine zweite Naht: das entscheidet er."},
	"order.stood":       {"Worauf stand das Fahrzeug, als die Fahrlage gemessen wurde?", "Unter dem Rahmen heißt ausgefedert, nicht Fahrlage."},
	"order.springs":     {"Haben sich die Federn gesetzt?", "Neue Federn und Buchsen setzen sich mit den ersten Lasten; die Welle wird damit kürzer oder länger."},
	"order.body":        {"Waren Aufbau und Ausrüstung vollständig, als die Fahrlage gemessen wurde?", "Sitze, Tank, Batterie, Pritsche, Winde: alles, was wiegt."},
	"order.stroke":      {"Welcher nutzbare Hub des Schiebestücks wird verlangt?", "Mindestens Federweg und beide Reserven, wie auf dem Blatt."},
	"order.tolerance":   {"Wie weit darf die Länge ganz eingeschoben vom Auftrag abweichen, plus oder minus?", "Weniger als an jedem Ende vom Hub übrig ist."},
	"order.slip_end":    {"An welchem Ende soll das Schiebestück sein?", "Üblich zum Getriebe hin, weg von Schmutz und Steinen; der Wellenbauer weiß es vielleicht besser."},
	"order.boot":        {"Wie soll das Schiebestück sauber bleiben?", "Ein Balg braucht bei vollem Hub Platz neben dem Rohr."},
	"order.grease":      {"Kreuze mit Schmiernippel oder gekapselt?", "Nippel brauchen am Fahrzeug einen Weg für die Presse."},
	"order.nipples":     {"Alle Schmiernippel in einer Linie längs der Welle?", "So kommen mit einer Drehung der Welle alle in Reichweite der Presse."},
}
