package document

import (
	"errors"
	"testing"
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
