package places

import (
	"bufio"
	"bytes"
	"context"
	"fmt"
	"math/rand/v2"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"golang.org/x/net/webdav"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/sync/place"
)

// The test binary starts itself again to have processes that can be killed.
const childHome, childPlace, childSkew = "YOKEBOOK_PLACES_CHILD", "YOKEBOOK_PLACES_AT", "YOKEBOOK_PLACES_SKEW"

func TestMain(m *testing.M) {
	if dir := os.Getenv(childHome); dir != "" {
		os.Exit(keepAndSync(dir, os.Getenv(childPlace), os.Getenv(childSkew)))
	}
	os.Exit(m.Run())
}

// keepAndSync keeps readings in the first build of a folder and syncs after each, until it is killed. It
// says the id of each reading once it is kept.
func keepAndSync(dir, at, skew string) int {
	off, err := time.ParseDuration(skew)
	if err != nil {
		return 2
	}
	now := func() time.Time { return time.Now().Add(off) }
	for n := 0; ; n++ {
		shelf, err := logbook.OpenShelf(dir, logbook.Sources{Now: now})
		if err != nil {
			fmt.Println("error", err)
			return 1
		}
		if id, err := keepOne(shelf, n); err != nil {
			fmt.Println("error", err)
			return 1
		} else {
			fmt.Println(id)
		}
		p := Open(dir, now)
		p.Wait = func(ctx context.Context, _ time.Duration) error { return ctx.Err() }
		_, _ = p.Sync(context.Background(), shelf, at, Options{}) // a place that fails is tried again
	}
}

func keepOne(shelf *logbook.Shelf, n int) (measure.ID, error) {
	list, err := shelf.List()
	if err != nil || len(list) == 0 {
		return "", fmt.Errorf("no build: %w", err)
	}
	book, err := shelf.Open(list[0].ID)
	if err != nil {
		return "", err
	}
	v, err := measure.NumberValue(fmt.Sprintf("%d.%d", n%20, n%10))
	if err != nil {
		return "", err
	}
	c, err := book.Keep(logbook.Entry{Point: "gearbox.slope", Value: v, Unit: "deg", State: measure.Hanging, Setup: 1})
	if closeErr := book.Close(); err == nil {
		err = closeErr
	}
	return c.Reading, err
}

// device is one of three, with a home of its own.
type device struct {
	home, at, skew string
	acknowledged   []string
}

// Two phones and a desktop keep readings and sync, through a folder and through a server, and are
// killed at any time; the server breaks off, files in the place are cut and damaged, clocks are off by
// years. In the end all three hold the same bytes and every reading that was acknowledged.
func TestKilledProcessesEndAlike(t *testing.T) {
	rounds := 4
	if os.Getenv("YOKEBOOK_SOAK") != "" {
		rounds = 150
	}
	const seed = 11
	rng := rand.New(rand.NewPCG(seed, 1))
	dir := t.TempDir()
	var broken atomic.Int64
	dav := &webdav.Handler{FileSystem: webdav.Dir(dir), LockSystem: webdav.NewMemLS()}
	var requests, puts, full atomic.Int64
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		n := requests.Add(1)
		if r.Method == http.MethodPut && puts.Add(1)%7 == 0 {
			full.Add(1)
			w.WriteHeader(http.StatusInsufficientStorage)
			return
		}
		if n%17 == 0 { // gone in the middle: what was asked for is half done
			broken.Add(1)
			r.Body = http.MaxBytesReader(w, r.Body, r.ContentLength/2)
			dav.ServeHTTP(httptest.NewRecorder(), r)
			panic(http.ErrAbortHandler)
		}
		dav.ServeHTTP(w, r)
	}))
	defer server.Close()
	all := []*device{{home: t.TempDir(), at: dir, skew: "0s"}, {home: t.TempDir(), at: server.URL + "/", skew: "87600h"}, {home: t.TempDir(), at: server.URL + "/", skew: "-87600h"}}
	first := shelfOf(t, all[0])
	book, err := first.New("invented: three devices", measure.NewLayout())
	if err != nil {
		t.Fatal(err)
	}
	id := book.ID()
	if err := book.Close(); err != nil {
		t.Fatal(err)
	}
	settle(t, all)
	cuts, flips := damageEverywhere(t, dir, all, id)
	damaged := 0
	for range rounds {
		for _, d := range all {
			d.live(t, time.Duration(rng.IntN(250))*time.Millisecond)
		}
		damaged += harm(t, dir, rng)
	}
	settle(t, all)
	settle(t, all)
	var want []byte
	lost, kept := 0, 0
	for _, d := range all {
		data, err := shelfOf(t, d).Export(id)
		if err != nil {
			t.Fatal(err)
		}
		if want == nil {
			want = data
		}
		if !bytes.Equal(data, want) {
			t.Errorf("%s holds another build than the first device", d.home)
		}
		kept += len(d.acknowledged)
	}
	b, _, err := document.Read(want)
	if err != nil {
		t.Fatal(err)
	}
	have := map[string]bool{}
	for _, r := range b.Readings {
		have[string(r.ID)] = true
	}
	for _, d := range all {
		for _, reading := range d.acknowledged {
			if !have[reading] {
				lost++
			}
		}
	}
	fmt.Printf("seed %d: %d kills, %d requests broken off, %d times no room, %d files damaged, one file cut at %d lengths and flipped in %d bytes, clocks 10 years off: %d readings acknowledged, %d lost\n",
		seed, 3*rounds, broken.Load(), full.Load(), damaged, cuts, flips, kept, lost)
	if lost > 0 || kept < rounds || damaged == 0 || full.Load() == 0 {
		t.Errorf("%d of %d acknowledged readings are lost, %d files were damaged", lost, kept, damaged)
	}
}

// damageEverywhere cuts a file of the second device at every length and flips every one of its bytes in
// turn; the first device does a pass over each. Nothing of it may come in. Outside a soak only a part is
// done.
func damageEverywhere(t *testing.T, dir string, all []*device, id measure.ID) (cuts, flips int) {
	t.Helper()
	shelf := shelfOf(t, all[1])
	name := filepath.Join(dir, place.FileName(id, shelf.Device()))
	if err := shelf.Close(); err != nil {
		t.Fatal(err)
	}
	good, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	mine := shelfOf(t, all[0])
	defer mine.Close()
	before, err := mine.Export(id)
	if err != nil {
		t.Fatal(err)
	}
	p := Open(all[0].home, time.Now)
	try := func(what string, n int, bad []byte) {
		t.Helper()
		if err := os.WriteFile(name, bad, 0o644); err != nil {
			t.Fatal(err)
		}
		r, err := p.Sync(context.Background(), mine, dir, Options{})
		if err != nil {
			t.Fatalf("%s %d: %v", what, n, err)
		}
		after, err := mine.Export(id)
		if err != nil || !bytes.Equal(after, before) || r.Builds[0].Came.Total() > 0 {
			t.Fatalf("%s %d: something came in: %v", what, n, err)
		}
	}
	step := 41
	if os.Getenv("YOKEBOOK_SOAK") != "" {
		step = 1
	}
	for n := 0; n < len(good); n += step {
		try("cut to", n, good[:n])
		cuts++
		bad := bytes.Clone(good)
		bad[n] ^= 1 << (n % 8)
		try("flipped byte", n, bad)
		flips++
	}
	if err := os.WriteFile(name, good, 0o644); err != nil {
		t.Fatal(err)
	}
	return cuts, flips
}

// live starts the device, lets it work for a while and kills it.
func (d *device) live(t *testing.T, for_ time.Duration) {
	t.Helper()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), childHome+"="+d.home, childPlace+"="+d.at, childSkew+"="+d.skew)
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	said := bufio.NewScanner(out)
	var kill *time.Timer
	for said.Scan() {
		if kill == nil { // it lives: now its time runs
			kill = time.AfterFunc(for_, func() { _ = cmd.Process.Kill() })
		}
		if strings.HasPrefix(said.Text(), "error") {
			t.Errorf("%s: %s", d.home, said.Text())
			break
		}
		d.acknowledged = append(d.acknowledged, said.Text())
	}
	_ = cmd.Process.Kill()
	_ = cmd.Wait()
}

// settle lets each device do a pass, twice over.
func settle(t *testing.T, all []*device) {
	t.Helper()
	for range 2 {
		for _, d := range all {
			off, err := time.ParseDuration(d.skew)
			if err != nil {
				t.Fatal(err)
			}
			p := Open(d.home, func() time.Time { return time.Now().Add(off) })
			p.Wait = func(ctx context.Context, _ time.Duration) error { return ctx.Err() }
			shelf := shelfOf(t, d)
			if _, err := p.Sync(context.Background(), shelf, d.at, Options{}); err != nil {
				t.Fatal(err)
			}
			if err := shelf.Close(); err != nil {
				t.Fatal(err)
			}
		}
	}
}

func shelfOf(t *testing.T, d *device) *logbook.Shelf {
	t.Helper()
	shelf, err := logbook.OpenShelf(d.home, logbook.System())
	if err != nil {
		t.Fatal(err)
	}
	return shelf
}

// harm cuts one file in the place, or turns one bit of it, or leaves an old copy.
func harm(t *testing.T, dir string, rng *rand.Rand) int {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(dir, "*.json"))
	if err != nil || len(paths) == 0 {
		return 0
	}
	path := paths[rng.IntN(len(paths))]
	data, err := os.ReadFile(path)
	if err != nil || len(data) == 0 {
		return 0
	}
	switch rng.IntN(3) {
	case 0:
		data = data[:rng.IntN(len(data))]
	case 1:
		data[rng.IntN(len(data))] ^= 1 << rng.IntN(8)
	default:
		path = filepath.Join(dir, "build (1).json")
	}
	if err := os.WriteFile(path, data, 0o644); err != nil {
		t.Fatal(err)
	}
	return 1
}
