package words

import (
	"strings"

	"yokebook/measure"
)

// deCodes makes the meanings of the answers: one for each dimension, whatever part it is of.
func deCodes() table {
	out := table{}
	for _, p := range measure.Points {
		_, dimension, _ := strings.Cut(p.Key, ".")
		means := deMeans[dimension]
		if p.Group == measure.GroupFit {
			means = []string{"ja", "nein"}
		}
		for i, c := range p.Codes {
			if i < len(means) {
				out[codeKey(p, c)] = means[i]
			}
		}
	}
	return out
}

// deMeans are the answers of a dimension in the order of its point.
var deMeans = map[string][]string{
	"body":          {"vollständig", "Teile noch ab"},
	"boot":          {"Balg über der Verzahnung", "Dichtung und Kappe", "keines von beiden"},
	"clip":          {"äußerer Ring", "innerer Ring", "Bügel", "Bügelschraube"},
	"condition":     {"kein Verschleiß zu sehen oder zu fühlen", "verschlissen, der Wellenbauer entscheidet", "beschädigt"},
	"grease":        {"mit Schmiernippel", "gekapselt"},
	"kind":          {"Gewinde der Welle", "angeschweißter Bolzen"},
	"material":      {"Stahl", "Aluminium"},
	"nipples":       {"in einer Linie, auf einer Seite", "wie sie kommen"},
	"pilot_kind":    {"Ansatz", "Vertiefung"},
	"side":          {"darüber", "darunter", "daneben"},
	"slip_end":      {"Getriebeende", "Achsende"},
	"springs":       {"gesetzt", "neu, setzen sich noch"},
	"stood":         {"seinen Rädern", "Böcken unter der Achse", "einer Bühne unter den Rädern", "Böcken unter dem Rahmen"},
	"supply":        {"neu, vom Wellenbauer", "neu übergeben", "gebraucht übergeben"},
	"tube_material": {"Stahl", "Aluminium"},
	"work":          {"eine neue Welle", "Länge der übergebenen Welle ändern", "übergebene Welle überholen"},
}
