package core

import (
	"go/ast"
	"go/parser"
	"go/token"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// physics lists the packages of formulas, those of planning among them: whatever number they give out is told with its units, its range and its source.
var physics = []string{"core/fluid", "core/tube", "core/fin", "core/fin/temperature", "core/bond", "core/airside", "core/inside", "core/exchanger", "core/rating", "core/material", "core/numeric", "core/shop/making"}

// unit is one in brackets, [-] where there is none.
var unit = regexp.MustCompile(`\[[^\]]+\]`)

// Every exported function or method that gives a formula's result says its units in brackets, how far it holds and where
// it comes from.
func TestFormulasNameUnitsRangeAndSource(t *testing.T) {
	type declared struct {
		at token.Position
		fn *ast.FuncDecl
	}
	functions, quantities := map[string][]declared{}, map[string][]string{}
	eachGoFile(t, parser.ParseComments, func(dir, _ string, fset *token.FileSet, f *ast.File) {
		if !slices.Contains(physics, dir) {
			return
		}
		for _, d := range f.Decls {
			switch d := d.(type) {
			case *ast.FuncDecl:
				functions[dir] = append(functions[dir], declared{fset.Position(d.Pos()), d})
			case *ast.GenDecl:
				for _, s := range d.Specs {
					if s, ok := s.(*ast.TypeSpec); ok && holdsNumbers(s) {
						quantities[dir] = append(quantities[dir], s.Name.Name)
					}
				}
			}
		}
	})
	for _, dir := range physics {
		found := 0
		for _, d := range functions[dir] {
			if !givenOut(d.fn) || !resultsIn(d.fn, quantities[dir]) {
				continue
			}
			found++
			doc := d.fn.Doc.Text()
			if !unit.MatchString(doc) {
				t.Errorf("%s: %s names no unit in brackets", d.at, d.fn.Name.Name)
			}
			for _, word := range []string{"Valid:", "Source:"} {
				if !strings.Contains(doc, word) {
					t.Errorf("%s: %s has no %s", d.at, d.fn.Name.Name, word)
				}
			}
		}
		if found == 0 {
			t.Errorf("no formula was found in %s", dir)
		}
	}
}

// holdsNumbers is whether a type is a struct with physical numbers in it.
func holdsNumbers(s *ast.TypeSpec) bool {
	fields, ok := s.Type.(*ast.StructType)
	return ok && slices.ContainsFunc(fields.Fields.List, func(f *ast.Field) bool { return number(f.Type) })
}

// number is whether a type is that of a physical number.
func number(e ast.Expr) bool {
	switch e := e.(type) {
	case *ast.Ident:
		return e.Name == "float64"
	case *ast.SelectorExpr:
		from, ok := e.X.(*ast.Ident)
		return ok && (from.Name == "units" && e.Sel.Name != "Kind" || from.Name == "fluid" && e.Sel.Name == "Properties" || from.Name == "material" && e.Sel.Name == "Value")
	}
	return false
}

// givenOut is whether other packages can call a function.
func givenOut(fn *ast.FuncDecl) bool {
	if !fn.Name.IsExported() || fn.Recv == nil {
		return fn.Name.IsExported()
	}
	of := fn.Recv.List[0].Type
	if p, ok := of.(*ast.StarExpr); ok {
		of = p.X
	}
	name, ok := of.(*ast.Ident)
	return ok && name.IsExported()
}

// resultsIn is whether a function returns a physical number, alone or in one of the named structs.
func resultsIn(fn *ast.FuncDecl, structs []string) bool {
	if fn.Type.Results == nil {
		return false
	}
	return slices.ContainsFunc(fn.Type.Results.List, func(r *ast.Field) bool {
		of := r.Type
		if list, ok := of.(*ast.ArrayType); ok {
			of = list.Elt
		}
		name, ok := of.(*ast.Ident)
		return number(of) || ok && slices.Contains(structs, name.Name)
	})
}
