package document

import (
	"bytes"
	"encoding/json"
	"errors"
	"reflect"
	"testing"

	"yokebook/measure"
)

// The standard decoder (with number tokens kept) is the judge: whatever a file says, the file
// written from it says too, but for the order of lists and what was written twice.
func TestNothingUnknownIsLost(t *testing.T) {
	for _, name := range []string{"full.json", "newer.json"} {
		in := golden(t, name)
		b, _, err := Read(in)
		if err != nil {
			t.Fatal(err)
		}
		out, err := Write(b)
		if err != nil {
			t.Fatal(err)
		}
		was, is := loose(t, in), loose(t, out)
		for key, value := range was {
			if !reflect.DeepEqual(asSet(value), asSet(is[key])) {
				t.Errorf("%s: %s was\n%v\nis\n%v", name, key, value, is[key])
			}
		}
	}
}

func loose(t *testing.T, data []byte) map[string]any {
	t.Helper()
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	var v map[string]any
	if err := d.Decode(&v); err != nil {
		t.Fatal(err)
	}
	return v
}

// asSet makes top-level lists comparable whatever their order and repetitions.
func asSet(v any) any {
	list, ok := v.([]any)
	if !ok {
		return v
	}
	set := map[string]bool{}
	for _, x := range list {
		raw, _ := json.Marshal(x)
		set[string(raw)] = true
	}
	return set
}

func TestNewerFormatIsReadAsFarAsItIsKnown(t *testing.T) {
	b, _, err := Read(golden(t, "newer.json"))
	if err != nil {
		t.Fatal(err)
	}
	if b.Newer != 7 || len(b.Readings) != 1 || len(b.Instruments) != 1 || len(b.Heads) != 1 || len(b.Skips) != 0 {
		t.Errorf("format %d; %d readings, %d instruments, %d heads, %d skips", b.Newer, len(b.Readings), len(b.Instruments), len(b.Heads), len(b.Skips))
	}
	for name, want := range map[string]int{"readings": 2, "instruments": 1, "heads": 1, "skips": 1} {
		if got := len(b.Foreign[name]); got != want {
			t.Errorf("%d of %s are carried, want %d", got, name, want)
		}
	}
	if b.Title != "Invented: of a newer format" || string(b.Unknown["photos"]) != `[{"sha":"0","size":1e3}]` {
		t.Errorf("title %q, photos %s", b.Title, b.Unknown["photos"])
	}
	if c := b.Limits["joint.angle"]; !c.Value.IsZero() || c.Unknown == nil {
		t.Errorf("a choice of limit that is not understood became %v", c)
	}
}

// What can't be carried safely is refused in a newer format too.
func TestNewerFormatIsNotADoorForBadIDs(t *testing.T) {
	for _, c := range []struct{ name, from, to string }{
		{"path in a record's id", "019ab3f1-0000-7000-8000-000000000004", "../../x"},
		{"record without braces", `{"id": "019ab3f1-0000-7000-8000-000000000003"`, `7, {"id": "019ab3f1-0000-7000-8000-000000000003"`},
		{"layout that can't be understood", `"slip": "shaft"`, `"slip": "both"`},
		{"build id", `"id": "019ab3f0-0000-7000-8000-000000000001"`, `"id": "x"`},
	} {
		in := bytes.Replace(golden(t, "newer.json"), []byte(c.from), []byte(c.to), 1)
		if _, _, err := Read(in); err == nil {
			t.Errorf("%s: accepted", c.name)
		} else if !bytes.Contains([]byte(err.Error()), []byte("update the program")) {
			t.Errorf("%s: %v does not say what to do", c.name, err)
		}
	}
}

func TestRecordsSurviveOneByOne(t *testing.T) {
	b, _, err := Read(golden(t, "full.json"))
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range b.Readings {
		again, err := DecodeReading(EncodeReading(r))
		if err != nil || !reflect.DeepEqual(again, r) || Hash(again) != Hash(r) {
			t.Errorf("%v came back as %v, %v", r, again, err)
		}
	}
	for _, s := range b.Strikes {
		again, err := DecodeStrike(EncodeStrike(s))
		if err != nil || !reflect.DeepEqual(again, s) || HashStrike(again) != HashStrike(s) {
			t.Errorf("%v came back as %v, %v", s, again, err)
		}
	}
	tagged := measure.Skip{ID: "019ab3f4-0000-7000-8000-000000000002", Point: "obstacle.gap", Ride: measure.Bump, Load: measure.Laden,
		Tag: "left tank", Back: b.Skips[0].ID}
	for _, s := range append(b.Skips, tagged) {
		again, err := DecodeSkip(EncodeSkip(s))
		if err != nil || !reflect.DeepEqual(again, s) || HashSkip(again) != HashSkip(s) {
			t.Errorf("%v came back as %v, %v", s, again, err)
		}
	}
	for _, h := range b.Heads {
		again, err := DecodeHead(EncodeHead(h))
		if err != nil || !reflect.DeepEqual(again, h) || HashHead(again) != HashHead(h) {
			t.Errorf("%v came back as %v, %v", h, again, err)
		}
	}
	if len(b.Readings) != 2 || len(b.Strikes) != 2 || len(b.Skips) != 1 || len(b.Heads) != 3 {
		t.Error("the sample lost a kind of record")
	}
}

// A hash printed by `printf … | sha256sum` over bytes typed by hand (worked apart from this code).
func TestHashIsThatOfTheCanonicalBytes(t *testing.T) {
	value, err := measure.NumberValue("2.40")
	if err != nil {
		t.Fatal(err)
	}
	r := measure.Reading{ID: "019ab3f1-0000-7000-8000-000000000001", Point: "gearbox.slope", Value: value,
		Unit: "deg", Basis: measure.Measured, Ride: measure.Droop, Load: measure.NoLoad, Setup: 1}
	const want = "sha256:6f7f015e79b1efbcaa14ddd1afea1f1c7777834177f6d9e1832be2790fc0fa84"
	if got := Hash(r); got != want {
		t.Errorf("got %s over %s, want %s", got, EncodeReading(r), want)
	}
}

func TestFormatsThatAreTaken(t *testing.T) {
	for format, newer := range map[string]int{"yokebook-build/1": 0, "yokebook-build/2": 2, "yokebook-build/9999": 9999,
		"yokebook-build/0": -1, "yokebook-build/01": -1, "yokebook-build/02": -1, "yokebook-build/-2": -1, "yokebook-build/+2": -1, "yokebook-build/1.0": -1,
		"yokebook-build/10000": -1, "yokebook-build/": -1, "yokebook-build": -1, "Yokebook-build/1": -1, "": -1} {
		in := bytes.Replace(golden(t, "hand.json"), []byte("yokebook-build/1"), []byte(format), 1)
		b, _, err := Read(in)
		switch {
		case newer < 0 && !errors.Is(err, ErrFormat):
			t.Errorf("%q: %v, want it refused as another format", format, err)
		case newer >= 0 && (err != nil || b.Newer != newer):
			t.Errorf("%q: %v, %v", format, b, err)
		}
	}
}
