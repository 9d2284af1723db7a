package merge

import (
	"bytes"
	"errors"
	"maps"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"yokebook/measure"
	"yokebook/measure/document"
)

// Any order, any grouping and any repetition give the same bytes, also when what was merged is
// written and read in between.
func TestMergingHasNoOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		builds := rapid.SliceOfN(rapid.Custom(randomBuild), 1, 5).Draw(t, "builds")
		want := write(t, united(t, builds...))
		for range 3 {
			pile := rapid.Permutation(append(builds, builds[rapid.IntRange(0, len(builds)-1).Draw(t, "again")])).Draw(t, "order")
			for len(pile) > 1 {
				n := rapid.IntRange(1, len(pile)).Draw(t, "group")
				group := united(t, pile[:n]...)
				if rapid.Bool().Draw(t, "through a file") {
					group = reread(t, group)
				}
				pile = append(append([]*measure.Build(nil), pile[n:]...), group)
				if n == 1 {
					pile = append(pile[:len(pile)-1], united(t, pile...))
				}
			}
			if got := write(t, united(t, pile...)); !bytes.Equal(got, want) {
				t.Fatalf("got\n%s\nwant\n%s", got, want)
			}
		}
	})
}

func reread(t fataler, b *measure.Build) *measure.Build {
	t.Helper()
	out, _, err := document.Read(write(t, b))
	if err != nil {
		t.Fatalf("read: %v", err)
	}
	return out
}

func TestAllOrdersOfFiveFiles(t *testing.T) {
	five := rapid.SliceOfN(rapid.Custom(randomBuild), 5, 5)
	for seed := range 4 {
		builds := five.Example(seed)
		want, report, err := Builds(builds...)
		if err != nil {
			t.Fatal(err)
		}
		permute(builds, 5, func(order []*measure.Build) {
			step := order[0]
			for _, b := range order[1:] {
				step = united(t, step, b)
			}
			all, again, err := Builds(order...)
			if err != nil || !reflect.DeepEqual(again.Conflicts, report.Conflicts) {
				t.Fatalf("seed %d: conflicts %v, want %v (%v)", seed, again.Conflicts, report.Conflicts, err)
			}
			if !reflect.DeepEqual(all, want) || !reflect.DeepEqual(step, want) {
				t.Fatalf("seed %d: at once\n%s\none by one\n%s\nwant\n%s", seed, write(t, all), write(t, step), write(t, want))
			}
		})
	}
}

func permute(list []*measure.Build, n int, do func([]*measure.Build)) {
	if n == 1 {
		do(list)
		return
	}
	for i := range n {
		list[i], list[n-1] = list[n-1], list[i]
		permute(list, n-1, do)
		list[i], list[n-1] = list[n-1], list[i]
	}
}

// No record and no value of a field is lost, and none is made up.
func TestNothingIsLostAndNothingMadeUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		builds := rapid.SliceOfN(rapid.Custom(randomBuild), 1, 4).Draw(t, "builds")
		merged := united(t, builds...)
		have, given := recordsOf(merged), map[string]bool{}
		for _, b := range builds {
			maps.Copy(given, recordsOf(b))
		}
		for key := range given {
			if !have[key] {
				t.Fatalf("lost %s", key)
			}
		}
		for key := range have {
			if !given[key] {
				t.Fatalf("made up %s", key)
			}
		}
	})
}

// recordsOf lists the records of a build by list and content.
func recordsOf(b *measure.Build) map[string]bool {
	set := map[string]bool{}
	for _, r := range b.Readings {
		set["reading "+string(document.EncodeReading(r))] = true
	}
	for _, s := range b.Strikes {
		set["strike "+string(document.EncodeStrike(s))] = true
	}
	for _, s := range b.Skips {
		set["skip "+string(document.EncodeSkip(s))] = true
	}
	for _, h := range allHeads(b) {
		set["head "+string(document.EncodeHead(h))] = true
	}
	for name, raws := range b.Foreign {
		for _, raw := range raws {
			set[name+" "+string(raw)] = true
		}
	}
	return set
}

// What each build brought is what a count of contents, made here without regard to ids, says.
func TestSourcesCountEachContentOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		builds := rapid.SliceOfN(rapid.Custom(randomBuild), 1, 4).Draw(t, "builds")
		_, report, err := Builds(builds...)
		if err != nil {
			t.Fatal(err)
		}
		holders := map[string]int{}
		for _, b := range builds {
			for key := range recordsOf(b) {
				holders[key]++
			}
		}
		for i, b := range builds {
			held, only := len(recordsOf(b)), 0
			for key := range recordsOf(b) {
				if holders[key] == 1 {
					only++
				}
			}
			if got := report.Sources[i]; got.Held.Total() != held || got.Only.Total() != only {
				t.Fatalf("build %d holds %d, %d of them alone; the report says %+v", i, held, only, got)
			}
		}
	})
}

func TestInputsAreLeftAlone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := randomBuild(t), randomBuild(t)
		before := [2][]byte{write(t, a), write(t, b)}
		united(t, a, b)
		if after := [2][]byte{write(t, a), write(t, b)}; !reflect.DeepEqual(before, after) {
			t.Fatalf("the builds given were changed:\n%s\n%s", before, after)
		}
	})
}

func TestReportCountsWhatCameFromWhere(t *testing.T) {
	a, b := load(t, "two-readings-each-side", "a"), load(t, "two-readings-each-side", "b")
	_, r, err := Builds(a, b, b)
	if err != nil {
		t.Fatal(err)
	}
	heads := 7 // title, five members of the layout, one instrument: all implied
	want := []Source{
		{Held: Counts{Readings: 3, Heads: heads}, Only: Counts{Readings: 2}},
		{Held: Counts{Readings: 3, Heads: heads}},
		{Held: Counts{Readings: 3, Heads: heads}},
	}
	if !reflect.DeepEqual(r.Sources, want) {
		t.Errorf("got %+v, want %+v", r.Sources, want)
	}
	if total := r.Sources[0].Held.Total(); total != 10 {
		t.Errorf("total %d, want 10", total)
	}
}

func TestOtherBuildsAndNothingAreRefused(t *testing.T) {
	a := load(t, "two-readings-each-side", "a")
	other := *a
	other.ID = id(9, 9)
	if _, _, err := Builds(a, &other); !errors.Is(err, ErrOther) {
		t.Errorf("two builds: %v", err)
	}
	if _, _, err := Builds(); !errors.Is(err, ErrNothing) {
		t.Errorf("none: %v", err)
	}
	if _, _, err := Builds(a, a); err != nil {
		t.Errorf("the same twice: %v", err)
	}
}
