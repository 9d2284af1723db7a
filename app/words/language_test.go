package words

import (
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

func TestNoKeyStandsInTwoTables(t *testing.T) {
	for _, l := range Languages {
		if len(l.double) > 0 {
			t.Errorf("%s has keys in two tables: %v", l.Tag, l.double)
		}
	}
	if l := newLanguage("xx", "Twice", table{"a": "1"}, table{"a": "2"}); len(l.double) != 1 {
		t.Errorf("a key in two tables was not noticed: %v", l.double)
	}
}

func TestLanguagesHaveTheSameKeysAndGaps(t *testing.T) {
	for _, l := range Languages[1:] {
		for _, d := range differences(Languages[0], l) {
			if tag, key, lacks := strings.Cut(d, " lacks "); lacks {
				d += "; " + beside(t, tag, key)
			}
			t.Error(d)
		}
	}
}

// Control for the test above: a second language that lacks a key, has one too many, or drops a gap
// is told apart from a complete one, from both sides.
func TestDifferencesNameWhatIsMissingInEither(t *testing.T) {
	one := newLanguage("aa", "One", table{"k": "read {0 point} at {1 mm}", "m": "x"})
	one.native = true
	tests := []struct {
		name  string
		other table
		want  string
	}{
		{"complete, gaps in another order", table{"k": "{1 mm}: {0 point}", "m": "y"}, ""},
		{"key missing", table{"k": "{1 mm}: {0 point}"}, "bb lacks m"},
		{"key too many", table{"k": "{1 mm}: {0 point}", "m": "y", "n": "z"}, "aa lacks n"},
		{"gap missing", table{"k": "{0 point}", "m": "y"}, "aa and bb have other gaps in k"},
		{"gap with another unit", table{"k": "{1 deg}: {0 point}", "m": "y"}, "aa and bb have other gaps in k"},
	}
	for _, tt := range tests {
		two := newLanguage("bb", "Two", tt.other, pointTexts())
		if got := strings.Join(differences(one, two), "; "); got != tt.want {
			t.Errorf("%s: got %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestSecondLanguageNeedsTheTextsOfPoints(t *testing.T) {
	texts := pointTexts()
	delete(texts, "question.gearbox.slope")
	delete(texts, "place.tyre.code")
	second := newLanguage("bb", "Two", English.sentences, texts)
	got := strings.Join(differences(English, second), "; ")
	if want := "bb lacks place.tyre.code; bb lacks question.gearbox.slope"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	p, _ := measure.PointOf("datum.slope")
	if said := second.Question(p); said != "Q datum.slope" {
		t.Errorf("the second language asks %q", said)
	}
}

// pointTexts are the texts of all points in an invented language.
func pointTexts() table {
	texts := table{}
	for _, p := range measure.Points {
		texts["question."+p.Key], texts["place."+p.Key] = "Q "+p.Key, "P "+p.Key
		for _, c := range p.Codes {
			texts[codeKey(p, c)] = "C " + c.Means
		}
	}
	return texts
}

func TestEveryMessageOfTheChecksHasASentence(t *testing.T) {
	for _, l := range Languages {
		for _, key := range messageKeys(t) {
			if !l.Has(key) {
				t.Errorf("%s: no sentence for %s; %s", l.Tag, key, beside(t, l.Tag, key))
			}
		}
	}
}

func TestEveryCheckHasAName(t *testing.T) {
	for _, l := range Languages {
		for _, c := range checks.Table {
			if key := "check." + c.Key; !l.Has(key) {
				t.Errorf("%s: no name for the check, %s; %s", l.Tag, key, beside(t, l.Tag, key))
			}
		}
	}
}

func TestEveryPointHasItsWords(t *testing.T) {
	for _, l := range Languages {
		for _, p := range measure.Points {
			part, dimension, _ := strings.Cut(p.Key, ".")
			for _, key := range []string{"part." + part, "dimension." + dimension, "group." + string(p.Group)} {
				if !l.Has(key) && !l.Has("point."+p.Key) {
					t.Errorf("%s: no word for %s (point %s); %s", l.Tag, key, p.Key, beside(t, l.Tag, key))
				}
			}
			if l.Question(p) == "" || l.Place(p) == "" && p.Basis != measure.Stated {
				t.Errorf("%s: %s lacks a question or a place", l.Tag, p.Key)
			}
			if p.Caution != "" && !l.Has(p.Caution) {
				t.Errorf("%s: no sentence for %s (point %s)", l.Tag, p.Caution, p.Key)
			}
		}
	}
}

func TestEveryStateVerdictAndCautionHasItsWords(t *testing.T) {
	for _, l := range Languages {
		for _, ride := range []measure.Ride{measure.Droop, measure.AtRide, measure.Bump} {
			for _, load := range []measure.Load{measure.NoLoad, measure.Kerb, measure.Laden} {
				s := measure.State{Ride: ride, Load: load}
				if key := "state." + s.String(); !l.Has(key) {
					t.Errorf("%s lacks %s", l.Tag, key)
				}
			}
		}
		for _, s := range []measure.State{measure.OffBench, {Ride: "ride", Load: "kerb", Case: "drive"},
			{Ride: "ride", Load: "kerb", Case: "coast"}, {Ride: "ride", Load: "laden", Case: "drive"},
			{Ride: "ride", Load: "laden", Case: "coast"}} {
			if key := "state." + s.String(); !l.Has(key) {
				t.Errorf("%s lacks %s", l.Tag, key)
			}
		}
		for _, v := range []checks.Verdict{checks.Clear, checks.Out, checks.Unsure, checks.Waiting} {
			if !l.Has("verdict." + string(v)) {
				t.Errorf("%s lacks the verdict %s", l.Tag, v)
			}
		}
		for _, key := range Cautions {
			if !l.Has(key) {
				t.Errorf("%s lacks %s", l.Tag, key)
			}
		}
	}
}

func TestFirstRunCautionSaysWhatCanHurt(t *testing.T) {
	said := English.Caution("caution.firstrun")
	for _, must := range []string{"under the AXLE at ride height", "never hanging", "in line with the shaft", "match marks",
		"circlips", "within its marks", "rises with road speed", "with engine speed"} {
		if !strings.Contains(said, must) {
			t.Errorf("the first run caution does not say %q: %s", must, said)
		}
	}
}

func TestGapsOfEverySentenceAreKnown(t *testing.T) {
	for _, l := range Languages {
		for key, sentence := range l.sentences {
			_, gaps := parts(sentence)
			for _, g := range gaps {
				if !knownKind(g.kind) {
					t.Errorf("%s: %s has a gap of unknown kind %q", l.Tag, key, g.kind)
				}
			}
			if strings.Count(sentence, "{") != len(gaps) {
				t.Errorf("%s: %s has a brace that is no gap: %s", l.Tag, key, sentence)
			}
		}
	}
}

func knownKind(kind string) bool {
	for _, k := range append([]string{"percent", "base", "finding"}, wordKinds...) {
		if k == kind {
			return true
		}
	}
	_, ok := measure.UnitOf(kind)
	return ok
}

func TestSayNeverLosesAnything(t *testing.T) {
	tests := []struct{ name, want, got string }{
		{"unknown key", "no.such.key 3 mm", English.Say("no.such.key", 3, "mm")},
		{"too few arguments", "weakest: pinion slope, ? of the doubt", English.Say("finding.weakest_shared", "pinion.slope")},
		{"nothing to say", "", English.Message(checks.Message{})},
		{"argument of another type", "at most true", English.Say("limit.max", true)},
	}
	for _, tt := range tests {
		if tt.got != tt.want {
			t.Errorf("%s: got %q, want %q", tt.name, tt.got, tt.want)
		}
	}
}

// TestCharactersAreThoseWithAFont: the window has no font for others of its own (app/screen/part).
func TestCharactersAreThoseWithAFont(t *testing.T) {
	const others = "←→▲▼⌀≤≥≠−–…′″‘’“”„π\u200b\n"
	for _, l := range Languages {
		for key, sentence := range l.sentences {
			for _, r := range sentence {
				if (r < ' ' || r > 'ž' || r == 0x7f) && !strings.ContainsRune(others, r) {
					t.Errorf("%s, %s: %q stands in %q", l.Tag, key, r, sentence)
				}
			}
		}
	}
}
