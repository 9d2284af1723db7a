package screen

import (
	"flag"
	"fmt"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"yokebook/app/screen/take"
)

var pictures = flag.String("pictures", "", "write a picture of every page to this folder")

// album visits every page once, in the course of a session that has a bit of everything. shot is
// called on each page with its name.
func album(d *desk, shot func(name string)) {
	shot("builds-none")
	d.tap("new")
	shot("new-title")
	d.write("Estate, inline six and five-speed (invented)").tap("go")
	shot("new-shafts")
	d.tap("answer.1")
	shot("new-slip")
	d.tap("answer.shaft")
	shot("new-axle")
	d.tap("answer.leaf")
	shot("new-joint")
	d.tap("answer.single", "answer.single")
	shot("keypad-stated")
	d.read("5200", "")
	shot("result-first")
	d.on().read("1", "").on().read("20", "").on().read("0", "")
	d.tap("next")
	shot("bring-hanging")
	d.tap("bring.done")
	shot("caution-hanging")
	d.tap("caution.ok")
	shot("keypad-empty")
	d.tap("key.1", "key.decimal", "key.2")
	shot("keypad-typed")
	d.press(fyne.KeyReturn)
	shot("laying")
	d.tap("laid.along.fore")
	shot("side-front-high")
	d.tap("side.yes")
	shot("result-slope")
	d.on().read("94", "yes")
	shot("refused")
	d.tap("doubt.again", "key.erase", "key.erase").read("45", "yes")
	shot("doubt")
	d.tap("doubt.again").tap("key.erase", "key.erase").read("2.4", "yes").on().read("17", "yes").on().read("2.0", "yes")
	shot("result-droop")
	d.on().tap("stand.state")
	shot("stances")
	d.tap("back", "stand.height")
	shot("height")
	d.read("612", "").tap("stand.setup")
	shot("setup")
	d.tap("back").read("0.4", "no").on().read("2.4", "yes").on().read("5.3", "yes").on().read("2.0", "no")
	shot("result-ride")
	d.tap("all")
	shot("findings")
	d.tap("finding.joint.residual||ride/kerb")
	shot("finding-open")
	d.tap("back", "back", "again")
	shot("keypad-again")
	d.tap("more")
	shot("more-finder")
	d.tap("more.tool")
	shot("tools")
	d.tap("back", "more.zero")
	shot("reverse")
	d.tap("zero.begin")
	shot("keypad-reversal")
	d.read("2.0", "no")
	shot("turn")
	d.tap("zero.turned", "key.1", "key.decimal", "key.8")
	shot("keypad-turned")
	d.read("", "no")
	shot("zero")
	d.tap("all")
	for !d.has("finding.reading.zero|finder|") {
		d.tap("down")
	}
	d.tap("finding.reading.zero|finder|")
	shot("finding-zero")
	d.tap("back", "back", "next")
	d.goTo("pinion.slope.ride/kerb").tap("stand.laid")
	shot("laying-known")
	d.tap("laid.rear.up")
	shot("keypad-on-a-face")
	d.read("88", "yes")
	for range 3 {
		d.tap("again").read("88.1", "yes")
	}
	d.tap("again").read("80", "yes")
	for d.has("doubt.keep") {
		d.tap("doubt.keep")
	}
	shot("repeats")
	d.tap("strike")
	shot("struck")
	d.tap("next")
	d.goTo("shaft.length.ride/kerb").tap("more", "more.records")
	shot("records")
	d.tap("records.order")
	shot("records-by-point")
	d.tap("records.order")
	d.tap(d.nth("record.", 0))
	shot("record-struck")
	d.tap("back").tap(d.nth("record.", 1))
	shot("record")
	d.tap("strike")
	shot("reasons")
	d.tap("strike.other")
	shot("reason")
	d.tap("back", "back", "correct")
	shot("correct")
	d.tap("correct.end", "more")
	shot("more")
	d.tap("more.skip")
	shot("skips")
	d.tap("back", "more.route")
	shot("route")
	d.tap("back", "more.findings")
	for d.turn("down") {
	}
	shot("findings-last")
	d.tap("filter")
	shot("findings-out")
	d.tap("back", "back")
	groupAlbum(d, shot)
	d.goTo("tyre.code.bench")
	shot("write")
	d.tap("more", "more.builds")
	shot("builds")
	d.damage()
	d.restart()
	shot("builds-damaged")
	d.tap("build.*")
	shot("told")
	d.tap("told.ok")
	endAlbum(d, shot)
	d.tap("more.builds")
	cureAlbum(d, shot)
}

// groupAlbum visits the pages of what is measured beyond the shaft line.
func groupAlbum(d *desk, shot func(name string)) {
	d.tap("more", "more.groups")
	shot("groups")
	d.tap("group.mass and mounts")
	shot("group")
	d.tap("group.enter")
	shot("caution-lift")
	d.tap("caution.ok").read("412", "")
	shot("result-group")
	d.tap("next", "more", "more.groups", "group.mass and mounts")
	shot("group-begun")
	d.tap("back", "group.clearance", "group.enter")
	for d.has("bring.done") || d.has("caution.ok") {
		if d.has("bring.done") {
			d.tap("bring.done")
		} else {
			d.tap("caution.ok")
		}
	}
	shot("keypad-obstacle")
	d.read("75", "").tap("next", "more", "more.groups", "group.clearance", "group.enter")
	shot("obstacles")
	d.tap("obstacle.new", "more", "more.route")
	shot("route-group")
	d.tap("back", "back")
	d.goTo("shaft.length.ride/kerb")
	for d.has("bring.done") || d.has("caution.ok") {
		if d.has("bring.done") {
			d.tap("bring.done")
		} else {
			d.tap("caution.ok")
		}
	}
	d.tap("more", "more.skip", "skip.other")
	shot("skip-note")
	d.tap("back", "back", "back")
}

// endAlbum leaves out every stop and visits the pages at the end of the route.
func endAlbum(d *desk, shot func(name string)) {
	for _, g := range d.s.take.Groups() {
		d.s.take.LeaveGroup(g.Group)
	}
	for n := 0; d.s.take.Page() != take.Run && n < 200; n++ {
		d.s.take.Skip("later")
	}
	d.s.show()
	shot("before-the-run")
	d.tap("run.ok")
	shot("done")
}

// albums are the ways through the pages, by name; each begins with a desk of its own.
var albums = []struct {
	name string
	see  func(t *testing.T, g pane, shot func(d *desk, name string))
}{
	{"", func(t *testing.T, g pane, shot func(*desk, string)) {
		d := g.desk(t)
		album(d, func(name string) { shot(d, name) })
	}},
	{"shelf-", func(t *testing.T, g pane, shot func(*desk, string)) {
		d := g.desk(t)
		shelfAlbum(d, func(name string) { shot(d, name) })
	}},
	{"places-", func(t *testing.T, g pane, shot func(*desk, string)) { placesAlbum(t, g, shot) }},
	{"handover-", func(t *testing.T, g pane, shot func(*desk, string)) {
		d, _ := g.desk(t).handover()
		counterAlbum(d, func(name string) { shot(d, name) })
	}},
	{"drawing-", func(t *testing.T, g pane, shot func(*desk, string)) {
		for _, build := range []string{"demo", "gearbox-slip", "links-two-piece"} {
			d := g.desk(t).drawings(build)
			gallery(d, func(name string) { shot(d, build+"-"+name) })
		}
	}},
}

// TestPictures lays every page out in every size, theme and language. With -pictures DIR it writes
// them there to be looked at, a folder for each:
//
//	go test ./app/screen -run Pictures -pictures DIR
func TestPictures(t *testing.T) {
	if *pictures == "" {
		t.Skip("no folder for pictures given: -pictures DIR")
	}
	for _, g := range panes() {
		t.Run(g.name(), func(t *testing.T) {
			dir := filepath.Join(*pictures, g.name())
			if err := os.MkdirAll(dir, 0o755); err != nil {
				t.Fatal(err)
			}
			for _, a := range albums {
				n := 0
				a.see(t, g, func(d *desk, page string) {
					n++
					file := fmt.Sprintf("%s%02d-%s.png", a.name, n, strings.ReplaceAll(page, "/", "-"))
					savePicture(t, d.w.Canvas().Capture(), filepath.Join(dir, file))
				})
			}
		})
	}
}

func savePicture(t *testing.T, img image.Image, path string) {
	t.Helper()
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, img); err != nil {
		t.Fatal(err)
	}
}
