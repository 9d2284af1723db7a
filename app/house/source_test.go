package house

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// root is the top of the tree, seen from this package.
const root = "../.."

// module is the import path of the tree.
const module = "yokebook"

// source is one Go file of the tree, parsed.
type source struct {
	path string // from the top, with slashes: checks/joint/chain.go
	text string
	fset *token.FileSet
	file *ast.File
}

func parse(path, text string) (source, error) {
	fset := token.NewFileSet()
	file, err := parser.ParseFile(fset, path, text, parser.ParseComments|parser.SkipObjectResolution)
	return source{path: path, text: text, fset: fset, file: file}, err
}

// tree returns every Go file below the top, whatever its build tags.
func tree(t *testing.T) []source {
	t.Helper()
	var all []source
	err := filepath.WalkDir(root, func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && (d.Name() == "testdata" || d.Name() == "build" || d.Name() == ".git") {
			return filepath.SkipDir
		}
		if d.IsDir() || !strings.HasSuffix(name, ".go") {
			return nil
		}
		text, err := os.ReadFile(name)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, name)
		if err != nil {
			return err
		}
		s, err := parse(filepath.ToSlash(rel), string(text))
		if err != nil {
			return err
		}
		all = append(all, s)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 20 {
		t.Fatalf("only %d Go files found from %s; this test looks in the wrong place", len(all), root)
	}
	return all
}

// dir is the folder of the file, "checks/joint".
func (s source) dir() string { return path.Dir(s.path) }

// top is the first folder of the path, "checks".
func (s source) top() string {
	first, _, _ := strings.Cut(s.path, "/")
	return first
}

func (s source) isTest() bool { return strings.HasSuffix(s.path, "_test.go") }

func (s source) lines() int { return strings.Count(s.text, "\n") }

// under reports whether the file lies in the folder or below it.
func (s source) under(folder string) bool { return within(s.path, folder) }

// imports returns the paths that the file imports.
func (s source) imports() []string {
	var all []string
	for _, spec := range s.file.Imports {
		p, err := strconv.Unquote(spec.Path.Value)
		if err == nil {
			all = append(all, p)
		}
	}
	return all
}

// at says where a node stands, as path:line.
func (s source) at(n ast.Node) string {
	return s.path + ":" + strconv.Itoa(s.fset.Position(n.Pos()).Line)
}

// within reports whether a path is the folder or lies below it.
func within(p, folder string) bool { return p == folder || strings.HasPrefix(p, folder+"/") }

// ours returns the part of an import path below the module, "checks/joint"; false for others' packages.
func ours(importPath string) (string, bool) {
	return strings.CutPrefix(importPath, module+"/")
}
