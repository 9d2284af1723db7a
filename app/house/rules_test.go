package house

import (
	"strings"
	"testing"
)

// example is a file that does not exist: where it would stand and what it would hold.
type example struct{ path, text string }

// rules are all rules that look at one file. wrong must be found; right is its near twin.
var rules = []struct {
	name   string
	faults func(source) []string
	wrong  []example
	right  []example
}{
	{
		name: "imports point one way", faults: directions,
		wrong: []example{
			{"measure/x.go", `package measure; import "yokebook/checks"`},
			{"measure/merge/x_test.go", `package merge; import "yokebook/app/words"`},
			{"checks/x.go", `package checks; import "yokebook/sync/place"`},
			{"sync/place/x.go", `package place; import "yokebook/checks/joint"`},
		},
		right: []example{
			{"checks/x.go", `package checks; import "yokebook/measure"`},
			{"sync/x.go", `package sync; import "yokebook/measure/merge"`},
			{"app/cli/x.go", `package cli; import ("yokebook/checks"; "yokebook/sync")`},
		},
	},
	{
		name: "the words of the domain stand alone", faults: rootStandsAlone,
		wrong: []example{
			{"measure/x.go", `package measure; import "yokebook/measure/document"`},
			{"measure/x.go", `package measure; import "github.com/tidwall/gjson"`},
		},
		right: []example{
			{"measure/x.go", `package measure; import ("encoding/json"; "github.com/google/uuid")`},
			{"measure/document/x.go", `package document; import "yokebook/measure"`},
		},
	},
	{
		name: "formulas know no readings", faults: formulasKnowNoReadings,
		wrong: []example{
			{"checks/joint/x.go", `package joint; import "yokebook/measure"`},
			{"checks/shaft/x_test.go", `package shaft; import "yokebook/checks"`},
		},
		right: []example{
			{"checks/joint/x.go", `package joint; import "yokebook/checks/uncertain"`},
			{"checks/bind_joint.go", `package checks; import "yokebook/measure"`},
			{"checks/remedy/x.go", `package remedy; import ("yokebook/checks"; "yokebook/measure")`},
		},
	},
	{
		name: "checks know no remedy", faults: checksKnowNoRemedy,
		wrong: []example{
			{"checks/x.go", `package checks; import "yokebook/checks/remedy"`},
			{"checks/joint/x.go", `package joint; import "yokebook/checks/remedy"`},
		},
		right: []example{
			{"checks/remedy/x_test.go", `package remedy_test; import "yokebook/checks/remedy"`},
			{"app/cli/x.go", `package cli; import "yokebook/checks/remedy"`},
		},
	},
	{
		name: "the store stays below", faults: storeStaysBelow,
		wrong: []example{
			{"checks/x.go", `package checks; import "yokebook/measure/store"`},
			{"app/logbook/x.go", `package logbook; import "github.com/tidwall/buntdb"`},
		},
		right: []example{
			{"app/logbook/x.go", `package logbook; import "yokebook/measure/store"`},
			{"measure/store/x.go", `package store; import "github.com/tidwall/buntdb"`},
		},
	},
	{
		name: "the window stays in screen", faults: windowStaysInScreen,
		wrong: []example{
			{"app/cli/x.go", `package cli; import "fyne.io/fyne/v2"`},
			{"app/words/x_test.go", `package words; import "fyne.io/fyne/v2/widget"`},
			{"app/headless.go", `package main; import "fyne.io/fyne/v2/app"`},
			{"measure/x.go", `package measure; import "fyne.io/fyne/v2/data/binding"`},
			{"app/screen/take/x.go", `package take; import "fyne.io/fyne/v2"`},
			{"app/screen/kit/x_test.go", `package kit; import "fyne.io/fyne/v2/test"`},
		},
		right: []example{
			{"app/main.go", `package main; import "fyne.io/fyne/v2/app"`},
			{"app/screen/part/x.go", `package part; import "fyne.io/fyne/v2/widget"`},
		},
	},
	{
		name: "window, command line and sheet stay apart", faults: facesStayApart,
		wrong: []example{
			{"app/screen/x.go", `package screen; import "yokebook/app/cli"`},
			{"app/cli/x.go", `package cli; import "yokebook/app/screen/part"`},
			{"app/sheet/x.go", `package sheet; import "yokebook/app/cli"`},
		},
		right: []example{
			{"app/screen/x.go", `package screen; import ("yokebook/app/logbook"; "yokebook/app/screen/part")`},
			{"app/main.go", `package main; import ("yokebook/app/cli"; "yokebook/app/screen")`},
		},
	},
	{
		name: "findings depend on readings alone", faults: worldStaysOutside,
		wrong: []example{
			{"checks/x.go", `package checks; import "time"`},
			{"measure/merge/x.go", `package merge; import "os"`},
			{"checks/uncertain/x.go", `package uncertain; import "crypto/rand"`},
			{"checks/engine.go", `package checks; import "runtime"`},
		},
		right: []example{
			{"checks/x_test.go", `package checks; import "os"`},
			{"measure/store/x.go", `package store; import "os"`},
			{"checks/draws.go", `package checks; import "runtime"`},
		},
	},
	{
		name: "formulas write to their own", faults: formulasWriteToTheirOwn,
		wrong: []example{
			{"checks/bind_x.go", `package checks; func f(e *engine) { n := 0; e.combine("x", 1, func(x, out []float64) { n++; out[0] = x[0] }) }`},
			{"checks/bind_x.go", `package checks; func f(e *engine, s *stand) { e.combine("x", 1, func(x, out []float64) { s.slide[0] = x[0] }) }`},
			{"checks/bind_x.go", `package checks; func f(e *engine) { var to stand; e.combineOwn("x", nil, func() formula { return func(x, out []float64) { to.slide += x[0] } }) }`},
		},
		right: []example{
			{"checks/bind_x.go", `package checks; func f(e *engine) { e.combine("x", 1, func(x, out []float64) { for i, v := range x { out[i] = v } }) }`},
			{"checks/bind_x.go", `package checks; func f(e *engine) { e.combineOwn("x", nil, func() formula { var to stand; return func(x, out []float64) { to.slide += x[0]; out[0] = to.slide } }) }`},
			{"checks/bind_x.go", `package checks; func f(e *engine) { n := 0; each(func(x float64) { n++ }) }`},
		},
	},
	{
		name: "the same bits everywhere", faults: sameBitsEverywhere,
		wrong: []example{
			{"checks/shaft/x.go", `package shaft; import "math"; func f(x float64) float64 { return math.Exp(x) }`},
			{"checks/x.go", `package checks; import m "math"; var f = m.Hypot`},
			{"checks/x.go", `package checks; import . "math"`},
			{"measure/x.go", `package measure; import "math"; var x = math.Pow(10, 3)`},
			{"checks/uncertain/x.go", `package uncertain; import "gonum.org/v1/gonum/stat/distuv"`},
			{"checks/uncertain/x.go", `package uncertain; import "math/rand/v2"; var x = rand.NormFloat64()`},
			{"checks/uncertain/x.go", `package uncertain; import "math/rand/v2"; var r *rand.Rand`},
		},
		right: []example{
			{"checks/shaft/x.go", `package shaft; import "math"; func f(x float64) float64 { return math.Sin(x) /* not math.Exp */ }`},
			{"checks/shaft/x_test.go", `package shaft; import "math"; var f = math.Exp`},
			{"app/screen/x.go", `package screen; import "math"; var f = math.Hypot`},
			{"measure/store/x.go", `package store; import "math/rand/v2"; var r *rand.Rand`},
			{"checks/uncertain/x.go", `package uncertain; import "math/rand/v2"; var r rand.ChaCha8`},
			{"checks/x.go", `package checks; type m struct{ Exp int }; func f(math m) int { return math.Exp }`},
		},
	},
	{
		name: "limits are in the table", faults: limitsAreInTheTable,
		wrong: []example{
			{"checks/bind_x.go", `package checks; func f(x float64) bool { return x > 4.5 }`},
			{"checks/bind_x.go", `package checks; const most = 12`},
			{"checks/bind_x.go", `package checks; var v = check{limit: 0.25}`},
			{"checks/bind_x.go", `package checks; func f() { combine("x", 2, func(x []float64) bool { return x[4] > 3.5 }) }`},
			{"checks/joint/x.go", `package joint; func f(x float64) bool { return x <= 3 }`},
			{"checks/joint/x.go", `package joint; func f(x float64) bool { return -x >= 0.7 || x > 0 }`},
			{"checks/joint/x.go", `package joint; func f(x float64) bool { return x < -30 }`},
			{"checks/joint/x.go", `package joint; func f(x, width float64) bool { return x < 3*width }`},
		},
		right: []example{
			{"checks/bind_x.go", `package checks; func f(x []float64) bool { return x[7] > 0 && x[3] != 1 }`},
			{"checks/bind_x.go", `package checks; var b [16]byte; var c = make([]int, 0, 64)`},
			{"checks/limits/x.go", `package limits; var most = 4.5`},
			{"checks/joint/x.go", `package joint; func f(x float64) float64 { return x / 12 }`},
			{"checks/bind_x_test.go", `package checks; var most = 4.5`},
		},
	},
	{
		name: "numbers have units", faults: numbersHaveUnits,
		wrong: []example{
			{"checks/joint/x.go", "package joint\n\n// Bend returns the bend of a tube.\nfunc Bend(lengthMM float64) float64 { return 0 }\n"},
			{"checks/joint/x.go", "package joint\n\n// Bend returns the bend.\nfunc Bend(length float64) (bendMM float64) { return 0 }\n"},
			{"checks/joint/x.go", "package joint\n\n// Tube is a tube.\ntype Tube struct{ Length, WallMM float64 }\n"},
			{"checks/joint/x.go", "package joint\n\n// Sum adds. None of the Nordic mmm.\nfunc Sum(x []float64) float64 { return 0 }\n"},
		},
		right: []example{
			{"checks/joint/x.go", "package joint\n\n// Bend returns the bend of a tube, mm.\nfunc Bend(lengthMM float64) float64 { return 0 }\n"},
			{"checks/joint/x.go", "package joint\n\n// Bend returns the bend.\nfunc BendMM(lengthMM float64, parts int) float64 { return 0 }\n"},
			{"checks/joint/x.go", "package joint\n\n// Tube is a tube.\ntype Tube struct {\n\tLength float64 // mm\n\twall float64\n}\n"},
			{"checks/joint/x.go", "package joint\n\nfunc bend(length float64) float64 { return 0 }\n"},
			{"checks/x.go", "package checks\n\n// Bend returns the bend.\nfunc Bend(length float64) float64 { return 0 }\n"},
		},
	},
	{
		name: "references are cited", faults: referencesAreCited,
		wrong: []example{
			{"checks/joint/x_test.go", `package joint; func TestX() { for range []struct{ at, want float64 }{{1, 2}} {} }`},
			{"checks/joint/x_test.go", `package joint; func TestX() { for range []struct{ want float64; source string }{{1, "Euclid"}, {2, ""}} {} }`},
			{"checks/joint/x_test.go", `package joint; func TestX() { for range []struct{ want float64; from string }{{want: 1}} {} }`},
			{"checks/joint/x_test.go", `package joint; const most = 3; func TestX() { for range []struct{ wantMM float64 }{{most}} {} }`},
		},
		right: []example{
			{"checks/joint/x_test.go", `package joint; const book = "Euclid"; func TestX() { for range []struct{ want float64; source string }{{1, book}, {2, "Euclid, Elements IV.15"}} {} }`},
			{"checks/joint/x_test.go", `package joint; const apart = "worked apart"; func TestX() { for range []struct{ want float64 }{{1}} { print(apart) } }`},
			{"checks/joint/x_test.go", "package joint\n\n// Numbers by hand.\nfunc TestX() { for range []struct{ want float64 }{{1}} {} }"},
			{"checks/joint/x_test.go", `package joint; func TestX() { for range []struct{ bad float64 }{{1}} {} }`},
			{"checks/x_test.go", `package checks; func TestX() { for range []struct{ want float64 }{{1}} {} }`},
		},
	},
	{
		name: "files stay short", faults: filesStayShort,
		wrong: []example{
			{"app/cli/x.go", "package cli\nfunc f() {\n" + strings.Repeat("\n", 400) + "}\n"},
		},
		right: []example{
			{"app/cli/x.go", "package cli\nfunc f() {\n" + strings.Repeat("\n", 390) + "}\n"},
			{"app/cli/x_test.go", "package cli\nfunc f() {\n" + strings.Repeat("\n", 400) + "}\n"},
			{"measure/x.go", "package measure\nvar x = []int{\n" + strings.Repeat("1,\n", 500) + "}\n"},
		},
	},
	{
		name: "input never panics", faults: inputNeverPanics,
		wrong: []example{
			{"measure/document/x.go", `package document; func f() { panic("x") }`},
			{"sync/x.go", `package sync; import "os"; func f() { os.Exit(1) }`},
		},
		right: []example{
			{"measure/document/x_test.go", `package document; func f() { panic("x") }`},
			{"measure/document/x.go", `package document; /* panic("x") */ var s = "panic(1)"`},
		},
	},
	{
		name: "public names are explained", faults: publicNamesAreExplained,
		wrong: []example{
			{"measure/x.go", "package measure\n\nfunc Do() {}\n"},
			{"measure/x.go", "package measure\n\n// Does it.\nfunc Do() {}\n"},
			{"measure/x.go", "package measure\n\ntype Thing struct{}\n"},
			{"measure/x.go", "package measure\n\nconst A = 1\n"},
			{"measure/x.go", "package measure\n\n// Thing is.\ntype Thing[T any] struct{}\n\nfunc (t *Thing[T]) Do() {}\n"},
		},
		right: []example{
			{"measure/x.go", "package measure\n\n// Do does.\nfunc Do() {}\n\nfunc do() {}\n"},
			{"measure/x.go", "package measure\n\ntype thing struct{}\n\nfunc (thing) String() string { return \"\" }\n"},
			{"measure/x.go", "package measure\n\n// The answers.\nconst (\n\tA = 1\n\tB = 2\n)\n"},
		},
	},
}

func TestTreeKeepsTheRules(t *testing.T) {
	files := tree(t)
	for _, r := range rules {
		t.Run(r.name, func(t *testing.T) {
			for _, s := range files {
				for _, fault := range r.faults(s) {
					t.Error(fault)
				}
			}
		})
	}
}

func TestEachRuleFindsItsFault(t *testing.T) {
	for _, r := range rules {
		t.Run(r.name, func(t *testing.T) {
			for _, e := range r.wrong {
				if len(r.faults(parsed(t, e))) == 0 {
					t.Errorf("not found in %s: %s", e.path, e.text)
				}
			}
			for _, e := range r.right {
				if faults := r.faults(parsed(t, e)); len(faults) > 0 {
					t.Errorf("found where there is no fault: %q in %s", faults, e.text)
				}
			}
			if len(r.wrong) == 0 || len(r.right) == 0 {
				t.Error("the rule has no example of a fault, or none without")
			}
		})
	}
}

func parsed(t *testing.T, e example) source {
	t.Helper()
	s, err := parse(e.path, e.text)
	if err != nil {
		t.Fatal(err)
	}
	return s
}
