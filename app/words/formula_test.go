package words

import (
	"testing"

	"yokebook/checks"
)

func TestEveryCheckSaysHowItReckons(t *testing.T) {
	for _, c := range checks.Table {
		if !English.Has("formula." + c.Key) {
			t.Errorf("%s: no sentence says how it reckons", c.Key)
		}
	}
}
