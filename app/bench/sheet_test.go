package bench

import (
	"testing"
	"time"

	"yokebook/app/sheet"
	"yokebook/app/words"
	"yokebook/checks"
)

// sheetRows measure from a build and its findings to the sheet as a file to print.
func sheetRows(t *testing.T) []row {
	build := full(t)
	found := checks.Run(build, nil)
	var waits samples
	for range 20 {
		start := time.Now()
		s, err := sheet.Make(build, found, sheet.Options{Language: words.English})
		if err != nil {
			t.Fatal(err)
		}
		if pdf, err := s.PDF(); err != nil || len(pdf) == 0 {
			t.Fatalf("%d bytes, %v", len(pdf), err)
		}
		waits = append(waits, time.Since(start))
	}
	return []row{within("sheet of a full build", waits.at(0.5), 150*time.Millisecond, "")}
}
