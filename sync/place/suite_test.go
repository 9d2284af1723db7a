package place_test

import (
	"context"
	"net/http/httptest"
	"testing"
	"time"

	"golang.org/x/net/webdav"

	"yokebook/sync/place"
	"yokebook/sync/place/placetest"
)

func TestFolder(t *testing.T) {
	placetest.Run(t, func(t *testing.T) placetest.Fixture {
		dir := t.TempDir()
		return placetest.Fixture{Place: openFolder(t, dir), Dir: dir}
	})
}

func openFolder(t *testing.T, dir string) *place.Folder {
	t.Helper()
	f, err := place.OpenFolder(dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = f.Close() })
	return f
}

// A server that ignores every precondition and truncates a file when an upload breaks off.
func TestWebDAVOnABareServer(t *testing.T) {
	placetest.Run(t, func(t *testing.T) placetest.Fixture {
		dir := t.TempDir()
		s := httptest.NewServer(&webdav.Handler{FileSystem: webdav.Dir(dir), LockSystem: webdav.NewMemLS()})
		t.Cleanup(s.Close)
		return placetest.Fixture{Place: openWebDAV(t, s.URL, place.Access{}), Dir: dir}
	})
}

func openWebDAV(t *testing.T, address string, a place.Access) *place.WebDAV {
	t.Helper()
	if a.Wait == nil {
		a.Wait = func(ctx context.Context, _ time.Duration) error { return ctx.Err() }
	}
	w, err := place.OpenWebDAV(address, a)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = w.Close() })
	return w
}
