package cli

import (
	"net/http/httptest"
	"strings"
	"testing"

	"golang.org/x/net/webdav"
)

// The order goes to the shaft builder through a place, what was made comes back through it, and the
// one who ordered judges the shaft as built; over a folder and over a WebDAV server alike.
func TestAnOrderAndItsAnswerTravelThroughAPlace(t *testing.T) {
	for _, place := range []struct {
		name string
		at   func(t *testing.T) string
	}{
		{"folder", func(t *testing.T) string { return t.TempDir() }},
		{"WebDAV", func(t *testing.T) string {
			server := httptest.NewServer(&webdav.Handler{FileSystem: webdav.Dir(t.TempDir()), LockSystem: webdav.NewMemLS()})
			t.Cleanup(server.Close)
			return server.URL + "/"
		}},
	} {
		t.Run(place.name, func(t *testing.T) {
			fitter, builder := newDesk(t), other(t)
			at := place.at(t)
			id := demoID
			fitter.must("import", fitter.put("order.json", demoFile(t)))
			fitter.must("sync", at)
			builder.must("sync", at)

			builder.must("export", id, "-o", builder.path("made.json"))
			made := builder.path("made.json")
			builder.must("add", made, "as_built.tube_od", "44.45", "--ride", "bench", "--by", "builder")
			builder.must("add", made, "as_built.tube_wall", "1.65", "--ride", "bench", "--by", "builder")
			builder.must("import", made)
			builder.must("sync", at)
			fitter.must("sync", at)

			fitter.must("export", id, "-o", fitter.path("back.json"))
			if out := fitter.must("diff", fitter.path("order.json"), fitter.path("back.json")); !strings.Contains(out, "as built: tube wall 1.65 mm") ||
				!strings.Contains(out, "by the shaft builder") {
				t.Errorf("what came back: %s", out)
			}
			_, out, _ := fitter.run("check", fitter.path("back.json"), "--as-built")
			if !strings.Contains(out, "As built these differ from what was ordered") || !strings.Contains(out, "  built:   ") {
				t.Errorf("as built: %s", out)
			}
			builder.must("export", id, "-o", builder.path("same.json"))
			if fitter.file("back.json") != builder.file("same.json") {
				t.Error("the two hold different builds")
			}
		})
	}
}
