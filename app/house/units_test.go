package house

import (
	"fmt"
	"go/ast"
	"regexp"
)

// unitSaid finds a unit in a comment, or a word for what has none; unitNamed finds it in a name.
var (
	unitSaid = regexp.MustCompile(`(^|[^\pL])(mm|mm²|mm/s|g·mm|1/mm|1/in|N|N·m|MPa|GPa|kg|kg/m|rad|radians|rad/s²|m/s²|rev/min|km/h|` +
		`degrees|hours|modules|per cent|teeth|[Rr]atios?|[Ss]hares?|[Ff]actors?|[Ee]fficiency|[Dd]imensionless)([^\pL²³/·]|$)|°|%`)
	unitNamed = regexp.MustCompile(`(MM|mm|Mm|[Dd]eg|Nm|MPa|mpa|GPa|[Kk]g|[Rr]ad|[Rr]evPerMin|KmPerH|PerM3|[Nn]ewton|[Hh]ours\d*|[Rr]atio|[Ss]hare|[Ff]actor)(Above16|\d+)?$`)
)

// numbersHaveUnits: below checks every public formula and type says in which unit its numbers are, in
// the name or in the comment, or that there is none. The draws of checks/uncertain are of any unit.
func numbersHaveUnits(s source) (faults []string) {
	if s.isTest() || !s.under("checks") || s.dir() == "checks" || s.under("checks/remedy") || s.under("checks/limits") || s.under("checks/uncertain") {
		return nil
	}
	for _, d := range s.file.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			if d.Name.IsExported() && (d.Recv == nil || ast.IsExported(receiver(d))) && !unitSaid.MatchString(d.Doc.Text()) {
				faults = append(faults, s.bareNumbers(d)...)
			}
		case *ast.GenDecl:
			for _, spec := range d.Specs {
				t, ok := spec.(*ast.TypeSpec)
				if ok && t.Name.IsExported() && !unitSaid.MatchString(t.Doc.Text()+d.Doc.Text()) {
					faults = append(faults, s.bareFields(t)...)
				}
			}
		}
	}
	return faults
}

// bareNumbers are the numbers that a function without a unit in its comment takes and returns.
func (s source) bareNumbers(d *ast.FuncDecl) (faults []string) {
	fields := d.Type.Params.List
	if d.Type.Results != nil {
		fields = append(fields[:len(fields):len(fields)], d.Type.Results.List...)
	}
	for _, f := range fields {
		names := f.Names
		if len(names) == 0 {
			names = []*ast.Ident{d.Name} // GapMM() float64
		}
		faults = append(faults, s.bare(f, names, d.Name.Name)...)
	}
	return faults
}

func (s source) bareFields(t *ast.TypeSpec) (faults []string) {
	record, ok := t.Type.(*ast.StructType)
	if !ok {
		return nil
	}
	for _, f := range record.Fields.List {
		if len(f.Names) > 0 && f.Names[0].IsExported() && !unitSaid.MatchString(f.Doc.Text()+f.Comment.Text()) {
			faults = append(faults, s.bare(f, f.Names, t.Name.Name)...)
		}
	}
	return faults
}

func (s source) bare(f *ast.Field, names []*ast.Ident, of string) (faults []string) {
	if !isNumber(f.Type) {
		return nil
	}
	for _, n := range names {
		if !unitNamed.MatchString(n.Name) {
			faults = append(faults, fmt.Sprintf("%s: %s: say the unit of %s in the comment, or dimensionless", s.at(n), of, n.Name))
		}
	}
	return faults
}

// isNumber reports a float64, or a list of them.
func isNumber(e ast.Expr) bool {
	switch e := e.(type) {
	case *ast.Ident:
		return e.Name == "float64"
	case *ast.ArrayType:
		return isNumber(e.Elt)
	case *ast.Ellipsis:
		return isNumber(e.Elt)
	}
	return false
}
