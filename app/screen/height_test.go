package screen

import (
	"testing"

	"yokebook/app/words"
	"yokebook/measure"
)

// The page of the height says how that is read, not how the stop is that it was opened from.
func TestTheHeightSaysHowItIsRead(t *testing.T) {
	d := pane{desktop, "light", words.English}.desk(t).newBuild("Height")
	hub, _ := measure.PointOf("hub.height")
	d.tap("stand.height").sees("Height", words.English.Place(hub))
}
