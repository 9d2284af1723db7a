package remedy_test

import (
	"strings"
	"testing"

	"yokebook/checks/remedy"
)

func TestEveryKnobSaysWhereItsRangeComesFrom(t *testing.T) {
	for _, k := range remedy.Knobs {
		if strings.TrimSpace(k.Source) == "" || !(k.Usual > 0) || len(k.Serves) == 0 {
			t.Errorf("%s: source %q, usual %g, serves %v", k.Key, k.Source, k.Usual, k.Serves)
		}
	}
}
