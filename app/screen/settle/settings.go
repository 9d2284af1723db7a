// Package settle holds what a person sets once for a device: units, colours, size of text, the hand
// that holds it, and the language. It knows no toolkit; the screens put into effect what it says.
package settle

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"

	"yokebook/app/words"
	"yokebook/measure"
)

// Format names the file of settings.
const Format = "yokebook-settings/1"

// Key names a setting, in the file too. It is never renamed.
type Key string

// The settings.
const (
	Theme    Key = "theme"
	Text     Key = "text"
	Hand     Key = "hand"
	Length   Key = "length"
	Angle    Key = "angle"
	Mass     Key = "mass"
	Torque   Key = "torque"
	Decimal  Key = "decimal"
	Language Key = "language"
)

// System leaves a choice to the device.
const System = "system"

// Row is one setting: its key and what may be chosen, the default first.
type Row struct {
	Key     Key
	Choices []string
}

// Table lists the settings in the order in which they are shown.
func Table() []Row {
	return []Row{
		{Length, []string{"mm", "in"}},
		{Angle, []string{"deg", string(words.Minutes)}},
		{Mass, []string{"kg", "lb"}},
		{Torque, []string{"N·m", "lbf·ft"}},
		{Theme, []string{System, "light", "dark", "sun"}},
		{Text, []string{"middle", "small", "large"}},
		{Hand, []string{"right", "left"}},
		{Language, tags()},
		{Decimal, []string{"language", "point", "comma"}},
	}
}

func tags() []string {
	out := []string{System}
	for _, l := range words.Languages {
		out = append(out, l.Tag)
	}
	return out
}

// choices are what may be chosen for a key; none for a key that is not known.
func choices(key Key) []string {
	for _, r := range Table() {
		if r.Key == key {
			return r.Choices
		}
	}
	return nil
}

// Settings are those of one device. The zero Settings are the defaults. They are never changed in place.
type Settings struct {
	members map[string]json.RawMessage // as in the file, unknown ones too
}

// Read reads a file of settings; no bytes give the defaults. On an error it gives the defaults with
// one line that says what is wrong. Members of a newer version are kept for Bytes; a choice that is
// not known counts as the default.
func Read(data []byte) (Settings, error) {
	if len(data) == 0 {
		return Settings{}, nil
	}
	var members map[string]json.RawMessage
	if err := json.Unmarshal(data, &members); err != nil || members == nil {
		return Settings{}, errors.New("settings.json holds no settings; choose them anew")
	}
	var format string
	if err := json.Unmarshal(members["format"], &format); err != nil || format != Format {
		return Settings{}, fmt.Errorf("settings.json is of the format %.40q, not %s; choose them anew", format, Format)
	}
	delete(members, "format")
	return Settings{members}, nil
}

// Value is what is chosen for a key, or its default.
func (s Settings) Value(key Key) string {
	of := choices(key)
	if len(of) == 0 {
		return ""
	}
	var chosen string
	if json.Unmarshal(s.members[string(key)], &chosen) == nil && slices.Contains(of, chosen) {
		return chosen
	}
	return of[0]
}

// With returns the settings with one thing chosen anew. A choice that is not known changes nothing.
func (s Settings) With(key Key, choice string) Settings {
	if !slices.Contains(choices(key), choice) {
		return s
	}
	value, err := json.Marshal(choice)
	if err != nil {
		return s
	}
	members := map[string]json.RawMessage{}
	maps.Copy(members, s.members)
	members[string(key)] = value
	return Settings{members}
}

// Bytes is the file of the settings, its members sorted by name.
func (s Settings) Bytes() ([]byte, error) {
	members := map[string]json.RawMessage{}
	maps.Copy(members, s.members)
	members["format"] = json.RawMessage(`"` + Format + `"`)
	data, err := json.Marshal(members) // sorts by name
	if err != nil {
		return nil, fmt.Errorf("settings: %w", err)
	}
	var out bytes.Buffer
	if err := json.Indent(&out, data, "", "  "); err != nil {
		return nil, fmt.Errorf("settings: %w", err)
	}
	out.WriteByte('\n')
	return out.Bytes(), nil
}

// Left reports that the left hand holds the device.
func (s Settings) Left() bool { return s.Value(Hand) == "left" }

// Units are the units that numbers are shown and typed in.
func (s Settings) Units() words.Chosen {
	return words.Chosen{Length: measure.Unit(s.Value(Length)), Mass: measure.Unit(s.Value(Mass)),
		Torque: measure.Unit(s.Value(Torque)), Minutes: s.Value(Angle) == string(words.Minutes)}
}

// Speaks is the language that is chosen, else that of the device, with its numbers as they are chosen.
func (s Settings) Speaks(device *words.Language) *words.Language {
	lang := device
	for _, l := range words.Languages {
		if l.Tag == s.Value(Language) {
			lang = l
		}
	}
	switch s.Value(Decimal) {
	case "point":
		lang = lang.WithComma(false)
	case "comma":
		lang = lang.WithComma(true)
	}
	return lang.WithChosen(s.Units())
}
