// Package bench holds no code, only measurements of what a person waits for and of what grows with the
// work. `make bench` prints them as one table: each figure is measured beside what it is compared with,
// in the same run and taking turns, and both are medians; a budget is a ratio. It also writes the plot
// of how times grow with builds and with readings. No test asserts a time.
//
// The benchmarks measure the same waits one by one, for profiles.
package bench
