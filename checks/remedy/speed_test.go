package remedy_test

import (
	"context"
	"testing"

	"yokebook/checks/remedy"
	"yokebook/measure"
)

// budget is how many seconds a person may wait for what to change.
const budget = 2

// BenchmarkRemedies is the wait for all ways out of everything that is out or unsure.
func BenchmarkRemedies(b *testing.B) {
	waits(b, func(build *measure.Build) error {
		_, err := remedy.Solve(context.Background(), build, nil)
		return err
	})
}

// BenchmarkNext is the wait for what to read next.
func BenchmarkNext(b *testing.B) {
	waits(b, func(build *measure.Build) error {
		_, err := remedy.Next(context.Background(), build)
		return err
	})
}

func waits(b *testing.B, ask func(*measure.Build) error) {
	for _, name := range []string{"demo", "steep", "gearbox-slip", "links-two-piece"} {
		b.Run(name, func(b *testing.B) {
			build := invented(b, name+".json")
			for b.Loop() {
				if err := ask(build); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(b.Elapsed().Seconds()/float64(b.N)/budget, "budgets/op")
		})
	}
}
