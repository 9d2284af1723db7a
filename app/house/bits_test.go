package house

import (
	"fmt"
	"go/ast"
	"strconv"
	"strings"
)

// sameBits are the names of package math that gave the same bits on amd64 and on arm64 (built with
// -gcflags=all=-d=fmahash=qn), each over three spans of 200,000 arguments under emulation, or that
// only pick, split or name bits. Exp, Pow, Erf, Log, Hypot, Cbrt, Gamma, the hyperbolic functions
// and FMA are left out: Exp is assembler on arm64 and differed there, others rest on it.
var sameBits = map[string]map[string]bool{
	"math": setOf(`
		Sin Cos Sincos Tan Asin Acos Atan Atan2 Sqrt
		Abs Max Min Floor Ceil Trunc Round RoundToEven Mod Modf Frexp Ldexp Copysign Signbit
		Inf IsInf IsNaN NaN Float64bits Float64frombits Nextafter
		Pi E Sqrt2 Ln2 Ln10 MaxFloat64 SmallestNonzeroFloat64
		MaxInt MinInt MaxInt32 MinInt32 MaxInt64 MinInt64 MaxUint32 MaxUint64`),
	// Only streams of a given seed: what draws from them must be written out by us.
	"math/rand/v2": setOf(`ChaCha8 NewChaCha8 PCG NewPCG`),
}

func setOf(names string) map[string]bool {
	set := map[string]bool{}
	for _, n := range strings.Fields(names) {
		set[n] = true
	}
	return set
}

// sameBitsEverywhere: what findings are computed with gives the same bits on every device.
func sameBitsEverywhere(s source) (faults []string) {
	if s.isTest() || s.top() != "checks" && s.top() != "measure" || s.under("measure/store") {
		return nil
	}
	imported := map[string]string{} // name in this file → import path
	for _, spec := range s.file.Imports {
		p, err := strconv.Unquote(spec.Path.Value)
		switch {
		case err != nil:
		case sameBits[p] != nil && spec.Name != nil && spec.Name.Name == ".":
			faults = append(faults, fmt.Sprintf("%s: import %s by its name, so that this rule can see what is called", s.at(spec), p))
		case sameBits[p] != nil && spec.Name != nil:
			imported[spec.Name.Name] = p
		case p == "math/rand/v2":
			imported["rand"] = p
		case sameBits[p] != nil:
			imported[p] = p
		case p == "math/cmplx", p == "math/rand", strings.HasPrefix(p, "gonum.org/"):
			faults = append(faults, fmt.Sprintf("%s: %s rests on functions that differ between processors", s.at(spec), p))
		}
	}
	ast.Inspect(s.file, func(n ast.Node) bool {
		sel, ok := n.(*ast.SelectorExpr)
		if !ok {
			return true
		}
		x, ok := sel.X.(*ast.Ident)
		if !ok {
			return true
		}
		if p := imported[x.Name]; p != "" && !sameBits[p][sel.Sel.Name] {
			faults = append(faults, fmt.Sprintf("%s: %s.%s may differ between processors or days", s.at(sel), p, sel.Sel.Name))
		}
		return true
	})
	return faults
}
