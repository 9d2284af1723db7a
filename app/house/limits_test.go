package house

import (
	"fmt"
	"go/ast"
	"go/token"
	"testing"
)

// plain are numbers that limit nothing by themselves: nothing, all, a pair, a half.
var plain = setOf("0 1 2 0.0 1.0 2.0 0.5")

// reviewed are the other numbers in which checks are written: file, a space, the number as written, and
// why it is no limit. What a person may be told to keep to stands in checks/limits, with its source.
var reviewed = map[string]string{
	"checks/bind_drawn.go 3":                    "readings of one part in a row of arguments",
	"checks/bind_drawn.go 25":                   "mm by which the outermost height read may miss the end of the travel: common practice, no source",
	"checks/bind_drawn.go 180":                  "degrees in π",
	"checks/bind_drawn.go 1000":                 "mm in m",
	"checks/bind_identity.go 3":                 "fewer teeth than any spline has",
	"checks/bind_match.go 1.1":                  "above every chance, which ends at 1",
	"checks/bind_match.go 3":                    "codes of strap and U-bolt in the table of points",
	"checks/bind_motion.go 180":                 "degrees in π",
	"checks/bind_motion.go 1000":                "mm in m",
	"checks/bind_path.go 10":                    "puts a state after all six",
	"checks/bind_pilot.go 30":                   "ω = π·n/30",
	"checks/bind_sling.go 3":                    "readings that the pull needs",
	"checks/bind_swing.go 3":                    "numbers of one part in a row of arguments",
	"checks/bind_torque.go 3":                   "the two exponents of a joint's life, 3 and 10/3: see joint.Life",
	"checks/bind_torque.go 1000":                "mm in m",
	"checks/derive.go 3":                        "places in the list of readings of a shaft",
	"checks/derive.go 4":                        "the same",
	"checks/derive.go 5":                        "the same",
	"checks/doubt.go 4":                         "repeats from which Student's t is used: JCGM 100, 4.2",
	"checks/doubt.go 12":                        "variance of a rectangle, width²/12",
	"checks/doubt.go 180":                       "degrees in π",
	"checks/draws.go 512":                       "draws that are worth a worker; no draw rests on another",
	"checks/flange/circle.go 4":                 "holes of the least rectangle",
	"checks/joint/chain.go 90":                  "a phase counts modulo 180°",
	"checks/joint/life.go 1e-16":                "rounding, which ends a search",
	"checks/joint/speed.go 4":                   "which of two forms of a formula rounds less",
	"checks/judge.go 1e-4":                      "a share too small to be told",
	"checks/judge.go 1e-9":                      "rounding, so that a tie meets a limit",
	"checks/line_values.go 3":                   "numbers of one part in a row of arguments",
	"checks/mass/mounts.go 1e-9":                "rounding of an area: the mounts stand in one line",
	"checks/mass/sling.go 90":                   "a leg cannot stand steeper than upright",
	"checks/obstacle.go 3":                      "code of beside in the table of points",
	"checks/obstacle_turn.go 180":               "degrees in π",
	"checks/quantity.go 1e150":                  "keeps a square within the numbers",
	"checks/remedy/costs_line.go 4":             "fewer teeth than can be turned by one",
	"checks/remedy/knobs_ends.go 3":             "codes of strap and U-bolt in the table of points",
	"checks/remedy/knobs_line.go 4":             "fewer teeth than can be turned by one",
	"checks/remedy/knobs_line.go 50":            "mm between mounts under which raising one is no tilt: common practice, no source",
	"checks/remedy/knobs_shaft.go 1e-6":         "rounding of inches",
	"checks/remedy/pair.go 0.002":               "the same, for a way that ranks before the one at hand",
	"checks/remedy/pair.go 0.01":                "by which a glance may miss the margin: what it lets through is judged by all draws",
	"checks/retain/thread.go 16":                "mm at which grade 8.8 changes its strength: ISO 898-1",
	"checks/retain/thread.go 0.4":               "of the diameter, a core thinner than any thread has: bad input",
	"checks/shaft/tyre.go 60":                   "letters, more than any code on a sidewall has",
	"checks/sight.go 1e-9":                      "rounding of a height",
	"checks/slip/extremes.go 1000":              "steps of a search",
	"checks/spline/caliper.go 3":                "fewer teeth than any spline has",
	"checks/spline/din5480.go 3":                "the same",
	"checks/spline/identify.go 1e-9":            "rounding of a shift",
	"checks/spline/identify.go 3":               "the same",
	"checks/spline/pins.go 3":                   "the same",
	"checks/spline/pins.go 80":                  "degrees beyond which a flank is none: bad input",
	"checks/spline/strength.go 3":               "fewer teeth than any spline has",
	"checks/spline/strength.go 80":              "degrees beyond which a flank is none: bad input",
	"checks/sweep.go 1000":                      "rows of a table that nobody reads to its end",
	"checks/sweep.go 1e-9":                      "rounding of a height",
	"checks/sweep_models.go 3":                  "numbers of one row",
	"checks/sweep_models.go 1.6448536269514722": "the normal quantile of 95 %",
	"checks/travel/fourbar.go 1000":             "steps of a search",
	"checks/tubes.go 1000":                      "mm in m",
	"checks/zero.go 3":                          "variance of a rectangle, halfwidth²/3",
	"checks/zero.go 4":                          "variance of a mean of two",
	"checks/zero.go 12":                         "variance of a rectangle, width²/12",
}

// limitsAreInTheTable: a number that decides between clear and out is a row with a source, not a
// number in code. Places in lists and lengths of them are none; formulas may hold factors, and
// checks/uncertain the coefficients of its series.
func limitsAreInTheTable(s source) (faults []string) {
	formulas := s.under("checks") && s.dir() != "checks"
	if s.isTest() || !s.under("checks") || s.dir() == "checks/limits" || s.dir() == "checks/uncertain" {
		return nil
	}
	counts := map[ast.Node]bool{} // literals that say how many or at which place
	ast.Inspect(s.file, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.IndexExpr:
			ast.Inspect(n.Index, func(in ast.Node) bool { counts[in] = true; return true })
		case *ast.ArrayType, *ast.SliceExpr:
			return false
		case *ast.CallExpr:
			if name := calledName(n); name == "combine" || name == "onAll" || name == "make" {
				for _, arg := range n.Args {
					counts[arg] = true
				}
			}
		case *ast.BinaryExpr:
			if formulas && (n.Op == token.LSS || n.Op == token.GTR || n.Op == token.LEQ || n.Op == token.GEQ) {
				for _, side := range []ast.Expr{n.X, n.Y} {
					faults = append(faults, s.unreviewed(side)...)
				}
			}
		case *ast.BasicLit:
			if !formulas && !counts[n] {
				faults = append(faults, s.unreviewed(n)...)
			}
		}
		return true
	})
	return faults
}

func (s source) unreviewed(e ast.Expr) []string {
	switch sign := e.(type) {
	case *ast.UnaryExpr:
		return s.unreviewed(sign.X)
	case *ast.ParenExpr:
		return s.unreviewed(sign.X)
	case *ast.BinaryExpr: // 3*width is a limit as 3 is
		return append(s.unreviewed(sign.X), s.unreviewed(sign.Y)...)
	}
	lit, ok := e.(*ast.BasicLit)
	if !ok || lit.Kind != token.INT && lit.Kind != token.FLOAT || plain[lit.Value] || reviewed[s.path+" "+lit.Value] != "" {
		return nil
	}
	return []string{fmt.Sprintf("%s: %s in code; a limit is a row of checks/limits with its source, any other number a row of reviewed in app/house", s.at(lit), lit.Value)}
}

// A row that no file needs any more would let a new number of the same look pass.
func TestEveryReviewedNumberIsThere(t *testing.T) {
	there := map[string]bool{}
	for _, s := range tree(t) {
		ast.Inspect(s.file, func(n ast.Node) bool {
			if lit, ok := n.(*ast.BasicLit); ok {
				there[s.path+" "+lit.Value] = true
			}
			return true
		})
	}
	for row := range reviewed {
		if !there[row] {
			t.Errorf("%s stands nowhere; take its row out of reviewed", row)
		}
	}
}

func calledName(c *ast.CallExpr) string {
	switch f := c.Fun.(type) {
	case *ast.Ident:
		return f.Name
	case *ast.SelectorExpr:
		return f.Sel.Name
	}
	return ""
}
