package screen

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"testing"

	"yokebook/app/device"
	"yokebook/app/words"
)

// placesAlbum visits every page of places, offers and files once.
func placesAlbum(t *testing.T, g pane, shot func(d *desk, name string)) {
	t.Helper()
	stick := filepath.Join(media(t), "stick of the shop")
	if err := os.Mkdir(stick, 0o755); err != nil {
		t.Fatal(err)
	}
	first := g.desk(t)
	shot(first, "builds-none")
	a := first.connect()
	a.s.On(device.Device{Pickers: &tray{saved: map[string][]byte{}}})
	see := func(name string) { shot(a.desk, name) }
	see("builds-none-connected")
	a.newBuild("Estate, inline six and five-speed (invented)").read("5200", "").on().tap("more").reach("more.places")
	see("places-none")
	a.tap("places.add")
	see("add-kind")
	a.tap("add.folder")
	see("add-folder")
	a.write(filepath.Join(stick, "not there")).tap("add.go")
	see("add-folder-refused")
	a.tap("back", "add.device")
	see("add-device")
	a.tap("back", "add.server")
	see("add-server")
	server := askingServer(t, t.TempDir())
	a.write(server.URL).tap("add.go")
	see("add-trust")
	a.tap("trust.yes")
	see("add-user")
	a.write("me").tap("add.go")
	see("add-password")
	a.write("right").tap("add.go")
	a.idle()
	see("place-kept")
	a.tap("back", "places.add", "add.folder").write(stick).tap("add.go")
	a.idle()
	files, _ := filepath.Glob(filepath.Join(stick, "*.json"))
	data, err := os.ReadFile(files[0])
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(stick, "build (1).json"), data, 0o644); err != nil {
		t.Fatal(err)
	}
	a.tap("place.sync")
	a.idle()
	see("place-copies")
	a.reach("place.tidy")
	see("tidy")
	a.tap("tidy.yes")
	see("place-tidied")
	a.reach("place.builds")
	see("place-builds")
	a.tap("back").reach("place.forget")
	see("forget")
	a.tap("back", "back")
	see("places")
	if err := os.RemoveAll(stick); err != nil {
		t.Fatal(err)
	}
	a.reach("place." + stick).reach("place.sync")
	a.idle()
	see("place-gone")
	a.tap("back").reach("places.files")
	see("files")
	a.tap("files.save")
	see("files-saved")
	a.tap("back").reach("places.offer")
	see("offer-ask")
	a.tap("offer.here")
	a.until("the invitation is there", func() bool { return a.has("offer.stop") })
	see("offer")
	b := otherDesk(t, phone).connect()
	b.tap("places", "places.add", "add.device").write(a.s.sharing.Offering().Invitation.String()).tap("add.go")
	both(a, b, "a knows b", func() bool { return a.s.sharing.Offering().Newest != nil && !b.s.sharing.Busy() })
	see("offer-paired")
	a.tap("offer.devices")
	see("devices")
	a.tap(a.nth("paired.", 0))
	see("unpair")
}

// media makes a folder that sticks are plugged into. Its path is as short as such a path is, and as
// long in every run.
func media(t *testing.T) string {
	t.Helper()
	for n := 0; ; n++ {
		dir := filepath.Join(os.TempDir(), fmt.Sprintf("media%09d", n))
		err := os.Mkdir(dir, 0o755)
		if errors.Is(err, fs.ErrExist) {
			continue // another run's
		}
		if err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() { os.RemoveAll(dir) })
		return dir
	}
}

// Every page of places at every size: keys are large enough and far enough apart, and texts stand whole.
func TestPagesOfPlacesFit(t *testing.T) {
	for _, lang := range words.Languages {
		for _, l := range least {
			t.Run(fmt.Sprintf("%s/%.0fx%.0f", lang.Tag, l.size.Width, l.size.Height), func(t *testing.T) {
				placesAlbum(t, pane{l.size, "light", lang}, func(d *desk, page string) {
					checkKeys(t, d, page, l.key, l.gap)
					checkTexts(t, d, page)
				})
			})
		}
	}
}
