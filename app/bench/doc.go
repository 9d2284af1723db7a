// Package bench holds no code, only measurements of what a person waits for, as Go benchmarks that
// `make bench` runs: from one pressed key to the findings on the demo build, and all findings from
// nothing.
//
// Each sample is one whole wait. Reported are the median and the 99th percentile of the samples of
// this run, in milliseconds and as a share of one display frame (16.7 ms at 60 per second): below
// 1 the screen answers within the frame of the key. No test asserts a time.
package bench
