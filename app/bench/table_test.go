package bench

import (
	"fmt"
	"os"
	"strings"
	"testing"
	"time"
)

// measuring makes TestTable measure; see the target bench.
var measuring = os.Getenv("YOKEBOOK_BENCH")

// row is one line of the table.
type row struct {
	figure   string
	measured string
	against  string
	ratio    float64
	budget   float64 // most that the ratio may be; 0: it is shown beside another figure and has none
}

func (r row) cells() []string {
	budget, holds := fmt.Sprintf("≤ %.3g", r.budget), "yes"
	switch {
	case r.budget == 0:
		budget, holds = "", ""
	case r.ratio > r.budget:
		holds = "NO"
	}
	return []string{r.figure, r.measured, r.against, fmt.Sprintf("%.2f", r.ratio), budget, holds}
}

// within is a row for a time that is held against a fixed one.
func within(figure string, measured, most time.Duration, against string) row {
	return row{figure, ms(measured), ms(most) + " " + against, float64(measured) / float64(most), 1}
}

// beside is a row for a time that has no budget of its own.
func beside(figure string, measured, next time.Duration, what string) row {
	return times(figure, measured, next, what, 0)
}

// times is a row for a time that is held against another of the same run.
func times(figure string, measured, against time.Duration, what string, budget float64) row {
	return row{figure, ms(measured), ms(against) + " " + what, float64(measured) / float64(against), budget}
}

func ms(d time.Duration) string { return fmt.Sprintf("%.3g ms", float64(d)/float64(time.Millisecond)) }

// measurements are the rows of the table, in its order.
var measurements = []struct {
	name string
	rows func(*testing.T) []row
}{
	{"keep", keepRows},
	{"recheck", recheckRows},
	{"disk", diskRows},
	{"window", windowRows},
	{"slider", sliderRows},
	{"files", filesRows},
	{"pass", passRows},
	{"readings", readingRows},
	{"sheet", sheetRows},
	{"sweep", sweepRows},
}

// TestTable prints the table. YOKEBOOK_BENCH is "all", or the names of some measurements.
func TestTable(t *testing.T) {
	if measuring == "" {
		t.Skip("measures only when asked to: make bench")
	}
	lines := [][]string{{"figure", "measured", "against", "ratio", "budget", "holds"}}
	for _, m := range measurements {
		if measuring == "all" || strings.Contains(" "+measuring+" ", " "+m.name+" ") {
			t.Run(m.name, func(t *testing.T) {
				for _, r := range m.rows(t) {
					lines = append(lines, r.cells())
				}
			})
		}
	}
	fmt.Print(aligned(lines))
}

// aligned writes lines of cells with columns below each other.
func aligned(lines [][]string) string {
	width := make([]int, len(lines[0]))
	for _, line := range lines {
		for i, cell := range line {
			width[i] = max(width[i], len([]rune(cell)))
		}
	}
	var out strings.Builder
	for _, line := range lines {
		var b strings.Builder
		for i, cell := range line {
			b.WriteString(cell + strings.Repeat(" ", width[i]-len([]rune(cell))+2))
		}
		out.WriteString(strings.TrimRight(b.String(), " ") + "\n")
	}
	return out.String()
}

func TestRowOverItsBudgetDoesNotHold(t *testing.T) {
	for _, c := range []struct {
		name  string
		r     row
		holds string
	}{
		{"a third over", times("x", 4*time.Second, 3*time.Second, "", 1.3), "NO"},
		{"just within", times("x", 13*time.Second, 10*time.Second, "", 1.3), "yes"},
		{"over a fixed time", within("x", 101*time.Millisecond, 100*time.Millisecond, ""), "NO"},
		{"within a fixed time", within("x", 99*time.Millisecond, 100*time.Millisecond, ""), "yes"},
		{"without a budget", times("x", 9*time.Second, time.Second, "", 0), ""},
	} {
		if cells := c.r.cells(); cells[5] != c.holds {
			t.Errorf("%s: holds %q, want %q", c.name, cells[5], c.holds)
		}
	}
}
