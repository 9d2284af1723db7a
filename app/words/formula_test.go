package words

import (
	"testing"

	"yokebook/checks"
)

func TestEveryCheckSaysHowItReckons(t *testing.T) {
	for _, c := range checks.Table {
		if key := "formula." + c.Key; !English.Has(key) {
			t.Errorf("no sentence %s says how it reckons; %s", key, beside(t, "en", key))
		}
	}
}
