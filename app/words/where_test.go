package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// messageKeys are the values of all constants Msg… of the checks and the remedies, read from their
// source: a list beside them would forget one.
func messageKeys(t *testing.T) (keys []string) {
	t.Helper()
	for _, dir := range []string{"../../checks", "../../checks/remedy"} {
		files, err := filepath.Glob(filepath.Join(dir, "messages*.go"))
		if err != nil || len(files) == 0 {
			t.Fatalf("no messages in %s: %v", dir, err)
		}
		for _, path := range files {
			f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
			if err != nil {
				t.Fatal(err)
			}
			ast.Inspect(f, func(n ast.Node) bool {
				if v, ok := n.(*ast.ValueSpec); ok && strings.HasPrefix(v.Names[0].Name, "Msg") {
					key, err := strconv.Unquote(v.Values[0].(*ast.BasicLit).Value)
					if err != nil {
						t.Fatalf("%s: %s: %v", path, v.Names[0].Name, err)
					}
					keys = append(keys, key)
				}
				return true
			})
		}
	}
	if len(keys) < 150 {
		t.Fatalf("only %d messages were found", len(keys))
	}
	return keys
}

// beside says where most sentences stand whose keys begin like this one: there it belongs.
func beside(t *testing.T, tag, key string) string {
	t.Helper()
	parts, files := strings.Split(key, "."), tag+"_*.go"
	var begins []string
	switch {
	case parts[0] == "advice" || parts[0] == "note":
		begins = []string{"checks.Msg"}
	case parts[0] == "cost" || parts[0] == "next":
		begins = []string{"remedy.Msg"}
	case parts[0] == "question" || parts[0] == "place": // both under the key of the point
		begins, files = []string{`"` + parts[1] + "."}, tag+"_ask*.go"
	case len(parts) > 2:
		begins = []string{`"` + parts[0] + "." + parts[1] + ".", `"` + parts[0] + "."}
	default:
		begins = []string{`"` + parts[0] + "."}
	}
	paths, err := filepath.Glob(files)
	if err != nil {
		t.Fatal(err)
	}
	for _, begin := range begins {
		best, most := "", 0
		for _, path := range paths {
			text, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			if n := strings.Count(string(text), begin); n > most {
				best, most = path, n
			}
		}
		if most > 0 {
			return "most like it stand in app/words/" + best
		}
	}
	return "none like it stands in app/words/" + files
}

func TestWhereASentenceBelongs(t *testing.T) {
	for _, row := range []struct{ tag, key, want string }{
		{"de", "question.fingers.new", "de_ask_engine.go"},
		{"de", "dimension.new", "de_dimensions.go"},
		{"en", "dimension.new", "en_points.go"},
		{"en", "formula.clutch.new", "en_formulas.go"},
		{"en", "check.clutch.new", "en_clutch.go"},
		{"en", "cost.new", "en_remedy.go"},
		{"en", "nothing.like.it", "en_*.go"},
	} {
		if got := beside(t, row.tag, row.key); !strings.HasSuffix(got, "/"+row.want) {
			t.Errorf("%s %s: %s, want %s", row.tag, row.key, got, row.want)
		}
	}
}

// What a finding of any layout speaks of has a word: a joint, a shaft, a part, a point.
func TestEverySubjectOfAFindingHasAWord(t *testing.T) {
	seen := map[string]bool{}
	for _, shafts := range []int{1, 2} {
		for _, c := range measure.LayoutChoices {
			for _, choice := range c.Choices {
				layout := measure.NewLayout()
				layout.Shafts = shafts
				*layout.Member(c.Member) = choice
				for _, f := range checks.Run(&measure.Build{Layout: layout}, nil).Findings {
					seen[f.Subject] = true
				}
			}
		}
	}
	delete(seen, "") // where there is one
	for _, l := range Languages {
		for subject := range seen {
			_, point := measure.PointOf(subject)
			if key := "subject." + subject; !point && !l.Has(key) && !l.Has("part."+subject) {
				t.Errorf("%s: no word for %s; %s", l.Tag, key, beside(t, l.Tag, key))
			}
		}
	}
	if len(seen) < 10 {
		t.Errorf("only %d subjects were seen", len(seen))
	}
}
