package screen

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/mobile"
	"fyne.io/fyne/v2/test"

	"yokebook/app/screen/part"
	"yokebook/measure"
)

// Slopes of 2.4, 17 and 2 give 14.6 and 15.0 at the two joints, ends within 0.4, and yet a residual
// of 3.48: common practice, no source; the residual worked apart.
func TestReadingsBecomeFindings(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.ride/kerb")
	for d.has("bring.done") || d.has("caution.ok") {
		if d.has("bring.done") {
			d.tap("bring.done")
		} else {
			d.tap("caution.ok")
		}
	}
	d.read("2.4", "yes").sees("KEPT 2.4°, FRONT end high", "NEXT: shaft slope", "waiting · shaft slope, at ride height")
	d.on().read("17", "yes").on().read("2", "yes")
	d.sees("What this changed, worst first")
	d.tap("all").sees("out · 14.6°", "out · 15.0°", "at most 3°")
	d.tap("finding.joint.angle|rear|ride/kerb").sees("Joint angle, rear joint", "out", "15.0°", "What to do",
		"Where the limit comes from", "Side view only")
	d.tap("rests").sees("Shaft slope: 17°, FRONT end high").tap("back")
	d.tap("back", "finding.joint.residual||ride/kerb").sees("unsure", "3.5°")
	if f, ok := d.s.take.Opened(); !ok || math.Abs(*f.Value-3.479) > 0.001 {
		t.Errorf("residual %v", *f.Value)
	}
}

// After a keep the finding of the worst verdict stands first.
func TestTheWorstStandsFirst(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	album := []struct{ stop, number, side string }{
		{"gearbox.slope.ride/kerb", "2", "yes"}, {"shaft.slope.ride/kerb", "4", "yes"}, {"pinion.slope.ride/kerb", "9", "no"},
	}
	d.goTo(album[0].stop).tap("bring.done", "caution.ok")
	for i, r := range album {
		if i > 0 {
			d.on()
		}
		d.read(r.number, r.side)
	}
	rank := map[string]int{"out": 0, "unsure": 1, "waiting": 2, "clear": 3, "not": 4}
	last := -1
	for _, s := range d.spots() {
		if !strings.HasPrefix(s.name, "finding.") {
			continue
		}
		word := strings.Fields(rowDetail(s.key))[0]
		now, ok := rank[strings.TrimRight(word, ",")]
		if !ok || now < last {
			t.Errorf("%s (%s) stands after rank %d", s.name, word, last)
		}
		last = now
	}
	if last < 0 {
		t.Fatal("no finding on the result page")
	}
}

// rowDetail is the second line of a row.
func rowDetail(k *part.Key) string {
	var lines []string
	walk(k, fyne.NewPos(0, 0), func(o fyne.CanvasObject, _ fyne.Position) {
		if text, ok := o.(*part.Text); ok {
			lines = append(lines, text.Words)
		}
	})
	return lines[len(lines)-1]
}

// A reading takes its digits and two taps: keep, with its side where it has one, and next. The first
// of a setup takes one more,
// for how the finder lies.
func TestTapsPerReading(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.droop/none").tap("bring.done", "caution.ok")
	d.tap("key.2", "key.decimal", "key.4", "keep.yes", "laid.along.fore").sees("KEPT 2.4°")
	d.tap("next", "key.1", "key.7", "keep.yes").sees("KEPT 17°")
	if got := d.s.take.Kept().Reading; got.Way != 1 || got.Lay != "along" {
		t.Errorf("kept with way %d, lay %q", got.Way, got.Lay)
	}
}

// State, load, height and setup are changed in two taps from the keypad (the height by its keypad).
func TestTheStandIsTwoTapsAway(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.droop/none").tap("bring.done", "caution.ok").sees("hanging", "no weight")
	d.tap("stand.state", "stance.ride/laden")
	if got := d.s.take.Stand().State; got != measure.RideLaden {
		t.Errorf("stands %s", got)
	}
	d.tap("caution.ok").sees("on wheels", "laden")
	d.read("1", "yes").on().tap("stand.setup", "setup.moved")
	if got := d.s.take.Stand().Setup; got != 2 {
		t.Errorf("setup %d", got)
	}
	d.tap("caution.ok", "stand.height").read("612", "").sees("612 mm")
}

// How the finder lies is seen on the keypad and changed in two taps.
func TestTheFinderIsTwoTapsAway(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.droop/none").tap("bring.done", "caution.ok").sees("FINDER ?")
	d.tap("stand.laid", "laid.along.aft").sees("FINDER")
	d.tap("key.2", "keep.yes").sees("KEPT 2°")
	if got := d.s.take.Kept().Reading; got.Way != 2 {
		t.Errorf("way %d", got.Way)
	}
	d.tap("next")
	d.goTo("shaft.length.ride/kerb").tap("bring.done", "caution.ok")
	if d.has("stand.laid") {
		t.Error("a tape has no ends to tell apart")
	}
}

// A build that knows no finder gets one where it is read with, and so a zero that its readings share.
func TestTheFinderBecomesKnown(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.droop/none").tap("bring.done", "caution.ok", "more").turnTo("more.tool")
	d.sees("Read with: Not said").tap("more.tool", "tool.none", "more.tool", "tool.new").turnTo("more.tool")
	d.sees("Read with: angle finder").tap("back").read("2", "yes").sees("KEPT 2°")
	if got := d.s.take.Kept().Reading.Instrument; got != "finder" {
		t.Errorf("read with %q", got)
	}
	d.tap("again", "more", "more.tool")
	if d.has("tool.new") {
		t.Error("offers another one")
	}
}

// The zero of a finder in two readings, from More and again from its finding: 2.6 and, turned in the
// same place, 2.2 leave 0.2 too much (reversal of a spirit level; worked apart from this code).
func TestTheFindersZero(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.ride/kerb").tap("bring.done", "caution.ok")
	d.tap("more", "more.zero").sees("Find the finder's zero", "Gearbox slope, at ride height", "must not move")
	d.tap("zero.begin").sees("reading 1 of 2", "Lay the finder like this")
	d.read("2.6", "yes").sees("turn the finder end for end", "2.6°, FRONT end high")
	d.tap("zero.turned").sees("reading 2 of 2", "Turned end for end in the same place")
	d.read("2.2", "yes").sees("setup 1: turned end for end, its zero stands at 0.2°")
	d.tap("all")
	for !d.has("finding.reading.zero|finder|") && d.turn("down") {
	}
	d.tap("finding.reading.zero|finder|").sees("clear", "turned end for end, its zero stands at 0.2°")
	d.tap("zero", "zero.begin").sees("reading 1 of 2").tap("zero.end").sees("read 2 times already")
}

func TestStrikeOnTheResultPage(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("5200", "").tap("strike").sees("STRUCK 5200 rev/min", "NEXT: engine highest speed")
	if d.has("strike") {
		t.Error("what is struck can be struck again")
	}
	d.tap("next").read("5400", "").sees("KEPT 5400 rev/min")
}

// Undo is two taps away from a stop.
func TestUndoTheLastEntry(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.tap("more")
	if d.has("more.undo") {
		t.Error("something to undo in a new build")
	}
	d.tap("back").read("5200", "").tap("next", "more", "more.undo").sees("STRUCK 5200 rev/min", "NEXT: engine highest speed")
}

// A wrong value is found in the list, corrected and shown as corrected; then it is struck with a
// reason, and used again.
func TestCorrectAndStrikeFromTheList(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("2500", "").on().read("0.83", "").tap("next")
	d.tap("more", "more.records").sees("newest first: 2", "Engine highest speed: 2500 rev/min")
	d.tap(d.nth("record.", 1)).sees("counts", "Off the vehicle", "Stated", "On this device").tap("correct")
	d.sees("Corrects 2500 rev/min", "Type the right value").read("5200", "").sees("KEPT 5200 rev/min", "NEXT: joint angle limit")
	d.tap("next", "more", "more.records").sees("corrected to 5200 rev/min")
	d.tap(d.nth("record.", 0)).sees("Stands in place of an earlier value")
	d.tap("strike", "strike.misread").sees("STRUCK 5200 rev/min")
	d.tap("next", "more", "more.records").sees("struck: Misread or mistyped")
	struck := 0
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, _ fyne.Position) {
		if text, ok := o.(*part.Text); ok && text.Struck {
			struck++
		}
	})
	if struck != 1 {
		t.Errorf("%d readings look struck", struck)
	}
	d.tap(d.nth("record.", 0)).tap("keep.again").sees("KEPT 5200 rev/min")
}

// A reason may be written.
func TestStrikeWithAWrittenReason(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("5200", "").tap("next", "more", "more.records")
	d.tap(d.nth("record.", 0)).tap("strike", "strike.other").tap("strike").sees("Why is it struck?", "Read the tool")
	d.write("the plate is of another engine").tap("strike").sees("STRUCK")
	d.tap("next", "more", "more.records").sees("struck: the plate is of another engine")
}

// Repeats stand side by side after each keep; the one that stands apart is marked by a shape.
func TestRepeatsAreShown(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.ride/kerb").tap("bring.done", "caution.ok")
	d.read("2.4", "yes")
	if strings.Contains(d.text(), "readings: 1") {
		t.Error("one reading has no repeats")
	}
	for _, number := range []string{"2.5", "2.4", "9.0"} {
		d.tap("again").read(number, "yes")
	}
	d.sees("4 readings", "2.5°", "9.0° stands apart", "Spread of repeated readings, gearbox slope")
}

// What nobody has begun to read stands last in the list, under its own heading.
func TestWhatIsNotBegunStandsLast(t *testing.T) {
	d := openDesk(t, small, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.ride/kerb").tap("bring.done", "caution.ok").read("2.4", "yes").tap("all")
	begun, heading := 0, false
	for {
		for _, line := range strings.Split(d.text(), "\n") {
			switch {
			case strings.HasPrefix(line, "Not begun: "):
				heading = true
			case strings.HasPrefix(line, "waiting ·"):
				begun++
				if heading {
					t.Errorf("%q stands after what is not begun", line)
				}
			case line == "not begun" && !heading:
				t.Error("what is not begun stands before its heading")
			}
		}
		if !d.turn("down") {
			break
		}
	}
	if begun == 0 || !heading {
		t.Errorf("%d begun, heading %v", begun, heading)
	}
}

func TestSkipWithAReason(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.tap("more", "more.skip", "skip.later").sees("Gear highest ratio")
	d.tap("more", "more.route").sees("left out: Later")
}

func TestUnitSwitch(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("shaft.length.ride/kerb").tap("bring.done", "caution.ok").sees("– mm")
	d.tap("more", "more.unit").sees("– in")
	d.read("47.5", "").sees("KEPT 1206 mm (47.5 in)")
}

func TestAnImpossibleValueIsRefusedInWords(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.droop/none").tap("bring.done", "caution.ok")
	d.read("94", "yes").sees("This was not kept", "Gearbox slope 94° is beyond ±90°")
	d.tap("doubt.again").sees("94°").tap("key.erase", "key.erase").read("9.4", "yes").sees("KEPT 9.4°")
}

// The window opens again at the same stop with what was half typed there, also after a kill: nothing
// is saved when it closes. A build that was left is found in the list and goes on at its stop.
func TestOpenedAgain(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("5200", "").on().tap("key.0", "key.decimal")
	d.restart().sees("Gear highest ratio", "0.").tap("key.8", "more", "more.builds")
	d.restart().sees("Builds on this device", "Invented estate", "readings: 1").tap("build.*").sees("Gear highest ratio", "0.8")
	d.goTo("gearbox.slope.ride/kerb").tap("bring.done", "caution.ok", "stand.laid", "laid.rear.down", "key.8", "key.7")
	d.restart().sees("Gearbox slope", "87°", "on wheels").tap("keep.yes").sees("KEPT 87°")
	if got := d.s.take.Kept().Reading; got.Way != 1 || got.Lay != "face" {
		t.Errorf("kept with way %d, lay %q", got.Way, got.Lay)
	}
}

// A half-written text is there again too.
func TestOpenedAgainWhileWriting(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.goTo("tyre.code.bench").write("205/55 R")
	d.restart()
	found := ""
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, _ fyne.Position) {
		if e, ok := o.(*part.Entry); ok {
			found = e.Text
		}
	})
	if found != "205/55 R" {
		t.Errorf("the entry holds %q", found)
	}
}

// damage puts what is no record at the end of the file of the one build, as a fault of the disk does.
func (d *desk) damage() {
	d.t.Helper()
	if err := d.s.Close(); err != nil {
		d.t.Fatal(err)
	}
	files, err := filepath.Glob(filepath.Join(d.dir, "builds", "*.db"))
	if err != nil || len(files) != 1 {
		d.t.Fatalf("files of builds: %v, %v", files, err)
	}
	data, err := os.ReadFile(files[0])
	if err != nil {
		d.t.Fatal(err)
	}
	data[len(data)/2] ^= 0xFF
	if err := os.WriteFile(files[0], data, 0o644); err != nil {
		d.t.Fatal(err)
	}
}

// A build whose file was damaged says so in one line in the list, tells the rest when it is opened,
// once, and has its readings.
func TestADamagedBuildTellsWhatWasRecovered(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("5200", "").on().read("0.83", "").tap("next", "more", "more.builds")
	d.damage()
	d.restart().sees("Invented estate", "Its file was damaged: open it to see")
	d.tap("build.*").sees("Its file was damaged", "The file was damaged", "snapshots: 2").tap("told.ok")
	if got := len(d.s.take.Build().Readings); got != 2 {
		t.Errorf("%d readings are left", got)
	}
	d.tap("more", "more.builds")
	if strings.Contains(d.text(), "Its file was damaged") {
		t.Error("says it again though it is mended")
	}
}

// A program that was killed with a build open tells of damage at the next start.
func TestADamagedBuildTellsAtTheStart(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.read("5200", "")
	d.damage()
	d.restart().sees("Its file was damaged")
	d.press(fyne.KeyRight)
	d.press(fyne.KeyReturn)
	d.sees("KEPT 5200")
}

func TestTwoShafts(t *testing.T) {
	d := openDesk(t, phone, false)
	d.tap("new").write("Invented van").tap("go", "answer.2", "answer.gearbox", "answer.links", "answer.single", "answer.double")
	if got := d.s.take.Build().Layout; got.Shafts != 2 || got.Slip != "gearbox" || got.Axle != "links" || got.RearJoint != "double" {
		t.Errorf("layout %+v", got)
	}
	d.goTo("front_shaft.slope.ride/kerb").tap("bring.done", "caution.ok").sees("Front shaft slope")
}

// A hardware keyboard does the same as the keys.
func TestKeyboard(t *testing.T) {
	d := openDesk(t, desktop, false)
	d.newBuild("Invented estate")
	d.types("53")
	d.press(fyne.KeyBackspace)
	d.types("200")
	d.press(fyne.KeyReturn)
	d.sees("KEPT 5200 rev/min")
	d.press(fyne.KeyReturn)
	d.sees("Gear highest ratio")
	d.types("0,83")
	d.press(fyne.KeyEnter)
	d.sees("KEPT 0.83")
	d.press(fyne.KeyRight)
	d.sees("Joint angle limit")
	d.press(fyne.KeyLeft)
	d.sees("Gear highest ratio", "read once already")
	d.tap("more")
	d.press(fyne.KeyEscape)
	d.sees("Gear highest ratio")
}

// After a title that ended with Enter the keyboard works the next page, not the entry that is gone.
func TestKeyboardLeavesTheEntry(t *testing.T) {
	d := openDesk(t, desktop, false)
	d.tap("new")
	d.types("Invented estate").press(fyne.KeyReturn)
	d.types("2")
	d.sees("Where does the sliding spline sit?")
	if got := d.s.fresh.Layout().Shafts; got != 2 {
		t.Errorf("%d shafts", got)
	}
}

// On a page of big answers the keyboard picks one by its place.
func TestKeyboardPicksAnswers(t *testing.T) {
	d := openDesk(t, desktop, false)
	d.newBuild("Invented estate")
	d.goTo("gearbox.slope.droop/none").tap("bring.done", "caution.ok")
	d.types("2.4")
	d.press(fyne.KeyReturn)
	d.types("1")
	d.types("2")
	d.sees("KEPT 2.4°, REAR end high")
}

// The back key of a phone leaves page after page and then the build.
func TestTheBackKeyOfAPhone(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.tap("more", "more.route")
	d.press(mobile.KeyBack)
	d.press(mobile.KeyBack)
	d.sees("Engine highest speed")
	d.press(mobile.KeyBack)
	d.sees("Builds on this device")
	d.press(mobile.KeyBack)
	d.sees("Builds on this device")
}

// press presses a key of the keyboard: a focused widget gets it, else the page.
func (d *desk) press(key fyne.KeyName) {
	event := &fyne.KeyEvent{Name: key}
	if focused := d.w.Canvas().Focused(); focused != nil {
		focused.TypedKey(event)
		return
	}
	d.w.Canvas().OnTypedKey()(event)
}

// types types on the keyboard, likewise.
func (d *desk) types(text string) *desk {
	if focused := d.w.Canvas().Focused(); focused != nil {
		test.Type(focused, text)
		return d
	}
	test.TypeOnCanvas(d.w.Canvas(), text)
	return d
}

// The soft keyboard comes up for a focused widget only; under a key nothing scrolls, or a wobble
// would eat the tap.
func TestNoFocusAndNothingScrollsUnderKeys(t *testing.T) {
	d := openDesk(t, phone, false)
	album(d, func(page string) {
		writes := page == "new-title" || page == "write" || page == "reason" || page == "skip-note"
		if focused := d.w.Canvas().Focused(); (focused != nil) != writes {
			t.Errorf("%s: focused is %T", page, focused)
		}
		walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, _ fyne.Position) {
			scroll, ok := o.(*container.Scroll)
			if !ok {
				return
			}
			walk(scroll, fyne.NewPos(0, 0), func(o fyne.CanvasObject, _ fyne.Position) {
				if key, ok := o.(*part.Key); ok {
					t.Errorf("%s: %s lies in something that scrolls", page, key.Name)
				}
			})
		})
	})
}

// Both themes show every page; in the dark one the paper is dark.
func TestBothThemes(t *testing.T) {
	for _, dark := range []bool{false, true} {
		t.Run(fmt.Sprint("dark ", dark), func(t *testing.T) {
			d := openDesk(t, phone, dark)
			album(d, func(page string) {
				r, _, _, _ := d.w.Canvas().Capture().At(2, 2).RGBA()
				if (r>>8 < 60) != dark {
					t.Errorf("%s: paper is %d", page, r>>8)
				}
			})
		})
	}
}

// A page turned on its side shows the same and loses nothing.
func TestTurnedOnItsSide(t *testing.T) {
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate")
	d.tap("key.5", "key.2")
	d.w.Resize(onSide)
	d.tap("key.0", "key.0").sees("5200")
	d.w.Resize(phone)
	d.tap("keep").sees("KEPT 5200")
}
