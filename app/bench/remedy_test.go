package bench

import (
	"context"
	"testing"

	"os"
	"yokebook/checks/remedy"
	"yokebook/measure"
	"yokebook/measure/document"
)

func builtFrom(tb testing.TB, name string) *measure.Build {
	tb.Helper()
	data, err := os.ReadFile("../../testdata/builds/" + name)
	if err != nil {
		tb.Fatal(err)
	}
	b, _, err := document.Read(data)
	if err != nil {
		tb.Fatal(err)
	}
	return b
}

// BenchmarkRemedies measures what a person waits for who asks what to change.
func BenchmarkRemedies(b *testing.B) {
	for _, name := range []string{"demo.json", "links-two-piece.json", "gearbox-slip.json", "steep.json"} {
		build := builtFrom(b, name)
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if _, err := remedy.Solve(context.Background(), build, nil); err != nil {
					b.Fatal(err)
				}
			}
		})
		b.Run("next "+name, func(b *testing.B) {
			for b.Loop() {
				if _, err := remedy.Next(context.Background(), build); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
