package sync

import (
	"os"
	"runtime"
	"strconv"
	gosync "sync"
	"testing"
)

// soaking makes the test under fire long; see the target soak.
var soaking = os.Getenv("YOKEBOOK_SOAK") != ""

// Whatever happens to devices, clocks, files and the way between them: once all is quiet, two rounds
// make them alike, no acknowledged reading is missing, and nothing was called synced that was not.
// YOKEBOOK_SEED runs one seed again.
func TestMergeUnderFire(t *testing.T) {
	first, count := uint64(1), uint64(200)
	if soaking {
		count = 10_000
	}
	if text := os.Getenv("YOKEBOOK_SEED"); text != "" {
		n, err := strconv.ParseUint(text, 10, 64)
		if err != nil {
			t.Fatalf("YOKEBOOK_SEED: %v", err)
		}
		first, count = n, 1
	}
	seeds := make(chan uint64)
	var wg gosync.WaitGroup
	var mu gosync.Mutex
	var sum fireCount
	failed := 0
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			for seed := range seeds {
				f := newFire(seed)
				err := f.run()
				mu.Lock()
				sum.add(f.did)
				if err != nil {
					if failed++; failed <= 5 {
						t.Errorf("seed %d, %d devices, one place for all %v: %v", seed, len(f.actors), f.shared, err)
					}
				}
				mu.Unlock()
			}
		})
	}
	for seed := first; seed < first+count; seed++ {
		seeds <- seed
	}
	close(seeds)
	wg.Wait()
	t.Logf("seeds %d to %d: %d schedules, %d passes, %d crashes, %d deliveries, %d readings acknowledged: %d schedules failed",
		first, first+count-1, sum.schedules, sum.passes, sum.crashes, sum.deliveries, sum.kept, failed)
	if count > 1 && (sum.crashes < int(count) || sum.passes < 5*int(count) || sum.kept < 5*int(count)) {
		t.Error("too little happened to prove anything")
	}
}
