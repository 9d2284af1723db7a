package screen

import (
	"fmt"
	"testing"

	"yokebook/app/device"
	"yokebook/app/words"
)

// shelfAlbum visits the pages of the list of builds, of the settings and of the instruments.
func shelfAlbum(d *desk, shot func(name string)) {
	d.s.inline = true
	files := []device.Picked{buildFile(d.t, 1), {Name: "photo-of-the-gearbox.json", Data: []byte("no build")}, buildFile(d.t, 2)}
	d.s.On(device.Device{Pickers: hands{files: files}})
	d.tap("more")
	shot("builds-more-none")
	d.tap("import")
	shot("import-came")
	d.tap("ok")
	shot("builds-imported")
	d.shelfOf(9)
	d.newBuild("Estate, inline six and five-speed (invented)").read("5200", "").tap("again").tap("more").reach("more.builds")
	shot("builds-many")
	d.tap("search")
	shot("search")
	d.write("invented 7")
	shot("search-found")
	d.write("nothing like it")
	shot("search-nothing")
	d.tap("back", "more")
	shot("builds-more")
	d.tap("duplicate")
	shot("duplicate-of")
	d.tap("from.*")
	shot("duplicate-ask")
	d.tap("back", "back").reach("settings")
	shot("settings")
	for d.turn("down") {
		shot("settings-2")
	}
	for _, key := range []string{"length", "angle", "theme", "text", "hand", "language", "decimal"} {
		d.reach("setting." + key)
		shot("setting-" + key)
		d.tap("back")
	}
	d.tap("back", "back")
	d.readyForASlope().tap("more").reach("more.instruments")
	shot("instruments-none")
	d.tap("tool.new")
	shot("instrument-kind")
	d.tap("kind.caliper")
	shot("instrument-unit")
	d.tap("unit.mm")
	shot("instrument-name")
	d.tap("noname", "key.0", "key.decimal", "key.0", "key.1")
	shot("instrument-step")
	d.tap("keep")
	shot("instrument-accuracy")
	d.tap("keep")
	d.tap("tool.new", "kind.angle").write("finder with the red strap").tap("go", "key.0", "key.decimal", "key.1", "keep", "key.0", "key.decimal", "key.2", "keep")
	shot("instruments")
	d.tap("instrument.angle")
	shot("instrument")
	d.tap("tool.change")
	shot("instrument-change")
	d.tap("back", "tool.reverse", "zero.begin").read("2.0", "yes").tap("zero.turned").read("1.4", "yes")
	d.tap("next", "more").reach("more.instruments").tap("instrument.angle")
	shot("instrument-found")
	d.leavePages().tap("back")
	d.settingsOfBuild().set("hand", "left").set("angle", "dm").leavePages().tap("back")
	d.goTo("pinion.slope.droop/none")
	d.tap("key.2", "key.decimal", "key.3", "key.0")
	shot("keypad-left-minutes")
}

// The pages of the list, the settings and the instruments are whole at every size, in every language,
// at the middle and the large size of text.
func TestShelfPagesFit(t *testing.T) {
	for _, l := range least {
		for _, lang := range words.Languages {
			for _, text := range []string{"middle", "large"} {
				if (text == "large") != (lang == words.English) && l.size != small {
					continue // one of the two suffices: the smallest glass has all
				}
				name := fmt.Sprintf("%.0fx%.0f-%s-%s", l.size.Width, l.size.Height, lang.Tag, text)
				t.Run(name, func(t *testing.T) {
					d := openDeskIn(t, lang, t.TempDir(), l.size, false)
					d.tap("more", "settings").set("text", text)
					if text == "large" {
						d.set("theme", "sun")
					}
					d.leavePages()
					shelfAlbum(d, func(page string) {
						checkKeys(t, d, page, l.key, l.gap)
						checkTexts(t, d, page)
						if min := d.s.Content().MinSize(); min.Width > l.size.Width || min.Height > l.size.Height {
							t.Errorf("%s needs %v", page, min)
						}
					})
				})
			}
		}
	}
}
