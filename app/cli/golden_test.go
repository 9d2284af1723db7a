package cli

import "testing"

// What is printed from the tables of the program alone is reviewed as a file.
func TestTablesAndHelpAreAsReviewed(t *testing.T) {
	for _, tt := range []struct {
		file string
		args []string
	}{
		{"points.txt", []string{"points"}},
		{"points.json", []string{"points", "--json"}},
		{"limits.txt", []string{"limits"}},
		{"limits.json", []string{"limits", "--json"}},
		{"help.txt", []string{"--help"}},
		{"help-add.txt", []string{"help", "add"}},
		{"help-check.txt", []string{"check", "--help"}},
	} {
		golden(t, tt.file, newDesk(t).must(tt.args...))
	}
}
