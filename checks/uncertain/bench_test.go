package uncertain

import (
	"strconv"
	"testing"
)

func BenchmarkThousandColumns(b *testing.B) {
	for b.Loop() {
		for i := range 1000 {
			Column(strconv.Itoa(i), Shape{Kind: Normal})
		}
	}
}

func BenchmarkInterval(b *testing.B) {
	x := Column("a", Shape{Kind: Normal})
	b.ReportAllocs()
	for b.Loop() {
		Interval(x, 0)
	}
}

func BenchmarkStudentGrid(b *testing.B) {
	for b.Loop() {
		for i := N / 2; i < N; i++ {
			StudentQuantile((float64(i)+0.5)/N, 9)
		}
	}
}
