// Package house holds no code, only the rules that the source tree keeps, as tests: who may import
// whom, what stands at the top level, which functions of package math give the same bits on every
// processor, how long a file may be.
//
// Each rule is one row of the table in rules_test.go with a fault that it must find and a near twin
// that it must let pass, so that a rule that has gone blind fails before the tree does.
package house
