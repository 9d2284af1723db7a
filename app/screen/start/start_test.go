package start

import (
	"testing"

	"yokebook/measure"
)

func TestABuildIsStartedChoiceByChoice(t *testing.T) {
	m := New()
	m.Name("   ")
	if _, asked := m.Step(); asked {
		t.Fatal("went on without a title")
	}
	m.Name(" Invented estate ")
	if m.Title() != "Invented estate" {
		t.Errorf("title %q", m.Title())
	}
	complete := false
	for _, choice := range []string{"2", "gearbox", "links", "double", "single"} {
		if complete {
			t.Fatalf("complete before %s", choice)
		}
		complete = m.Choose(choice)
	}
	want := measure.Layout{Shafts: 2, Slip: "gearbox", Axle: "links", FrontJoint: "double", RearJoint: "single"}
	if got := m.Layout(); !complete || got.Shafts != want.Shafts || got.Slip != want.Slip || got.Axle != want.Axle ||
		got.FrontJoint != want.FrontJoint || got.RearJoint != want.RearJoint {
		t.Errorf("layout %+v, complete %v", got, complete)
	}
	if err := m.Layout().Validate(); err != nil {
		t.Error(err)
	}
}

func TestEveryChoiceMakesAValidLayout(t *testing.T) {
	for i, step := range Steps {
		for _, choice := range step.Choices {
			m := New()
			m.Name("x")
			for _, before := range Steps[:i] {
				m.Choose(before.Choices[0])
			}
			m.Choose(choice)
			if err := m.Layout().Validate(); err != nil {
				t.Errorf("%s %s: %v", step.Member, choice, err)
			}
		}
	}
}

func TestBack(t *testing.T) {
	m := New()
	m.Name("x")
	m.Choose("2")
	for i, want := range []bool{true, true, false} {
		if got := m.Back(); got != want {
			t.Errorf("step %d back: %v", i+1, got)
		}
	}
	if m.Title() != "x" {
		t.Errorf("title %q", m.Title())
	}
}
