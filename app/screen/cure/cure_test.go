package cure_test

import (
	"context"
	"errors"
	"os"
	"testing"

	"yokebook/app/screen/cure"
	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
	"yokebook/measure/document"
)

// steep is an invented build whose shaft turns too unevenly.
func steep(t *testing.T) (*measure.Build, []checks.Finding) {
	t.Helper()
	data, err := os.ReadFile("../../../testdata/builds/steep.json")
	if err != nil {
		t.Fatal(err)
	}
	b, _, err := document.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	return b, checks.Run(b, nil).Findings
}

func asked(t *testing.T, check string) *cure.Model {
	t.Helper()
	b, findings := steep(t)
	for _, f := range findings {
		if f.Check == check && remedy.Asks(f) {
			return cure.New(b, findings, f)
		}
	}
	t.Fatalf("%s asks for nothing", check)
	return nil
}

// From the search to a way, to what would change, and back again by the way one came.
func TestThereAndBack(t *testing.T) {
	m := asked(t, "slip.engaged")
	heard := 0
	found, err := m.Solve(context.Background(), func(done, of int) { heard++ })
	if err != nil || heard == 0 {
		t.Fatalf("%v, heard %d times", err, heard)
	}
	if m.Stage() != cure.Looking || m.Ways() != nil {
		t.Error("the search changed what is shown")
	}
	m.Found(found)
	ways := m.Ways()
	if m.Stage() != cure.List || len(ways) == 0 {
		t.Fatalf("stage %d, %d ways", m.Stage(), len(ways))
	}
	m.Open(len(ways))
	if m.Stage() != cure.List {
		t.Error("a way that is not there was opened")
	}
	m.Open(0)
	m.Try()
	effects, err := m.Judge(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	m.Judged(effects)
	if m.Stage() != cure.Tried || len(effects) == 0 || effects[0].After.Check != "slip.engaged" || effects[0].After.Verdict != checks.Clear {
		t.Errorf("stage %d, effects %+v", m.Stage(), effects)
	}
	for _, e := range effects {
		if e.Before.Verdict == e.After.Verdict {
			t.Errorf("%s does not change", e.After.Key())
		}
	}
	for _, want := range []cure.Stage{cure.OneWay, cure.List} {
		if !m.Back() || m.Stage() != want {
			t.Errorf("back leads to %d, want %d", m.Stage(), want)
		}
	}
	if m.Back() {
		t.Error("back from the list stays in what to change")
	}
}

// What is tried changes nothing: the build and its findings are as they were.
func TestTryingChangesNothing(t *testing.T) {
	b, findings := steep(t)
	before := len(b.Readings)
	m := asked(t, "slip.travel")
	found, err := m.Solve(context.Background(), nil)
	if err != nil {
		t.Fatal(err)
	}
	m.Found(found)
	m.Open(0)
	if _, err := m.Judge(context.Background()); err != nil {
		t.Fatal(err)
	}
	again := checks.Run(b, nil).Findings
	for i, f := range findings {
		if again[i].Verdict != f.Verdict || len(b.Readings) != before {
			t.Fatalf("%s is %s now, was %s", f.Key(), again[i].Verdict, f.Verdict)
		}
	}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if _, err := m.Judge(ctx); !errors.Is(err, context.Canceled) {
		t.Errorf("ended by its context: %v", err)
	}
}

// Where nothing is found the pages still have something to say.
func TestNothingFound(t *testing.T) {
	m := asked(t, "slip.travel")
	m.Found(nil)
	if m.Stage() != cure.List || len(m.Ways()) != 0 || len(m.NotAlone()) != 0 {
		t.Errorf("stage %d, %d ways", m.Stage(), len(m.Ways()))
	}
	if m.Open(0); m.Stage() != cure.List {
		t.Error("a way was opened where there is none")
	}
}
