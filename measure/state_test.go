package measure

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// statesInOrder are all states a finding can speak of, as findings are sorted.
var statesInOrder = []string{
	"droop/none", "droop/kerb", "droop/laden",
	"ride/none", "ride/none/drive", "ride/kerb", "ride/kerb/drive", "ride/kerb/coast",
	"ride/laden", "ride/laden/drive", "ride/laden/coast",
	"bump/none", "bump/kerb", "bump/laden", "bench", "",
}

func TestStatesAreSortedDroopRideBumpBenchBuild(t *testing.T) {
	for i, a := range statesInOrder {
		for j, b := range statesInOrder {
			x, errX := ParseState(a)
			y, errY := ParseState(b)
			if errX != nil || errY != nil {
				t.Fatal(errX, errY)
			}
			if x.Less(y) != (i < j) {
				t.Errorf("%q before %q: %v", a, b, x.Less(y))
			}
		}
	}
}

func TestStatesAreWrittenAndReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.SampledFrom(statesInOrder).Draw(t, "state")
		s, err := ParseState(text)
		if err != nil || s.String() != text {
			t.Fatalf("%q is read as %q, %v", text, s, err)
		}
		if b := s.Base(); b.Case != "" || b.Ride != s.Ride || b.Load != s.Load {
			t.Fatalf("without its load case %q is %q", s, b)
		}
	})
}

func TestBadStatesAreRefused(t *testing.T) {
	for _, tt := range []struct{ bad, says, twin string }{
		{"ride", "load is missing; use none, kerb or laden", "ride/kerb"},
		{"ride/full", `load "full" is not known`, "ride/laden"},
		{"air/none", `ride "air" is not known`, "droop/none"},
		{"/kerb", "ride is missing", "ride/kerb"},
		{"bench/kerb", "a bench reading has no load", "bench"},
		{"ride/kerb/fast", "use ride/load such as ride/kerb", "ride/kerb/drive"},
		{"ride/kerb/drive/x", "use ride/load such as ride/kerb", "ride/kerb/coast"},
		{"Ride/kerb", `ride "Ride" is not known`, "ride/kerb"},
	} {
		_, err := ParseState(tt.bad)
		refused(t, tt.bad, err, tt.says)
		if _, err := ParseState(tt.twin); err != nil {
			t.Errorf("the near twin %q of %q: %v", tt.twin, tt.bad, err)
		}
	}
}

// Hanging wheels carry nothing, standing wheels carry something; a shaft is only judged as running
// where neither is contradicted.
func TestWhatGoesTogether(t *testing.T) {
	for _, tt := range []struct {
		state                  string
		contradiction, running bool
	}{
		{"droop/none", false, false},
		{"droop/kerb", true, false},
		{"droop/laden", true, false},
		{"ride/none", true, false},
		{"ride/kerb", false, true},
		{"ride/laden", false, true},
		{"ride/kerb/drive", false, true},
		{"ride/laden/coast", false, true},
		{"bump/none", true, false},
		{"bump/kerb", false, false},
		{"bump/laden", false, false},
		{"bench", false, false},
		{"", false, false},
	} {
		s, err := ParseState(tt.state)
		if err != nil {
			t.Fatal(err)
		}
		if s.Contradiction() != tt.contradiction || s.Running() != tt.running {
			t.Errorf("%q: contradiction %v, running %v; want %v, %v", tt.state, s.Contradiction(), s.Running(), tt.contradiction, tt.running)
		}
	}
}

// A person is sent from the bench to the hanging vehicle, then down on its wheels: every state of
// the route is one that can be true, and each has its caution.
func TestStatesOfTheRoute(t *testing.T) {
	want := []string{"bench", "droop/none", "ride/kerb", "ride/laden", "bump/laden"}
	var got []string
	for _, s := range States {
		got = append(got, s.String())
		if s.Contradiction() {
			t.Errorf("%s contradicts itself", s)
		}
		if (s.Caution() == "") != (s == OffBench) {
			t.Errorf("%s has the caution %q", s, s.Caution())
		}
	}
	if !slices.Equal(got, want) {
		t.Errorf("a person is asked for %v, want %v", got, want)
	}
	if Hanging.Caution() != CautionHanging || OnBump.Caution() != CautionBump || RideKerb.Caution() != CautionUnder {
		t.Error("a state carries the caution of another")
	}
}
