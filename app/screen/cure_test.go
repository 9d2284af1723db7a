package screen

import (
	"os"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"yokebook/app/screen/cure"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// openInvented opens the window on one of the invented builds, where work goes on at once.
func openInvented(t *testing.T, size fyne.Size, dark bool, file string) *desk {
	t.Helper()
	d := openDesk(t, size, dark)
	d.s.inline = true
	return d.takeIn(file)
}

// takeIn takes an invented build in and opens it from the list of builds.
func (d *desk) takeIn(file string) *desk {
	d.t.Helper()
	data, err := os.ReadFile("../../testdata/builds/" + file)
	if err != nil {
		d.t.Fatal(err)
	}
	id, _, err := d.shelf.Import(data)
	if err != nil {
		d.t.Fatal(err)
	}
	d.s.show()
	return d.tap("build." + string(id))
}

// cureAlbum opens an invented build and goes from a finding to what it rests on, to what to change, to
// what would change, and back to the list of builds.
func cureAlbum(d *desk, shot func(name string)) {
	d.t.Helper()
	was := d.s.inline
	d.s.inline = true
	d.takeIn("demo.json").tap("more", "more.findings", "finding.joint.angle|rear|ride/kerb")
	shot("finding-asks")
	d.tap("rests")
	shot("rests")
	d.tap("back", "cure")
	shot("ways")
	d.tap("way.0")
	shot("way-pair")
	d.tap("try")
	shot("tried")
	d.tap("back", "back", "way.1")
	shot("way")
	d.tap("back", "short")
	shot("short")
	d.tap("back", "back", "back", "back", "more.route")
	shot("route-own")
	d.tap("route.order")
	shot("route-useful")
	d.tap("route.order", "back")
	builtAlbum(d, shot)
	d.tap("more.builds")
	d.s.inline = was
}

// builtAlbum reads how the builder set the yokes, visits the findings of the shaft as it was made, and
// goes back to the page with everything else.
func builtAlbum(d *desk, shot func(name string)) {
	d.tap("more.groups").reach("group.as built").tap("group.enter").goTo("as_built.phase.bench").read("30", "yes")
	d.tap("all", "built")
	shot("findings-built")
	d.tap("finding.joint.residual||ride/kerb")
	shot("finding-built")
	d.tap("back", "back")
	d.on().tap("more")
}

// Once the builder's sizes were read, the list of findings shows the shaft as ordered or as it was made: the
// same rows, and what is opened from them says so.
func TestFindingsAsOrderedOrAsBuilt(t *testing.T) {
	const residual = "finding.joint.residual||ride/kerb"
	d := openInvented(t, phone, false, "demo.json")
	d.tap("more", "more.findings")
	if d.has("built") {
		t.Error("nothing was built yet, and there is a key for it")
	}
	d.tap("back")
	builtAlbum(d, func(page string) {
		switch page {
		case "findings-built":
			d.sees("The shaft as built", "Tap: show it as ordered").turnTo(residual)
			d.sees("2.96° ± 0.33°", ", as built").tap("built").sees("The shaft as ordered", "Tap: show it as built").turnTo(residual)
			if strings.Contains(d.text(), "2.96° ± 0.33°") {
				t.Error("as ordered it says what it says as built")
			}
			d.tap("built")
		case "finding-built":
			d.sees(", as built", "2.96° ± 0.33°").tap("rests").sees(", as built").tap("back")
			d.restart().sees(", as built", "2.96° ± 0.33°")
		}
	})
}

// From a finding that is out to the ways to make it clear, to what would change then, and all the way back:
// the build is as it was, and its findings too.
func TestFromAFindingToWhatToChangeAndBack(t *testing.T) {
	d := openInvented(t, phone, false, "demo.json")
	before := len(d.s.take.Build().Readings)
	d.tap("more", "more.findings", "finding.joint.angle|rear|ride/kerb").sees("What to change", "How it is reckoned", "The angle in space")
	d.tap("cure").sees("Ways to make it clear", "Works from")
	d.tap("way.1").sees("What it costs", "How far was looked", "Before you begin", "Chock the wheels")
	d.tap("try").sees("The build stays as it is", "Joint angle, rear joint", "out becomes clear")
	if d.has("way.1") || len(d.s.take.Build().Readings) != before {
		t.Error("trying changed the build, or shows keys that are not there")
	}
	d.tap("back").sees("What it costs").tap("back").sees("Ways to make it clear").tap("back").sees("Where the limit comes from")
	if f, ok := d.s.take.Opened(); !ok || !remedy.Asks(f) {
		t.Errorf("the finding is %s now", f.Verdict)
	}
	d.tap("back", "back")
}

// A search that is stopped leaves the finding as it was, and what comes of it later is not shown.
func TestASearchCanBeStopped(t *testing.T) {
	d := openInvented(t, phone, false, "demo.json")
	d.tap("more", "more.findings", "finding.joint.angle|rear|ride/kerb")
	f, _ := d.s.take.Opened()
	v, stopped := d.s.newCure(f), false
	v.asked = cure.Looking // as if it had begun, and went on
	d.s.visit(v)
	d.s.job = &job{owner: v, cancel: func() { stopped = true }}
	d.s.show()
	v.Progress(3, 9)
	d.s.show()
	d.sees("Looking for what to change", "3 of 9 parts").tap("cancel").sees("Where the limit comes from")
	if !stopped || d.s.working() {
		t.Error("the search goes on")
	}
}

// A finding names each reading that it rests on with its share of the doubt, and a tap goes to the reading.
func TestWhatAFindingRestsOn(t *testing.T) {
	d := openInvented(t, phone, false, "demo.json")
	d.tap("more", "more.findings", "finding.joint.angle|rear|ride/kerb", "rests").sees("rests on", "of the doubt", "Shaft slope")
	d.tap(d.nth("record.", 0)).sees("How it was taken")
	d.tap("back").sees("rests on").tap("back").sees("Where the limit comes from")
}

// After the program was killed the pages are there again.
func TestWhatToChangeIsThereAgain(t *testing.T) {
	d := openInvented(t, phone, false, "demo.json")
	d.tap("more", "more.findings", "finding.joint.angle|rear|ride/kerb", "rests")
	d.restart().sees("rests on")
	if got := d.s.cureOf(cureMark{Finding: "joint.angle|rear|" + measure.RideKerb.String()}); got == nil {
		t.Error("what to change is not there again")
	}
	if got := d.s.cureOf(cureMark{Finding: "joint.angle|nowhere|"}); got != nil {
		t.Errorf("of a finding that is not there: %v", got)
	}
}
