package screen

import (
	"testing"

	"yokebook/app/words"
)

// Every page stands whole on a phone in every language that the program speaks.
func TestEveryLanguageFitsAPhone(t *testing.T) {
	for _, l := range words.Languages {
		t.Run(l.Tag, func(t *testing.T) {
			d := openDeskIn(t, l, t.TempDir(), phone, false)
			album(d, func(page string) { checkTexts(t, d, l.Tag+" "+page) })
		})
	}
}
