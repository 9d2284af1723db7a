//go:build unix

package cli

import (
	"strings"
	"testing"

	"yokebook/sync/place/placetest"
)

func TestTwoDevicesSyncThroughOtherPeoplesServers(t *testing.T) {
	for _, s := range placetest.Servers {
		t.Run(s.Name, func(t *testing.T) {
			address, _ := s.Start(t)(t)
			a, b := newDesk(t), other(t)
			a.must("import", a.put("hand.json", byHand))
			b.must("import", b.put("more.json", strings.Replace(byHand, "0000000000a1", "0000000000a2", 1)))
			for _, d := range []*desk{a, b, a} {
				if out := d.must("sync", address); !strings.Contains(out, "1 of 1 builds synced with "+address) {
					t.Errorf("printed %q", out)
				}
			}
			a.must("export", handID, "-o", a.path("x.json"))
			b.must("export", handID, "-o", b.path("x.json"))
			if a.file("x.json") != b.file("x.json") || strings.Count(a.file("x.json"), `"point"`) != 2 {
				t.Errorf("the devices hold\n%s\n%s", a.file("x.json"), b.file("x.json"))
			}
		})
	}
}
