//go:build unix

package place_test

import (
	"testing"

	"yokebook/sync/place"
	"yokebook/sync/place/placetest"
)

func TestWebDAVOnOtherPeoplesServers(t *testing.T) {
	for _, s := range placetest.Servers {
		t.Run(s.Name, func(t *testing.T) {
			folder := s.Start(t)
			placetest.Run(t, func(t *testing.T) placetest.Fixture {
				address, dir := folder(t)
				return placetest.Fixture{Place: openWebDAV(t, address, place.Access{}), Dir: dir}
			})
		})
	}
}
