package part

import (
	"image/color"
	"testing"

	"rsc.io/qr"
)

// The picture has the modules of the code, and a light border of four all round.
func TestCodeHasItsModulesAndBorder(t *testing.T) {
	const text = "https://192.168.1.20:8417/#ABCDE-FGHJK.0123456789012345678901234567890123456789012"
	code, err := qr.Encode(text, qr.L)
	if err != nil {
		t.Fatal(err)
	}
	img := NewCode(text).Picture()
	if got, want := img.Bounds().Dx(), code.Size+8; got != want {
		t.Fatalf("%d modules wide, want %d", got, want)
	}
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			dark := img.At(x, y).(color.Gray).Y == 0
			inside := x >= 4 && y >= 4 && x < code.Size+4 && y < code.Size+4
			if dark != (inside && code.Black(x-4, y-4)) {
				t.Fatalf("module %d, %d is wrong", x, y)
			}
		}
	}
	if NewCode(string(make([]byte, 9000))).Picture() != nil {
		t.Error("a text that is too long was drawn")
	}
}
