package screen

import (
	"fmt"
	"os"
	"slices"
	"testing"
	"time"
)

// TestPaint measures how long the page after a kept reading takes to be laid out and painted, in
// software, for the table of `make bench`: on a display with a graphics processor it is less.
func TestPaint(t *testing.T) {
	if os.Getenv("YOKEBOOK_BENCH") == "" {
		t.Skip("measures only when asked to: make bench")
	}
	d := openDesk(t, phone, false).newBuild("Invented estate").read("5200", "")
	var all []time.Duration
	for range 21 {
		start := time.Now()
		d.s.show()
		d.w.Canvas().Capture()
		all = append(all, time.Since(start))
	}
	slices.Sort(all)
	fmt.Printf("painted in %v\n", all[len(all)/2])
}
