package cli

import (
	"fmt"
	"os"
	"strings"

	"rsc.io/qr"
)

// quiet is the light border that a reader of such codes needs (ISO/IEC 18004: four modules).
const quiet = 4

// printQR prints text as a QR code where the output is a screen; text that does not fit is left out,
// since it stands above in letters.
func (p Program) printQR(text string) {
	if !p.Screen {
		return
	}
	code, err := qr.Encode(text, qr.L)
	if err != nil {
		return
	}
	fmt.Fprint(p.Out, drawQR(code.Size, code.Black))
}

// drawQR draws two rows of modules in one line of characters, black on white whatever the colours of
// the screen.
func drawQR(size int, black func(x, y int) bool) string {
	var out strings.Builder
	for y := -quiet; y < size+quiet; y += 2 {
		out.WriteString("\x1b[30;47m")
		for x := -quiet; x < size+quiet; x++ {
			out.WriteString(halves[[2]bool{black(x, y), black(x, y+1)}])
		}
		out.WriteString("\x1b[0m\n")
	}
	return out.String()
}

// halves are the characters for upper and lower half.
var halves = map[[2]bool]string{{false, false}: " ", {true, false}: "▀", {false, true}: "▄", {true, true}: "█"}

// isScreen reports an output that a person looks at.
func isScreen(out any) bool {
	f, ok := out.(*os.File)
	if !ok {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}
