package house

import (
	"fmt"
	"slices"
	"strings"
)

// mayImport says which of our top-level folders each may import, itself included.
var mayImport = map[string][]string{
	"measure": {"measure"},
	"checks":  {"checks", "measure"},
	"sync":    {"sync", "measure"},
	"app":     {"app", "measure", "checks", "sync"},
}

// directions: measure ← checks, measure ← sync, all ← app; checks and sync never meet.
func directions(s source) (faults []string) {
	for _, p := range s.imports() {
		inner, ok := ours(p)
		if !ok {
			continue
		}
		top, _, _ := strings.Cut(inner, "/")
		if !slices.Contains(mayImport[s.top()], top) {
			faults = append(faults, fmt.Sprintf("%s: %s must not import %s", s.path, s.top(), p))
		}
	}
	return faults
}

// rootStandsAlone: the words of the domain rest on the standard library and uuid only.
func rootStandsAlone(s source) (faults []string) {
	if s.dir() != "measure" || s.isTest() {
		return nil
	}
	for _, p := range s.imports() {
		first, _, _ := strings.Cut(p, "/")
		if p != "github.com/google/uuid" && (strings.Contains(first, ".") || first == module) {
			faults = append(faults, fmt.Sprintf("%s: package measure must not import %s", s.path, p))
		}
	}
	return faults
}

// formulasKnowNoReadings: below checks, a published row must be testable without a build. What to
// change about a build stands on the checks instead.
func formulasKnowNoReadings(s source) (faults []string) {
	if s.top() != "checks" || s.dir() == "checks" || s.dir() == "checks/remedy" {
		return nil
	}
	for _, p := range s.imports() {
		inner, ok := ours(p)
		if ok && (within(inner, "measure") || inner == "checks") {
			faults = append(faults, fmt.Sprintf("%s: a formula package must not import %s", s.path, p))
		}
	}
	return faults
}

// checksKnowNoRemedy: what to change is asked after the findings are there.
func checksKnowNoRemedy(s source) (faults []string) {
	for _, p := range s.imports() {
		if p == module+"/checks/remedy" && s.top() == "checks" && s.dir() != "checks/remedy" {
			faults = append(faults, fmt.Sprintf("%s: must not import %s", s.path, p))
		}
	}
	return faults
}

// storeStaysBelow: checks never sees a store, and one package alone knows the store's library.
func storeStaysBelow(s source) (faults []string) {
	for _, p := range s.imports() {
		switch {
		case s.top() == "checks" && p == module+"/measure/store",
			p == "github.com/tidwall/buntdb" && !s.under("measure/store"):
			faults = append(faults, fmt.Sprintf("%s: must not import %s", s.path, p))
		}
	}
	return faults
}

// models hold what the screens show. They know no toolkit, so that tests walk through them without one.
var models = []string{"app/screen/take", "app/screen/start", "app/screen/shelve", "app/screen/kit",
	"app/screen/settle", "app/screen/cure", "app/screen/share", "app/screen/figure"}

// windowStaysInScreen: Fyne only where the window is made, and not in what it shows. Main and its
// window files may start it.
func windowStaysInScreen(s source) (faults []string) {
	mayStart := s.path == "app/main.go" || s.dir() == "app" && strings.HasPrefix(s.path, "app/window")
	model := slices.ContainsFunc(models, s.under)
	if mayStart || s.under("app/screen") && !model {
		return nil
	}
	for _, p := range s.imports() {
		if strings.HasPrefix(p, "fyne.io/") {
			faults = append(faults, fmt.Sprintf("%s: must not import %s", s.path, p))
		}
	}
	return faults
}

// facesStayApart: window and command line stand on the logbook and on the sheet, not on each other, and
// the sheet on neither.
func facesStayApart(s source) (faults []string) {
	faces := []string{"app/screen", "app/cli", "app/sheet"}
	for _, p := range s.imports() {
		inner, ok := ours(p)
		for _, face := range faces {
			for _, other := range faces {
				if ok && face != other && other != "app/sheet" && s.under(face) && within(inner, other) {
					faults = append(faults, fmt.Sprintf("%s: must not import %s", s.path, p))
				}
			}
		}
	}
	return faults
}

// countsProcessors shares draws out among workers; no draw rests on another, so that the count of them
// changes no bit.
const countsProcessors = "checks/draws.go"

// worldStaysOutside: what is computed from readings depends on nothing but the readings.
func worldStaysOutside(s source) (faults []string) {
	if s.isTest() || !s.under("checks") && !s.under("measure/merge") {
		return nil
	}
	world := []string{"os", "io/fs", "time", "net", "path/filepath", "runtime", "crypto/rand"}
	for _, p := range s.imports() {
		if p == "runtime" && s.path == countsProcessors {
			continue
		}
		if slices.Contains(world, p) || strings.HasPrefix(p, "net/") || strings.HasPrefix(p, "os/") {
			faults = append(faults, fmt.Sprintf("%s: must not import %s: the result would depend on more than the readings", s.path, p))
		}
	}
	return faults
}
