package house

import (
	"go/ast"
	"go/token"
	"regexp"
	"strings"
)

// cited finds where a number comes from: a paper, a book, a road of its own, or that there is none.
var cited = regexp.MustCompile(`(?i)worked apart|common practice|from memory|by hand|by definition|pins today|textbook|handbook|catalogue|` +
	`\b(ISO|JCGM|SAE|DIN|ASME|ANSI|ETRTO)\b|simulated|no source|source:|\(counted\)`)

// referencesAreCited: each row of a table that a formula is held against says where its numbers come
// from, in a field of its own, or the test says it for all.
func referencesAreCited(s source) (faults []string) {
	if !s.isTest() || !s.under("checks") || s.dir() == "checks" || s.dir() == "checks/limits" {
		return nil
	}
	named := s.citations()
	for _, d := range s.file.Decls {
		f, ok := d.(*ast.FuncDecl)
		if !ok || f.Body == nil {
			continue
		}
		ast.Inspect(f.Body, func(n ast.Node) bool {
			table, ok := n.(*ast.CompositeLit)
			if !ok {
				return true
			}
			fields := tableFields(table)
			if len(fields) == 0 || !expects(fields) {
				return true
			}
			at := position(fields, "source", "from")
			if at < 0 {
				if !s.says(f, named) {
					faults = append(faults, s.at(table)+": no row says where its numbers come from; add a field source, or name it in the test")
				}
				return true
			}
			for _, e := range table.Elts {
				if row, ok := e.(*ast.CompositeLit); ok && emptySource(row, fields, at) {
					faults = append(faults, s.at(row)+": the row has no source")
				}
			}
			return true
		})
	}
	return faults
}

// citations are the names of constants of the file that hold one.
func (s source) citations() map[string]bool {
	named := map[string]bool{"apart": true, "etrto": true} // stand in one file of a package and serve all
	ast.Inspect(s.file, func(n ast.Node) bool {
		spec, ok := n.(*ast.ValueSpec)
		if !ok {
			return true
		}
		for i, v := range spec.Values {
			if sum, ok := v.(*ast.BinaryExpr); ok {
				v = sum.X
			}
			if lit, ok := v.(*ast.BasicLit); ok && lit.Kind == token.STRING && i < len(spec.Names) {
				named[spec.Names[i].Name] = true
			}
		}
		return true
	})
	return named
}

// says reports a citation within a test or in the comments on it.
func (s source) says(f *ast.FuncDecl, named map[string]bool) bool {
	found := cited.MatchString(f.Doc.Text())
	for _, c := range s.file.Comments {
		if c.Pos() > f.Pos() && c.End() < f.End() {
			found = found || cited.MatchString(c.Text())
		}
	}
	ast.Inspect(f.Body, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.Ident:
			found = found || named[n.Name]
		case *ast.BasicLit:
			found = found || n.Kind == token.STRING && cited.MatchString(n.Value)
		}
		return !found
	})
	return found
}

// tableFields are the names of the fields of a []struct{…}{…}, in order.
func tableFields(table *ast.CompositeLit) (names []string) {
	list, ok := table.Type.(*ast.ArrayType)
	if !ok {
		return nil
	}
	record, ok := list.Elt.(*ast.StructType)
	if !ok {
		return nil
	}
	for _, f := range record.Fields.List {
		for _, n := range f.Names {
			names = append(names, n.Name)
		}
	}
	return names
}

// expects reports a table with numbers that something must come out as.
func expects(fields []string) bool {
	for _, n := range fields {
		if strings.HasPrefix(n, "want") || strings.HasPrefix(n, "source") || strings.HasPrefix(n, "from") {
			return true
		}
	}
	return false
}

func position(fields []string, names ...string) int {
	for i, f := range fields {
		for _, n := range names {
			if f == n {
				return i
			}
		}
	}
	return -1
}

func emptySource(row *ast.CompositeLit, fields []string, at int) bool {
	var value ast.Expr
	for i, e := range row.Elts {
		if kv, ok := e.(*ast.KeyValueExpr); ok {
			if k, ok := kv.Key.(*ast.Ident); ok && k.Name == fields[at] {
				value = kv.Value
			}
		} else if i == at {
			value = e
		}
	}
	lit, ok := value.(*ast.BasicLit)
	return value == nil || ok && strings.Trim(lit.Value, "\"` ") == ""
}
