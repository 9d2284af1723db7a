package sheet

import (
	"encoding/hex"
	"strings"

	"yokebook/measure"
)

// alphabet has no letter that is heard or read as another or as a digit: digits and the letters but
// for I, L, O and U. Source: D. Crockford, Base 32 (from memory).
const alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// CheckCode is the code by which two people on the telephone make sure that they look at the same
// data: the first 40 bits of a file's sum as eight characters, in two groups. "" for what is no sum.
func CheckCode(sum string) string {
	_, text, _ := strings.Cut(sum, ":")
	raw, err := hex.DecodeString(text)
	if err != nil || len(raw) < 5 {
		return ""
	}
	bits := uint64(0)
	for _, b := range raw[:5] {
		bits = bits<<8 | uint64(b)
	}
	var out strings.Builder
	for i := 7; i >= 0; i-- {
		if i == 3 {
			out.WriteByte('-')
		}
		out.WriteByte(alphabet[bits>>(5*i)&31])
	}
	return out.String()
}

// CodeText is what the QR code of a sheet says: the build and its check code.
func CodeText(build measure.ID, code string) string { return "yokebook " + string(build) + " " + code }
