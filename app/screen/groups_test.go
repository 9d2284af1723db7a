package screen

import (
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"fyne.io/fyne/v2"

	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/route"
)

// The demo route by touch alone: 20 readings of one shaft in all its states. A reading whose state did
// not change takes at most its digits and two taps, the way to the next stop counted.
func TestTapsOfTheDemoRoute(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	values := map[string]struct{ number, side string }{
		"engine.rpm_max": {"5200", ""}, "gear.highest": {"0.83", ""}, "joint.angle_limit": {"20", ""}, "shaft.phase": {"0", ""},
		"datum.slope": {"0.4", "no"}, "gearbox.slope": {"2.4", "yes"}, "shaft.slope": {"5.3", "yes"}, "pinion.slope": {"2.1", "no"},
	}
	for n := range 20 {
		stop := d.s.take.Stop()
		v, ok := values[stop.Point.Key]
		if !ok {
			t.Fatalf("the route asks for %s", stop.Point.Key)
		}
		setup, taps := d.s.take.Stand().Setup, 0
		tap := func(name string) {
			taps++
			d.tap(name)
		}
		for _, r := range v.number {
			tap(map[bool]string{true: "key.decimal", false: "key." + string(r)}[r == '.'])
		}
		switch {
		case v.side != "":
			tap("keep." + v.side)
		case d.has("keep"):
			tap("keep")
		default:
			tap("keep.yes")
		}
		asked := d.has("laid.along.fore") // once in a setup, as the cautions are
		if asked {
			tap("laid.along.fore")
		}
		d.sees("KEPT")
		tap("next")
		for d.has("bring.done") || d.has("caution.ok") {
			if asked = true; d.has("bring.done") {
				d.tap("bring.done")
			} else {
				d.tap("caution.ok")
			}
		}
		same := !asked && d.s.take.Stand().Setup == setup && d.s.take.Stop().State == stop.State
		if most := utf8.RuneCountInString(v.number) + 2; same && taps > most {
			t.Errorf("reading %d, %s: %d taps for %q, want at most %d", n+1, stop.Point.Key, taps, v.number, most)
		}
	}
	d.sees("Before the shaft runs").tap("run.ok").sees("Every wanted stop is read")
}

// A group is entered from More, walked with the same pages, and the result page says what comes next
// and why; the caution stands before the first stop at the clutch.
func TestAGroupByTaps(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	all := 0
	for _, p := range measure.Points {
		if p.Group == measure.GroupClutch && p.In(measure.NewLayout()) {
			all++
		}
	}
	d.tap("more", "more.groups", "group.clutch stack").sees("Findings that wait for it", fmt.Sprintf("0 of %d stops", all))
	d.tap("group.enter").sees("Adapter plate thickness").read("12", "").sees("KEPT 12 mm", fmt.Sprintf("%d still to read of this group", all-1))
	d.tap("next", "caution.ok").read("5", "yes").tap("next").restart().sees(fmt.Sprintf("stop 3 of %d", all))
	d.tap("more", "more.route").turnTo("stop.fingers.height.bench")
	d.sees("Cover fingers height")
	d.tap("back", "more.leave").sees("Engine highest speed")
}

// The list of findings is cut down to one verdict by a tap, and turns through those that there are.
func TestFindingsAreCutDownToOneVerdict(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.ride/kerb").tap("bring.done", "caution.ok").read("2.4", "yes").on().read("17", "yes").on().read("2", "yes").tap("all")
	d.sees("Joints and angles", "All: ").tap("filter").sees("Only what is OUT")
	rows := 0
	for more := true; more; more = d.turn("down") {
		for _, s := range d.spots() {
			if strings.HasPrefix(s.name, "finding.") {
				rows++
				if word := strings.Fields(rowDetail(s.key))[0]; word != "out" {
					t.Errorf("%s says %q", s.name, word)
				}
			}
		}
	}
	if rows == 0 {
		t.Error("no finding is out")
	}
	for range 4 {
		if d.s.take.Filter() != checks.Unsaid {
			d.tap("filter")
		}
	}
	d.sees("All: ")
}

// A list that was turned over stays where it was while a page of it is looked at, after a kill too; left
// and opened again it begins at its top.
func TestAListStaysWhereItWasTurned(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("5200", "").tap("all")
	top := d.nth("finding.", 0)
	d.tap("down", "down")
	turned := d.nth("finding.", 0)
	if turned == top {
		t.Fatal("the list was not turned")
	}
	at := func(when, want string) {
		t.Helper()
		if got := d.nth("finding.", 0); got != want {
			t.Errorf("%s the list begins at %s, want %s", when, got, want)
		}
	}
	d.tap(turned, "back")
	at("back from a finding", turned)
	d.restart()
	at("after a kill", turned)
	d.tap(turned).restart().tap("back")
	at("back from a finding after a kill", turned)
	d.tap("back", "all")
	at("opened again", top)
}

// All readings stand newest first, or put together by what was read.
func TestReadingsByPoint(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("5200", "").on().read("0.83", "").tap("next", "more", "more.records").tap("records.order")
	d.sees("by what was read: 2", "Engine highest speed · readings: 1")
	if first := d.nth("record.", 0); d.find(first).pos.Y > d.find(d.nth("record.", 1)).pos.Y {
		t.Error("the rows stand upside down")
	}
	d.tap(d.nth("record.", 0)).sees("5200")
}

// A strike is undone on its own page, and later from the list.
func TestEveryStrikeIsUndone(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	count := func() int { return len(d.s.take.Build().CurrentReadings(func(measure.Reading) string { return "" })) }
	d.read("5200", "").tap("strike").sees("STRUCK").tap("keep.again").sees("KEPT 5200")
	if count() != 1 {
		t.Errorf("%d readings count", count())
	}
	d.tap("strike", "next", "more", "more.records").tap(d.nth("record.", 0), "keep.again").sees("KEPT 5200")
	if count() != 1 {
		t.Errorf("%d readings count after the second", count())
	}
}

// Every doubt is asked in one sentence with two answers, and both of them work: a slope that no part
// has, a load on hanging wheels, a setup that was used in another state.
func TestEveryDoubtHasTwoAnswers(t *testing.T) {
	for _, row := range []struct {
		name   string
		stands measure.State
		number string
	}{
		{"implausible", measure.RideKerb, "45"},
		{"contradiction", measure.State{Ride: measure.Droop, Load: measure.Kerb}, "2"},
		{"same setup", measure.RideKerb, "3"},
	} {
		t.Run(row.name, func(t *testing.T) {
			d := openDesk(t, phone, false)
			d.newBuild("Invented estate")
			if row.name == "same setup" { // read by a device that thought the vehicle still stood as before
				d.goTo("gearbox.slope.droop/none").tap("bring.done", "caution.ok").read("2", "yes")
			}
			d.s.take.Go(stopOf("gearbox.slope", row.stands))
			if row.name == "same setup" {
				d.s.take.Heeded()
				d.s.show()
			} else {
				d.s.take.Brought()
				d.s.take.Heeded()
				d.s.show()
			}
			d.read(row.number, "yes")
			if lines := strings.Split(d.text(), "\n"); len(d.page().answers) != 2 || len(lines) != 3 {
				t.Errorf("%d answers to:\n%s", len(d.page().answers), d.text())
			}
			d.tap("doubt.again").sees(row.number+"°").tap("keep.yes", "doubt.keep").sees("KEPT " + row.number + "°")
		})
	}
}

func stopOf(point string, s measure.State) route.Stop {
	p, _ := measure.PointOf(point)
	return route.Stop{Point: p, State: s}
}

func (d *desk) page() page { return d.s.page }

// A skip takes a reason in writing, as a strike does.
func TestSkipWithAWrittenReason(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.tap("more", "more.skip", "skip.other").tap("skip").sees("Why is it left out?")
	d.write("the plate is painted over").tap("skip").tap("more", "more.route").sees("left out: the plate is painted over")
}

// A half-written title of a new build is there again after a kill, and so is what was answered.
func TestANewBuildSurvivesAKill(t *testing.T) {
	d := openDesk(t, phone, false)
	d.tap("new").write("Invented est")
	d.restart()
	written := ""
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, _ fyne.Position) {
		if e, ok := o.(*part.Entry); ok {
			written = e.Text
		}
	})
	if written != "Invented est" {
		t.Errorf("the entry holds %q", written)
	}
	d.write("Invented estate").tap("go", "answer.2").restart()
	d.sees("Where does the sliding spline sit?").tap("answer.gearbox", "answer.leaf", "answer.single", "answer.single")
	if b := d.s.take.Build(); b.Title != "Invented estate" || b.Layout.Shafts != 2 {
		t.Errorf("title %q, %d shafts", b.Title, b.Layout.Shafts)
	}
	d.restart().sees("Engine highest speed")
}

// How the file was read back can be read again later.
func TestTheNotesAreReadAgain(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("5200", "")
	d.damage()
	d.restart().sees("Its file was damaged").tap("told.ok", "next", "more", "more.told").sees("Its file was damaged").tap("told.ok")
}
