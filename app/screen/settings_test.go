package screen

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"yokebook/app/screen/look"
)

// set chooses one thing on the settings pages.
func (d *desk) set(key, choice string) *desk {
	d.t.Helper()
	return d.reach("setting." + key).tap("choice." + choice)
}

// leavePages goes back from the pages that lie over the others.
func (d *desk) leavePages() *desk {
	d.t.Helper()
	for d.s.top() != nil {
		d.tap("back")
	}
	return d
}

// settingsOfBuild opens the settings from the Take screen.
func (d *desk) settingsOfBuild() *desk {
	d.t.Helper()
	d.tap("more")
	return d.reach("more.settings")
}

// readyForASlope starts a build and goes to a slope.
func (d *desk) readyForASlope() *desk {
	d.t.Helper()
	d.newBuild("Invented estate").goTo("gearbox.slope.droop/none")
	for d.has("bring.done") || d.has("caution.ok") {
		if d.has("bring.done") {
			d.tap("bring.done")
		} else {
			d.tap("caution.ok")
		}
	}
	return d
}

func TestSettingsTakeEffectAtOnceAndAfterARestart(t *testing.T) {
	d := openDesk(t, phone, false)
	d.tap("more", "settings").sees("Lengths in", "Millimetres")
	d.set("length", "in").sees("Inches").set("hand", "left").set("text", "large").set("theme", "sun").sees("High contrast, for the sun")
	check := func(when string) {
		t.Helper()
		if got := look.Now(); got != look.Sun {
			t.Errorf("%s: not the palette for the sun", when)
		}
		if got := look.Scaled(10); got != 14 {
			t.Errorf("%s: 10 is scaled to %.1f, want 14", when, got)
		}
	}
	check("at once")
	d.restart()
	fyne.CurrentApp().Settings().SetTheme(d.s.look())
	check("after a restart")
	d.leavePages().newBuild("Invented estate").goTo("shaft.length.ride/kerb")
	for d.has("bring.done") || d.has("caution.ok") {
		if d.has("bring.done") {
			d.tap("bring.done")
		} else {
			d.tap("caution.ok")
		}
	}
	if got := asRead(d.s.shown()); got != "– in" {
		t.Errorf("lengths are typed as %q", got)
	}
	if keep, digit := d.find("keep"), d.find("key.7"); keep.pos.X > phone.Width/4 || digit.pos.X > d.find("key.9").pos.X {
		t.Errorf("for the left hand KEEP is at %v, 7 at %v", keep.pos, digit.pos)
	}
	d.read("48.5", "").sees("48.5 in").tap("again")
	d.settingsOfBuild().set("length", "mm").leavePages()
	d.reach("more.records").sees("(48.5 in)", "1232")
}

func TestAnglesAreTypedAndShownInDegreesAndMinutes(t *testing.T) {
	d := openDesk(t, phone, false)
	d.readyForASlope().settingsOfBuild().set("angle", "dm").leavePages().tap("back")
	d.tap("key.2", "key.decimal", "key.7", "key.5")
	if got := asRead(d.s.shown()); got != "2°75′" {
		t.Errorf("the display shows %q", got)
	}
	d.tap("keep.yes").sees("A degree has 60 minutes")
	d.tap("key.erase", "key.erase").read("30", "yes").sees("2°30")
	r := d.s.take.Kept().Reading
	if r.Value.Token() != "2.5" || r.Entered != "2°30'" || r.Unit != "deg" {
		t.Errorf("kept %s %s, entered %q", r.Value.Token(), r.Unit, r.Entered)
	}
	if got := r.Step(); got < 1.0/60-1e-12 || got > 1.0/60+1e-12 {
		t.Errorf("one step is %v degrees, want a minute", got)
	}
}

func TestDamagedSettingsAreDefaultsWithOneLine(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "settings.json")
	if err := os.WriteFile(path, []byte(`{"format":"yokebook-settings/1","theme":`), 0o644); err != nil {
		t.Fatal(err)
	}
	d := openDeskOn(t, dir, phone, false)
	d.tap("more", "settings").sees("could not be read", "Millimetres")
	d.set("length", "in")
	if strings.Contains(d.text(), "could not be read") {
		t.Error("the line stays after the settings were saved")
	}
	if _, err := os.Stat(path + ".damaged"); err != nil {
		t.Error(err)
	}
	d.restart().sees("Inches")
}

func TestSettingsThatCanNotBeSavedSaySo(t *testing.T) {
	d := openDesk(t, phone, false)
	if err := os.MkdirAll(filepath.Join(d.dir, "settings.json", "in the way"), 0o755); err != nil {
		t.Fatal(err)
	}
	d.tap("more", "settings").set("length", "in").sees("could not be saved", "Inches")
}

func TestTheLanguageRebuildsTheScreens(t *testing.T) {
	d := openDesk(t, phone, false)
	d.tap("more", "settings").set("language", "de")
	if d.s.lang.Tag != "de" || strings.Contains(d.text(), "Lengths in") {
		t.Errorf("the language is %s; the page says:\n%s", d.s.lang.Tag, d.text())
	}
	d.set("language", "en").sees("Lengths in")
}
