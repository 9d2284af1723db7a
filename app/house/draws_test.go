package house

import (
	"go/ast"
	"go/token"
)

// formulasWriteToTheirOwn: draws are worked out beside each other, so that a formula handed to combine
// may write to nothing that stands outside it. What it needs to keep it makes itself, under combineOwn.
func formulasWriteToTheirOwn(s source) (faults []string) {
	if s.isTest() || s.dir() != "checks" {
		return nil
	}
	ast.Inspect(s.file, func(n ast.Node) bool {
		call, ok := n.(*ast.CallExpr)
		if !ok {
			return true
		}
		if name := calledName(call); name != "combine" && name != "combineOwn" && name != "of" {
			return true
		}
		for _, arg := range call.Args {
			if f, ok := arg.(*ast.FuncLit); ok {
				faults = append(faults, s.writesOutside(f)...)
			}
		}
		return true
	})
	return faults
}

// writesOutside are the places where a function writes to what it does not declare.
func (s source) writesOutside(f *ast.FuncLit) (faults []string) {
	own := map[string]bool{"_": true}
	ast.Inspect(f, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.Field:
			for _, name := range n.Names {
				own[name.Name] = true
			}
		case *ast.ValueSpec:
			for _, name := range n.Names {
				own[name.Name] = true
			}
		case *ast.AssignStmt:
			if n.Tok == token.DEFINE {
				declare(own, n.Lhs...)
			}
		case *ast.RangeStmt:
			if n.Tok == token.DEFINE {
				declare(own, n.Key, n.Value)
			}
		}
		return true
	})
	ast.Inspect(f, func(n ast.Node) bool {
		var written []ast.Expr
		switch n := n.(type) {
		case *ast.AssignStmt:
			if n.Tok != token.DEFINE {
				written = n.Lhs
			}
		case *ast.IncDecStmt:
			written = []ast.Expr{n.X}
		}
		for _, e := range written {
			if name := rootOf(e); !own[name] {
				faults = append(faults, s.at(e)+": a formula writes to "+name+", which others share; make it in combineOwn")
			}
		}
		return true
	})
	return faults
}

func declare(own map[string]bool, list ...ast.Expr) {
	for _, e := range list {
		if id, ok := e.(*ast.Ident); ok {
			own[id.Name] = true
		}
	}
}

// rootOf is the name at which what is written begins: a of a.b[i].
func rootOf(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.Ident:
		return e.Name
	case *ast.IndexExpr:
		return rootOf(e.X)
	case *ast.SelectorExpr:
		return rootOf(e.X)
	case *ast.StarExpr:
		return rootOf(e.X)
	case *ast.ParenExpr:
		return rootOf(e.X)
	case *ast.SliceExpr:
		return rootOf(e.X)
	}
	return ""
}
