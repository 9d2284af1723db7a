package words

import (
	"strings"
	"testing"

	"yokebook/checks/limits"
)

func TestAPhraseIsPutInAndTheRestStays(t *testing.T) {
	tests := []struct{ name, got, english, german string }{
		{"path stays", German.Fault("/media/stick: there is no such folder; plug it in or make it"),
			English.Fault("/media/stick: there is no such folder; plug it in or make it"),
			"/media/stick: diesen Ordner gibt es nicht; einstecken oder anlegen"},
		{"names of papers stay", German.Source("a maker's page (from memory); common practice, no source"),
			English.Source("a maker's page (from memory); common practice, no source"),
			"a maker's page (aus dem Gedächtnis); allgemein üblich, keine Quelle"},
		{"the longer of two phrases", German.Source("texts on strength (from memory): usual value"),
			English.Source("texts on strength (from memory): usual value"),
			"Lehrbücher der Festigkeit (aus dem Gedächtnis): usual value"},
		{"unknown phrase", German.Fault("disk: quota"), English.Fault("disk: quota"), "disk: quota"},
	}
	for _, tt := range tests {
		if tt.got != tt.german {
			t.Errorf("%s: got %q, want %q", tt.name, tt.got, tt.german)
		}
		if strings.Contains(tt.english, "Quelle") || strings.Contains(tt.english, "Ordner") {
			t.Errorf("%s: English became %q", tt.name, tt.english)
		}
	}
}

// A phrase that no limit uses any more has been reworded there, and would stay English in silence.
func TestEveryPhraseOfASourceIsUsedByALimit(t *testing.T) {
	var all strings.Builder
	for _, r := range limits.Table {
		all.WriteString(r.Source + "\n")
		for _, o := range r.Others {
			all.WriteString(o.Source + "\n")
		}
	}
	for key, phrase := range enPhrases {
		if strings.HasPrefix(key, "source.") && !strings.Contains(all.String(), phrase) {
			t.Errorf("%s: no source says %q", key, phrase)
		}
	}
}
