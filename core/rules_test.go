package core

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"finwright/core/message"
)

// layers lists the packages from the bottom up: each may import only what stands before it.
var layers = []string{
	"core/units", "core/numeric", "core/strict", "core/csv", "core/message", "core/figure", "core/material", "core/fluid", "core/tube", "core/fin",
	"core/fin/temperature", "core/bond", "core/airside", "core/inside", "core/exchanger", "core/rating", "core/shop", "core/field", "core/shop/making", "core/shop/floor", "core/shop/verdict", "core/document", "core/design",
	"core/compare", "core/tolerance", "core/convention", "core/search", "core/enquiry", "core/quotes",
	"testdata/cases", "core/drawing/ink", "core/drawing/sheet", "core/drawing/svg", "core/drawing/dxf", "core/drawing/finned", "core/drawing/order", "core/paper", "core/issued", "core/report", "core/outgoing", "core/lesson", "core/glossary", "wasm/plots", "wasm/bridge", "wasm/serve", "wasm/first", "wasm/engine", "wasm/canvas",
}

// lean lists all that a package may import of ours. The canvas program carries what it paints with, and so starts soon; what
// is drawn on knows nothing of what is drawn, and what a tube looks like does not hang on what it does or how it is made.
var lean = map[string][]string{
	"core/drawing/ink":    nil,
	"core/drawing/sheet":  {"core/drawing/ink"},
	"core/drawing/svg":    {"core/drawing/ink", "core/drawing/sheet"},
	"core/drawing/dxf":    {"core/drawing/ink"},
	"core/drawing/finned": {"core/units", "core/numeric", "core/message", "core/tube", "core/drawing/ink", "core/drawing/sheet"},
	"core/drawing/order":  {"core/drawing/ink", "core/drawing/sheet"},
	"wasm/canvas":         {"core/drawing/ink"},
}

// heavy lists standard packages that would make the engine larger and slower to start by more than they save.
var heavy = []string{"regexp", "text/template", "html/template", "compress/flate", "compress/gzip", "log", "net/url"}

var browserOnly = []string{"syscall/js", "github.com/hajimehoshi/ebiten", "github.com/go-echarts"}

func eachGoFile(t *testing.T, mode parser.Mode, visit func(dir, path string, fset *token.FileSet, f *ast.File)) {
	t.Helper()
	for _, root := range []string{".", "../wasm", "../testdata/cases"} {
		err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return err
			}
			fset := token.NewFileSet()
			f, err := parser.ParseFile(fset, path, nil, mode)
			if err != nil {
				return err
			}
			visit(strings.TrimPrefix(filepath.ToSlash(filepath.Dir(filepath.Join("core", path))), "../"), path, fset, f)
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
}

// forTests is whether a package serves tests alone: it stands outside the layers.
func forTests(dir string) bool {
	return strings.HasPrefix(dir, "core/internal/") || dir == "core/proof" || strings.HasPrefix(dir, "core/proof/")
}

func TestImportsPointDown(t *testing.T) {
	rank := map[string]int{}
	for i, l := range layers {
		rank[l] = i
	}
	eachGoFile(t, parser.ImportsOnly, func(dir, path string, _ *token.FileSet, f *ast.File) {
		if forTests(dir) {
			return
		}
		mine, known := rank[dir]
		if !known {
			t.Errorf("%s: package %s has no place in the layers", path, dir)
		}
		for _, spec := range f.Imports {
			name, _ := strconv.Unquote(spec.Path.Value)
			for _, b := range browserOnly {
				if strings.HasPrefix(name, b) && strings.HasPrefix(dir, "core/") {
					t.Errorf("%s imports %s: core runs without a browser", path, name)
				}
			}
			if slices.Contains(heavy, name) {
				t.Errorf("%s imports %s: the engine would carry it", path, name)
			}
			local, ours := strings.CutPrefix(name, "finwright/")
			if !ours {
				continue
			}
			if theirs, ok := rank[local]; !ok || theirs >= mine {
				t.Errorf("%s imports %s: imports point down the layers only", path, name)
			}
			if may, kept := lean[dir]; kept && !slices.Contains(may, local) {
				t.Errorf("%s imports %s: kept apart by design", path, name)
			}
		}
	})
}

// What is judged states where it comes from and how far it holds; formulas their units too (formulas_test.go).
func TestJudgingNamesSourceAndRange(t *testing.T) {
	packages := map[string]bool{"core/shop": true, "core/shop/verdict": true}
	eachGoFile(t, parser.ParseComments, func(dir, path string, fset *token.FileSet, f *ast.File) {
		if !packages[dir] {
			return
		}
		for _, d := range f.Decls {
			fn, ok := d.(*ast.FuncDecl)
			if !ok || !fn.Name.IsExported() || fn.Recv != nil || fn.Type.TypeParams != nil || !returnsNumber(fn) {
				continue
			}
			for _, word := range []string{"Source:", "Valid:"} {
				if !strings.Contains(fn.Doc.Text(), word) {
					t.Errorf("%s: %s has no %s", fset.Position(fn.Pos()), fn.Name.Name, word)
				}
			}
		}
	})
}

func returnsNumber(fn *ast.FuncDecl) bool {
	if fn.Type.Results == nil {
		return false
	}
	for _, r := range fn.Type.Results.List {
		if id, ok := r.Type.(*ast.Ident); ok && id.Name == "float64" {
			return true
		}
	}
	return false
}

// key is a literal that can only be the whole key of a text.
var key = regexp.MustCompile(`^[a-z]+(\.[a-z0-9_]+)+$`)

// Every key that the sources name has its text.
func TestKeysHaveTexts(t *testing.T) {
	texts := message.English()
	first := map[string]bool{}
	for _, k := range texts.Keys() {
		head, _, _ := strings.Cut(k, ".")
		first[head] = true
	}
	found := 0
	eachGoFile(t, 0, func(_, path string, fset *token.FileSet, f *ast.File) {
		ast.Inspect(f, func(n ast.Node) bool {
			lit, ok := n.(*ast.BasicLit)
			if !ok || lit.Kind != token.STRING {
				return true
			}
			text, _ := strconv.Unquote(lit.Value)
			if head, _, _ := strings.Cut(text, "."); !key.MatchString(text) || !first[head] {
				return true
			}
			if found++; !texts.Has(text) {
				t.Errorf("%s: no text for %s", fset.Position(lit.Pos()), text)
			}
			return true
		})
	})
	for _, k := range texts.Keys() {
		id, ok := strings.CutPrefix(k, "figure.")
		label := slices.Contains([]string{"duty_in", "duty_out", "effectiveness_gas", "gas_out"}, id) || strings.HasPrefix(id, "vapour_") // of a figure that bears several
		if ok && !label && !texts.Has("meaning."+id) {
			t.Errorf("no text says what %s means", id)
		}
	}
	if found < 300 {
		t.Errorf("only %d keys were found in the sources", found)
	}
}

// sentence is three words in a row: text for a person, not a key or a name.
var sentence = regexp.MustCompile(`\p{L}{2,}[,;:]? \p{L}{2,}[,;:]? \p{L}{2,}`)

// Texts for people live in the catalogue. A panic or an error for the programmer starts with its package's name.
func TestNoUserTextInGo(t *testing.T) {
	spellings := map[string]bool{"units/unit.go": true, "shop/house_values.go": true} // names of units as typed, and what a shop calls its work
	names := map[string]bool{"Barlow Semi Condensed": true}
	eachGoFile(t, 0, func(dir, path string, fset *token.FileSet, f *ast.File) {
		if spellings[filepath.ToSlash(path)] || forTests(dir) {
			return
		}
		ast.Inspect(f, func(n ast.Node) bool {
			lit, ok := n.(*ast.BasicLit)
			if !ok || lit.Kind != token.STRING {
				return true
			}
			text, _ := strconv.Unquote(lit.Value)
			if sentence.MatchString(text) && !names[text] && !strings.HasPrefix(text, f.Name.Name+":") {
				t.Errorf("%s: %q belongs in the catalogue", fset.Position(lit.Pos()), text)
			}
			return true
		})
	})
}
