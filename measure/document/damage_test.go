package document

import (
	"errors"
	"fmt"
	"os"
	"testing"

	"yokebook/measure"
)

func TestCutAtEveryByteIsRefused(t *testing.T) {
	for _, name := range []string{"hand.json", "full.json", "newer.json", "full.want"} {
		whole := golden(t, name)
		last := len(whole)
		for whole[last-1] == '\n' {
			last-- // what follows the last bracket may be missing
		}
		for n := range last {
			if _, _, err := Read(whole[:n]); !errors.Is(err, ErrCut) {
				t.Fatalf("%s cut after %d bytes: %v, want it said to be cut off", name, n, err)
			}
		}
		if _, _, err := Read(whole[:last]); err != nil {
			t.Fatalf("%s whole: %v", name, err)
		}
	}
}

// The sum has to find every damage of one bit, that of its own name too.
func TestEveryFlippedBitOfASealedFileIsRefused(t *testing.T) {
	for _, name := range []string{"full.want"} {
		whole := golden(t, name)
		if _, seal, err := Read(whole); err != nil || seal != Whole {
			t.Fatalf("%s: %v", name, err)
		}
		for bit := range len(whole) * 8 {
			bad := append([]byte(nil), whole...)
			bad[bit/8] ^= 1 << (bit % 8)
			if _, _, err := Read(bad); err == nil {
				t.Errorf("%s: bit %d of byte %d (%q) flipped was accepted", name, bit%8, bit/8, whole[bit/8])
			}
		}
	}
}

// A build of 40 readings is cut at every byte and has every bit flipped; outside a soak some of them.
// Nothing is taken.
func TestDamageToABuildOfFortyReadingsIsRefused(t *testing.T) {
	b := &measure.Build{ID: "019ab3f0-0000-7000-8000-000000000000", Title: "invented: forty", Layout: measure.NewLayout()}
	value, err := measure.NumberValue("2.4")
	if err != nil {
		t.Fatal(err)
	}
	for n := range 40 {
		b.Readings = append(b.Readings, measure.Reading{ID: measure.ID(fmt.Sprintf("019ab3f1-0000-7000-8000-%012x", n)),
			Point: "gearbox.slope", Value: value, Unit: "deg", Basis: measure.Measured, Ride: measure.Droop, Load: measure.NoLoad, Setup: 1})
	}
	whole, err := Write(b)
	if err != nil {
		t.Fatal(err)
	}
	step, cuts, flips, taken := 61, 0, 0, 0
	if os.Getenv("YOKEBOOK_SOAK") != "" {
		step = 1
	}
	for n := 0; n < len(whole)-1; n += step { // without the newline at its end it is whole
		if _, _, err := Read(whole[:n]); err == nil {
			taken++
			t.Errorf("cut after %d bytes it was taken", n)
		}
		cuts++
	}
	for bit := 0; bit < len(whole)*8; bit += step {
		whole[bit/8] ^= 1 << (bit % 8)
		if _, _, err := Read(whole); err == nil {
			taken++
			t.Errorf("with bit %d of byte %d flipped it was taken", bit%8, bit/8)
		}
		whole[bit/8] ^= 1 << (bit % 8)
		flips++
	}
	if step == 1 {
		fmt.Printf("build file of 40 readings: bits flipped %d, cuts %d: silent acceptances %d\n", flips, cuts, taken)
	}
}

func TestKindsOfRefusal(t *testing.T) {
	for _, c := range []struct {
		file string
		kind error
	}{
		{"cut-off", ErrCut}, {"empty", ErrCut}, {"wrong-sum", ErrSum}, {"damaged-sum-name", ErrSum},
		{"wrong-format", ErrFormat}, {"format-missing", ErrFormat}, {"null", ErrFormat}, {"other-json", ErrFormat},
		{"deep-nesting", ErrLarge},
	} {
		if _, _, err := Read(file(t, c.file+".json")); !errors.Is(err, c.kind) {
			t.Errorf("%s: %v is not %v", c.file, err, c.kind)
		}
	}
	if _, _, err := Read(file(t, "unknown-point.json")); errors.Is(err, ErrCut) || errors.Is(err, ErrSum) || errors.Is(err, ErrFormat) {
		t.Errorf("an unknown point is said to be %v", err)
	}
}
