package document

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The files testdata/golden/*.want were written by another program in another language, made for
// that purpose from the package comment alone (worked apart from this code). There is no flag that
// rewrites them: a difference is a change of the format.
func TestWrittenBytesAreThoseOfAnotherProgram(t *testing.T) {
	for _, name := range []string{"hand", "full", "newer"} {
		t.Run(name, func(t *testing.T) {
			b, seal, err := Read(golden(t, name+".json"))
			if err != nil || seal != Unsealed {
				t.Fatalf("Read: %v, seal %v", err, seal)
			}
			want := golden(t, name+".want")
			got, err := Write(b)
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(got, want) {
				t.Fatalf("Write gave\n%s\nwant\n%s", got, want)
			}
			again, seal, err := Read(want)
			if err != nil || seal != Whole {
				t.Fatalf("Read of what was written: %v, seal %v", err, seal)
			}
			if got, err = Write(again); err != nil || !bytes.Equal(got, want) {
				t.Fatalf("written again it gave %v\n%s", err, got)
			}
			sum, err := Sum(b)
			if err != nil || !strings.Contains(string(want), `"sum":"`+sum+`"`) {
				t.Fatalf("Sum gave %s, %v", sum, err)
			}
		})
	}
}

func golden(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("testdata", "golden", name))
	if err != nil {
		t.Fatal(err)
	}
	return data
}
