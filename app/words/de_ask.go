package words

import "strings"

// asked is how a point is asked in German: the question, and where the tool goes.
type asked struct{ question, place string }

// dePoints makes the questions and places of the points from their tables.
func dePoints() table {
	out := table{}
	add := func(prefix, name string, rows map[string]asked) {
		for key, a := range rows {
			out["question."+prefix+key] = strings.ReplaceAll(a.question, "TEIL", name)
			out["place."+prefix+key] = strings.ReplaceAll(a.place, "TEIL", name)
		}
	}
	for _, rows := range []map[string]asked{deLineAsked, deShaftAsked, deSurveyAsked, deSpringAsked, deStatedAsked, deClutchAsked, deEngineAsked,
		deRetentionAsked, deMassAsked, deFitAsked, deOrderAsked, deBuiltAsked, deSlipYokeAsked} {
		add("", "", rows)
	}
	for _, f := range []struct{ part, name string }{
		{"front_end", "vorderen Flansch am Fahrzeug"}, {"front_mate", "vorderen Flansch der Welle"},
		{"rear_end", "hinteren Flansch am Fahrzeug"}, {"rear_mate", "hinteren Flansch der Welle"},
	} {
		add(f.part+".", f.name, deFlangeAsked)
	}
	for _, s := range []struct {
		part, name string
		male       bool
	}{
		{"input_shaft", "Getriebeeingangswelle", true}, {"disc_hub", "Nabe der Kupplungsscheibe", false}, {"output_shaft", "Getriebeausgangswelle", true},
		{"slip_yoke", "Gleitgabel", false}, {"slip_male", "Welle des Schiebestücks", true}, {"slip_female", "Hülse des Schiebestücks", false},
	} {
		teeth := deFemaleAsked
		if s.male {
			teeth = deMaleAsked
		}
		add(s.part+".", s.name, teeth)
		add(s.part+".", s.name, deSplineAsked)
	}
	for _, m := range []struct{ part, name string }{{"mount_left", "LINKE Lager"}, {"mount_right", "RECHTE Lager"}, {"mount_rear", "HINTERE Lager"}} {
		add(m.part+".", m.name, deMountAsked)
	}
	for _, l := range []struct{ part, name string }{{"lower_link", "unteren Lenkers"}, {"upper_link", "oberen Lenkers"}} {
		add(l.part+".", l.name, deLinkAsked)
	}
	for _, s := range []struct{ part, name string }{
		{"front_mate", "vorderer Flansch oder Gabel der Welle"}, {"rear_mate", "hinterer Flansch oder Gabel der Welle"},
		{"slip", "Schiebestück"}, {"tube", "Rohr"}, {"centre_bearing", "Mittellager"},
	} {
		add(s.part+".", s.name, deSupplyAsked)
	}
	return out
}

// deLineAsked: slopes, plan angles, yoke phase, wind-up.
var deLineAsked = map[string]asked{
	"shaft.phase": {"Von hinten gesehen: wohin und wie weit ist die hintere Gabel gegen die vordere verdreht? In Linie: 0.",
		"Vordere Gabel mit dem Winkelmesser waagrecht stellen, dann an der hinteren Gabel genauso anlegen."},
	"front_shaft.phase": {"VORDERE Welle von hinten: wohin und wie weit ist ihre hintere Gabel gegen die vordere verdreht? In Linie: 0.",
		"Vordere Gabel mit dem Winkelmesser waagrecht stellen, dann an der hinteren Gabel genauso anlegen."},
	"pinion.windup_drive": {"Um wie viel hebt sich das Vorderende des Ritzels unter vollem Antriebsmoment?",
		"Angegeben oder gerechnet, nicht unter dem Fahrzeug gemessen: unter Moment liegt dort niemand."},
	"pinion.windup_coast": {"Um wie viel senkt sich das Vorderende des Ritzels im Schiebebetrieb?",
		"Angegeben oder gerechnet, nicht unter dem Fahrzeug gemessen: unter Moment liegt dort niemand."},
	"datum.slope": {"Winkelmesser auf die Rahmenmarke legen: Welches Ende liegt höher?",
		"Eine ebene, markierte Stelle am Rahmenträger, die wiederzufinden ist: sie verbindet die Aufstellungen."},
	"gearbox.slope": {"Winkelmesser längs an den Getriebeausgang legen. Welches Ende liegt höher?",
		"Längs der Ausgangswelle oder an einer dazu rechtwinklig bearbeiteten Fläche (angeben); nicht am Guss oder an der Wanne."},
	"front_shaft.slope": {"Winkelmesser längs auf das Rohr der VORDEREN Welle legen. Welches Ende liegt höher?",
		"Auf das blanke Rohr vor dem Mittellager, frei von Schweißnaht, Wuchtblech und Schmutz."},
	"shaft.slope": {"Winkelmesser längs auf das Wellenrohr legen. Welches Ende liegt höher?",
		"Auf das blanke Rohr, frei von Schweißnaht, Wuchtblech und Schmutz. Zweiteilig: die hintere Welle."},
	"pinion.slope": {"Winkelmesser längs an das Ritzel legen. Welches Ende liegt höher?",
		"Längs des Ritzels oder an der bearbeiteten Fläche seines Flanschs (angeben). Am Verteilergetriebe: längs des Eingangs."},
	"gearbox.plan": {"Von oben gesehen: nach welcher Seite zeigt das Vorderende der Getriebeachse, und wie weit?",
		"Gegen eine Schnur in Fahrzeugmitte: Abstand an zwei Stellen, geteilt durch deren Entfernung."},
	"front_shaft.plan": {"Von oben gesehen: nach welcher Seite liegt das Vorderende der VORDEREN Welle, und wie weit?",
		"Beide Gelenkmitten auf den Boden loten und gegen eine Schnur in Fahrzeugmitte messen."},
	"shaft.plan": {"Von oben gesehen: nach welcher Seite liegt das Vorderende der Welle, und wie weit?",
		"Beide Gelenkmitten auf den Boden loten und gegen eine Schnur in Fahrzeugmitte messen."},
	"pinion.plan": {"Von oben gesehen: nach welcher Seite zeigt das Vorderende des Ritzels, und wie weit?",
		"Haarlineal über die Flanschfläche, gegen eine Schnur in Fahrzeugmitte."},
}

// deShaftAsked: heights, the shaft's sizes, obstacles.
var deShaftAsked = map[string]asked{
	"hub.height":       {"Wie weit ist es von der Nabenmitte senkrecht hinauf zur Kante des Radlaufs?", "Im Lot über der Nabenmitte, Mittel beider Seiten."},
	"hub_left.height":  {"LINKS: wie weit von der Nabenmitte senkrecht hinauf zur Kante des Radlaufs?", "Im Lot über der linken Nabenmitte."},
	"hub_right.height": {"RECHTS: wie weit von der Nabenmitte senkrecht hinauf zur Kante des Radlaufs?", "Im Lot über der rechten Nabenmitte."},
	"bump.gap":         {"Wie weit ist der Anschlagpuffer von dem entfernt, worauf er trifft?", "Von der Pufferspitze bis zum Sitz, die kleinere der beiden Seiten."},
	"bump.rubber":      {"Wie hoch ist der Anschlagpuffer selbst, ungedrückt?", "Von seiner Blechplatte bis zur Spitze."},
	"shaft.length":     {"Wie lang ist die Welle von Gelenkmitte zu Gelenkmitte?", "Maßband längs der Welle, zwischen den Mitten der Lagerbüchsen. Zweiteilig: die hintere Welle."},
	"shaft.closed": {"Wie lang ist die Welle von Gelenkmitte zu Gelenkmitte, ganz zusammengeschoben? Zweiteilig: die hintere Welle.",
		"Auf der Werkbank: Maßband zwischen den Mitten der Lagerbüchsen, Schiebestück bis zum Ende eingeschoben."},
	"slip.exposed":             {"Wie weit ist das Schiebestück gegenüber ganz eingeschoben ausgezogen, so wie es jetzt steht?", "Von einer Marke bei ganz eingeschoben bis zur Kante der Hülse oder Dichtung."},
	"slip.usable":              {"Wie weit lässt es sich von ganz eingeschoben ausziehen, bis der LETZTE Zahn freikommt?", "Auf der Werkbank: langsam ausziehen, bis es freikommt. Dichtung und Kappe zählen nicht."},
	"tube.od":                  {"Außendurchmesser des Wellenrohrs?", "Messschieber auf blankem Metall in Rohrmitte, an zwei Stellen um 90° versetzt."},
	"tube.wall":                {"Wie dick ist die Wand des Wellenrohrs?", "An einem Schnitt oder Loch, oder aus den Papieren des Rohrs."},
	"tube.material":            {"Woraus ist das Wellenrohr?", "An Stahl haftet ein Magnet."},
	"shaft.mass":               {"Wie schwer ist die ganze Welle?", "Auf der Waage, mit Gelenken und Flanschen wie eingebaut."},
	"front_shaft.length":       {"Wie lang ist die VORDERE Welle vom vorderen Gelenk zum mittleren?", "Maßband längs der Welle, zwischen den Mitten der Lagerbüchsen."},
	"front_shaft.tube_od":      {"Außendurchmesser des Rohrs der VORDEREN Welle?", "Messschieber auf blankem Metall in Rohrmitte, an zwei Stellen um 90° versetzt."},
	"front_shaft.tube_wall":    {"Wie dick ist die Rohrwand der VORDEREN Welle?", "An einem Schnitt oder Loch, oder aus den Papieren des Rohrs."},
	"centre_bearing.bore":      {"Bohrung des Mittellagers?", "Messschieber im Innenring, oder am Sitz der Welle darin."},
	"centre_bearing.offset":    {"Wie weit ist die Mitte des Mittellagers von der Mitte des Gelenks dahinter entfernt?", "Längs der vorderen Welle, von Lagermitte bis Mitte der Büchsen des mittleren Gelenks."},
	"centre_bearing.height":    {"Wie weit ist die Wellenmitte von der Fläche, an die der Lagerbock geschraubt wird?", "Rechtwinklig zur Anschraubfläche, bis zur Mitte der Bohrung."},
	"centre_bearing.bolt_span": {"Mitte zu Mitte der beiden Schrauben, die den Lagerbock des Mittellagers halten?", "Über den Bock, Lochmitte zu Lochmitte."},
	"obstacle.gap":             {"Wie weit ist das Hindernis von einer Schnur zwischen den beiden Gelenkmitten?", "Kürzester Weg von der Schnur, oder von der Rohroberfläche plus halbes Rohr."},
	"obstacle.station":         {"Wie weit hinter dem vorderen Gelenk steht das Hindernis? Gleiche Nummer wie sein Abstand.", "Längs der Welle, von der Mitte des vorderen Gelenks."},
	"obstacle.side":            {"Auf welcher Seite der Welle liegt das Hindernis? Gleiche Nummer wie sein Abstand.", "So wie es in Fahrlage zur Welle steht."},
}

// deSurveyAsked: before a shaft exists.
var deSurveyAsked = map[string]asked{
	"shaft.gap":               {"Wie weit ist es von Flanschfläche zu Flanschfläche?", "Maßband zwischen den Mitten der beiden Flanschflächen."},
	"front_flange.z":          {"Wie hoch über dem Boden liegt die Mitte des Flanschs am vorderen Wellenende?", "Auf den waagrechten Boden loten."},
	"rear_flange.z":           {"Wie hoch über demselben Boden liegt die Mitte des Flanschs am hinteren Wellenende?", "Auf denselben waagrechten Boden loten."},
	"front_flange.y":          {"Auf welcher Seite der Mittelschnur liegt die Mitte des vorderen Flanschs, und wie weit?", "Von der Flanschmitte loten, dann waagrecht hinüber zur Schnur."},
	"rear_flange.y":           {"Auf welcher Seite der Mittelschnur liegt die Mitte des hinteren Flanschs, und wie weit?", "Von der Flanschmitte loten, dann waagrecht hinüber zur Schnur."},
	"front_end.face_to_joint": {"Vorderes Ende: wie weit ist die Gelenkmitte von der Flanschfläche?", "An der Gabel, die an den vorderen Flansch kommt: Fläche bis Mitte der Büchsen."},
	"rear_end.face_to_joint":  {"Hinteres Ende: wie weit ist die Gelenkmitte von der Flanschfläche?", "An der Gabel, die an den hinteren Flansch kommt: Fläche bis Mitte der Büchsen."},
	"gearbox.y_front":         {"Vordere Stelle auf der Mittellinie von Motor und Getriebe: auf welcher Seite der Schnur, und wie weit?", "Von der Mitte der Kurbelwellenscheibe loten, oder von einer anderen Stelle der Linie."},
	"gearbox.y_rear":          {"Hintere Stelle auf der Mittellinie von Motor und Getriebe: auf welcher Seite der Schnur, und wie weit?", "Von der Mitte des Getriebeausgangs loten."},
	"gearbox.y_span":          {"Wie weit sind die vordere und die hintere Stelle dieser Linie in Längsrichtung voneinander entfernt?", "Auf dem Boden zwischen den beiden Lotmarken, längs der Schnur."},
	"wheelbase.left":          {"LINKS: vordere Nabenmitte bis hintere Nabenmitte?", "Räder geradeaus, Lotmarken auf dem Boden."},
	"wheelbase.right":         {"RECHTS: vordere Nabenmitte bis hintere Nabenmitte?", "Räder geradeaus, Lotmarken auf dem Boden."},
	"track.width":             {"Wie weit sind die Mitten des linken und rechten Reifens dieser Achse auseinander?", "Auf dem Boden, von einer Kante des einen Reifens zur gleichen Kante des anderen."},
}

// deSpringAsked: leaf spring and axle-end joint.
var deSpringAsked = map[string]asked{
	"spring.front_half": {"Längs des Hauptblatts: von der vorderen KANTE der Achsklemmung bis zur Mitte des vorderen Auges?", "Maßband auf dem Blatt. Ab Kante der Klemmung, nicht ab Herzbolzen."},
	"spring.rear_half":  {"Längs des Hauptblatts: von der hinteren KANTE der Achsklemmung bis zur Mitte des hinteren Auges?", "Maßband auf dem Blatt. Ab Kante der Klemmung, nicht ab Herzbolzen."},
	"spring.eye_rise":   {"Liegt die Mitte des FESTEN Auges über oder unter dem Hauptblatt an der Klemmung, und um wie viel?", "In Fahrlage, im Lot: ab Mitte der Blattdicke an der Klemmung. Fest: das Auge ohne Schäkel."},
	"spring.eye_offset": {"Liegt die Augenmitte über oder unter der Mitte ihres eigenen Blatts, und um wie viel?", "Rechtwinklig zum Blatt, wo das Auge beginnt. Auge in Blattmitte: 0."},
	"spring.pad_z":      {"Liegt das Hauptblatt an der Klemmung über oder unter der Achsmitte, und um wie viel?", "Im Lot, von Mitte Achsrohr bis Mitte der Blattdicke, Unterlagen mitgezählt."},
	"spring.rate":       {"Wie steif ist eine Feder?", "Vom Federhersteller, oder daraus, wie weit eine bekannte Last sie senkt."},
	"rear_joint.x":      {"Liegt die Mitte des achsseitigen Gelenks vor oder hinter der Achsmitte, und wie weit?", "Waagrecht, zwischen Loten von der Achsmitte und von der Mitte der Büchsen, in Fahrlage."},
	"rear_joint.z":      {"Liegt die Mitte des achsseitigen Gelenks über oder unter der Achsmitte, und wie weit?", "Höhen über demselben waagrechten Boden, in Fahrlage."},
}

// deLinkAsked: the ends of a link; TEIL is in the genitive.
var deLinkAsked = map[string]asked{
	"chassis_x": {"Rahmenende des TEIL: vor oder hinter der Achsmitte, und wie weit?", "Waagrecht, zwischen Loten von der Achsmitte und von der Mitte der Buchse, in Fahrlage."},
	"chassis_z": {"Rahmenende des TEIL: über oder unter der Achsmitte, und wie weit?", "Höhen über demselben waagrechten Boden, bis Mitte der Buchse, in Fahrlage."},
	"axle_x":    {"Achsende des TEIL: vor oder hinter der Achsmitte, und wie weit?", "Waagrecht, zwischen Loten von der Achsmitte und von der Mitte der Buchse, in Fahrlage."},
	"axle_z":    {"Achsende des TEIL: über oder unter der Achsmitte, und wie weit?", "Höhen über demselben waagrechten Boden, bis Mitte der Buchse, in Fahrlage."},
}
