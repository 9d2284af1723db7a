package settle

import (
	"strings"
	"testing"

	"yokebook/app/words"
)

func read(t *testing.T, text string) Settings {
	t.Helper()
	s, err := Read([]byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestDefaultsAreTheFirstChoices(t *testing.T) {
	for _, row := range Table() {
		if got := (Settings{}).Value(row.Key); got != row.Choices[0] {
			t.Errorf("%s is %q, want %q", row.Key, got, row.Choices[0])
		}
	}
	if got := (Settings{}).Value("nothing"); got != "" {
		t.Errorf("a key that is not known is %q", got)
	}
}

func TestEveryChoiceComesBackFromTheFile(t *testing.T) {
	for _, row := range Table() {
		for _, choice := range row.Choices {
			data, err := Settings{}.With(row.Key, choice).Bytes()
			if err != nil {
				t.Fatal(err)
			}
			if got := read(t, string(data)).Value(row.Key); got != choice {
				t.Errorf("%s: %q came back as %q", row.Key, choice, got)
			}
		}
	}
}

func TestEveryChoiceHasItsWords(t *testing.T) {
	for _, l := range words.Languages {
		for _, row := range Table() {
			if key := "settings." + string(row.Key); !l.Has(key) {
				t.Errorf("%s lacks %s", l.Tag, key)
			}
			for _, choice := range row.Choices {
				if key := "settings." + string(row.Key) + "." + choice; (row.Key != Language || choice == System) && !l.Has(key) {
					t.Errorf("%s lacks %s", l.Tag, key)
				}
			}
		}
	}
}

func TestWhatANewerVersionSetSurvives(t *testing.T) {
	s := read(t, `{"format":"yokebook-settings/1","theme":"sepia","sound":{"loud":7.50},"length":"in"}`)
	if s.Value(Theme) != "system" || s.Value(Length) != "in" {
		t.Errorf("theme %q, length %q", s.Value(Theme), s.Value(Length))
	}
	data, err := s.With(Hand, "left").Bytes()
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`"theme": "sepia"`, `"loud": 7.50`, `"hand": "left"`, `"format": "yokebook-settings/1"`} {
		if !strings.Contains(string(data), want) {
			t.Errorf("%s is lost:\n%s", want, data)
		}
	}
}

func TestBadFilesGiveTheDefaultsAndOneLine(t *testing.T) {
	for name, text := range map[string]string{
		"cut off": `{"format":"yokebook-settings/1","length":"in"`, "another format": `{"format":"yokebook-settings/9","length":"in"}`,
		"no format": `{"length":"in"}`, "no object": `["in"]`, "null": `null`, "noise": "\x00\xff", "format of another type": `{"format":1}`,
	} {
		s, err := Read([]byte(text))
		if err == nil || strings.Contains(err.Error(), "\n") || s.Value(Length) != "mm" {
			t.Errorf("%s: %v, length %q", name, err, s.Value(Length))
		}
	}
	read(t, `{"format":"yokebook-settings/1","length":"in"}`) // the near twin
	if s := read(t, ""); s.Value(Length) != "mm" {
		t.Error("no file is not the defaults")
	}
}

func TestSettingsAreNotChangedInPlace(t *testing.T) {
	one := Settings{}.With(Length, "in")
	two := one.With(Length, "mm").With(Theme, "nonsense")
	if one.Value(Length) != "in" || two.Value(Length) != "mm" || two.Value(Theme) != "system" {
		t.Errorf("length %q and %q, theme %q", one.Value(Length), two.Value(Length), two.Value(Theme))
	}
}

func TestTheLanguageWritesNumbersAsChosen(t *testing.T) {
	s := Settings{}.With(Length, "in").With(Angle, "dm").With(Decimal, "comma")
	lang := s.Speaks(words.English)
	if got := lang.WithDoubt(76.2, "mm", 0.5) + ", " + lang.Number(2.5, "deg", 0.1); got != "3,000 ± 0,020 in, 2°30′" {
		t.Errorf("got %q", got)
	}
}

func FuzzRead(f *testing.F) {
	f.Add([]byte(`{"format":"yokebook-settings/1","theme":"sun","x":[1,2]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		s, err := Read(data)
		if err != nil {
			return
		}
		out, err := s.With(Theme, "dark").Bytes()
		if err != nil {
			t.Fatal(err)
		}
		if again, err := Read(out); err != nil || again.Value(Theme) != "dark" {
			t.Errorf("%v, theme %q", err, again.Value(Theme))
		}
	})
}
