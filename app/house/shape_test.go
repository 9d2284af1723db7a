package house

import (
	"fmt"
	"go/ast"
	"slices"
	"strings"
)

// longest is where a file must be split.
const longest = 400

// filesStayShort: a file over the limit is split, unless it is a table or a test. A table is a file
// of which the functions take no more than a fifth.
func filesStayShort(s source) []string {
	if s.isTest() || s.lines() <= longest || 5*linesInFunctions(s) <= s.lines() {
		return nil
	}
	return []string{fmt.Sprintf("%s: has %d lines, more than %d; split it by what it holds", s.path, s.lines(), longest)}
}

func linesInFunctions(s source) int {
	sum := 0
	for _, d := range s.file.Decls {
		if f, ok := d.(*ast.FuncDecl); ok {
			sum += s.fset.Position(f.End()).Line - s.fset.Position(f.Pos()).Line + 1
		}
	}
	return sum
}

// inputNeverPanics: what a person types or a file holds ends in an error, not in a crash.
func inputNeverPanics(s source) (faults []string) {
	if s.isTest() || s.top() == "app" {
		return nil
	}
	ast.Inspect(s.file, func(n ast.Node) bool {
		call, ok := n.(*ast.CallExpr)
		if !ok {
			return true
		}
		switch f := call.Fun.(type) {
		case *ast.Ident:
			if f.Name == "panic" {
				faults = append(faults, s.at(call)+": return an error; don't panic")
			}
		case *ast.SelectorExpr:
			x, ok := f.X.(*ast.Ident)
			if ok && (x.Name == "log" && strings.HasPrefix(f.Sel.Name, "Fatal") || x.Name == "os" && f.Sel.Name == "Exit") {
				faults = append(faults, s.at(call)+": return an error; don't end the program")
			}
		}
		return true
	})
	return faults
}

// publicNamesAreExplained: every exported name outside tests has a doc comment, and that of a
// function or type begins with its name.
func publicNamesAreExplained(s source) (faults []string) {
	if s.isTest() {
		return nil
	}
	for _, d := range s.file.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			if d.Name.IsExported() && (d.Recv == nil || ast.IsExported(receiver(d))) {
				faults = append(faults, s.explained(d.Name, d.Doc)...)
			}
		case *ast.GenDecl:
			faults = append(faults, s.groupExplained(d)...)
		}
	}
	return faults
}

func (s source) groupExplained(d *ast.GenDecl) (faults []string) {
	for _, spec := range d.Specs {
		switch spec := spec.(type) {
		case *ast.TypeSpec:
			doc := spec.Doc
			if doc == nil && len(d.Specs) == 1 {
				doc = d.Doc
			}
			if spec.Name.IsExported() {
				faults = append(faults, s.explained(spec.Name, doc)...)
			}
		case *ast.ValueSpec:
			if d.Doc != nil || spec.Doc != nil || spec.Comment != nil {
				continue
			}
			for _, name := range spec.Names {
				if name.IsExported() {
					faults = append(faults, s.at(name)+": "+name.Name+" has no comment")
				}
			}
		}
	}
	return faults
}

func (s source) explained(name *ast.Ident, doc *ast.CommentGroup) []string {
	text := strings.TrimSpace(doc.Text())
	if text == "" {
		return []string{s.at(name) + ": " + name.Name + " has no doc comment"}
	}
	words := strings.Fields(text)
	if slices.Contains([]string{"A", "An", "The"}, words[0]) {
		words = words[1:]
	}
	if len(words) > 0 && (words[0] == name.Name || strings.TrimRight(words[0], ",.:;'s") == name.Name) {
		return nil
	}
	return []string{s.at(name) + ": the comment of " + name.Name + " must begin with its name"}
}

// receiver is the name of a method's type, without pointer and type parameters.
func receiver(f *ast.FuncDecl) string {
	expr := f.Recv.List[0].Type
	if star, ok := expr.(*ast.StarExpr); ok {
		expr = star.X
	}
	switch x := expr.(type) {
	case *ast.IndexExpr:
		expr = x.X
	case *ast.IndexListExpr:
		expr = x.X
	}
	if id, ok := expr.(*ast.Ident); ok {
		return id.Name
	}
	return ""
}
