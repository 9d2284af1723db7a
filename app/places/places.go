package places

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	gosync "sync"
	"time"

	"github.com/gofrs/flock"

	"yokebook/app/logbook"
	"yokebook/measure/store"
	buildsync "yokebook/sync"
)

// ErrBusy: another pass is at work on this device.
var ErrBusy = errors.New("another sync is at work on this device; let it end first")

const placesFormat = "yokebook-places/1"

// Places are the places of one device.
type Places struct {
	dir string
	now func() time.Time
	// Wait waits before a server is asked again; nil: for real.
	Wait func(ctx context.Context, d time.Duration) error
	// Vault keeps passwords; nil: a file that only the user can read does.
	Vault Vault

	mu      gosync.Mutex // held while the list or the secrets are changed
	passing gosync.Mutex // held while this program has a pass at work
}

// Place is one place that this device has synced with.
type Place struct {
	Address string    `json:"address"` // path of a folder, or address of a server
	Auto    bool      `json:"auto"`    // the window syncs with it by itself: at its start and after readings
	Last    time.Time `json:"last"`    // end of the last pass that reached it; zero: none yet
	OK      bool      `json:"ok"`      // that pass left every build the same here and there
	Fault   string    `json:"fault"`   // what did not work the last time; empty when all did
}

type placesFile struct {
	Format string  `json:"format"`
	Places []Place `json:"places"`
}

// Open returns the places that are kept in a folder, which need not be there yet.
func Open(dir string, now func() time.Time) *Places { return &Places{dir: dir, now: now} }

// List lists the places, sorted by address.
func (p *Places) List() ([]Place, error) {
	var f placesFile
	if err := load(p.listPath(), &f); err != nil {
		return nil, err
	}
	slices.SortFunc(f.Places, func(a, b Place) int { return strings.Compare(a.Address, b.Address) })
	return f.Places, nil
}

func (p *Places) listPath() string { return filepath.Join(p.dir, "places.json") }

// Options say how a pass goes.
type Options struct {
	All      bool                 // read everything again, whatever is remembered
	Queue    bool                 // wait for another pass of this program to end; else that is ErrBusy
	Progress func(buildsync.Step) // told how far it has come; may be nil
	Through  func(work func())    // see logbook.Shelf.Builds
}

// Sync does one pass over a place and notes how it went. The report is good as far as it goes when
// Sync errs. It errs with ErrBusy when another pass is at work, with store.ErrWrite when this device's
// disk does not take what is to be remembered; otherwise the place failed.
func (p *Places) Sync(ctx context.Context, shelf *logbook.Shelf, address string, o Options) (buildsync.Report, error) {
	unlock, err := p.lock(o.Queue)
	if err != nil {
		return buildsync.Report{}, err
	}
	defer unlock()
	at, err := p.open(address)
	if err != nil {
		return buildsync.Report{}, err
	}
	defer at.Close()
	memory := p.recall(at.Name())
	pass := buildsync.Pass{Place: at, Builds: shelf.Builds(o.Through), Device: shelf.Device(), Now: p.now, Wait: p.Wait,
		All: o.All, Progress: o.Progress}
	report, err := pass.Run(ctx, memory)
	if noteErr := p.note(at.Name(), memory, report, err); err == nil {
		err = noteErr
	}
	return report, err
}

// lock keeps two passes from writing this device's files at the same time.
func (p *Places) lock(queue bool) (unlock func(), err error) {
	if queue {
		p.passing.Lock()
	} else if !p.passing.TryLock() {
		return nil, ErrBusy
	}
	free, err := p.lockOthers()
	if err != nil {
		p.passing.Unlock()
		return nil, err
	}
	return func() {
		free()
		p.passing.Unlock()
	}, nil
}

// lockOthers keeps other programs of this device out.
func (p *Places) lockOthers() (free func(), err error) {
	if err := os.MkdirAll(p.dir, 0o755); err != nil {
		return nil, fmt.Errorf("places: %w: %w", store.ErrWrite, err)
	}
	l := flock.New(filepath.Join(p.dir, "sync.lock"))
	ok, err := l.TryLock()
	if err != nil {
		return nil, fmt.Errorf("places: %w: %w", store.ErrWrite, err)
	}
	if !ok {
		return nil, ErrBusy
	}
	return func() { _ = l.Unlock() }, nil
}

// recall loads what is remembered of a place. Whatever is wrong with it only costs reading.
func (p *Places) recall(name string) *buildsync.Memory {
	data, err := os.ReadFile(p.memoryPath(name))
	if err != nil {
		return buildsync.NewMemory()
	}
	return buildsync.ParseMemory(data)
}

func (p *Places) memoryPath(name string) string {
	sum := sha256.Sum256([]byte(name))
	return filepath.Join(p.dir, "places", hex.EncodeToString(sum[:8])+".json")
}

// served is the folder that Serve offers; it is this device's own and no place on the list.
func (p *Places) served() string { return filepath.Join(p.dir, "served") }

// note keeps what is remembered, and how the pass went.
func (p *Places) note(name string, m *buildsync.Memory, r buildsync.Report, failed error) error {
	data, err := m.Bytes()
	if err != nil {
		return fmt.Errorf("places: %w", err)
	}
	if err := write(p.memoryPath(name), data); err != nil {
		return err
	}
	if own, err := filepath.Abs(p.served()); err == nil && own == name {
		return nil
	}
	_, err = p.change(name, true, func(x *Place) {
		x.OK, x.Fault = failed == nil && r.OK(), ""
		switch {
		case failed != nil:
			x.Fault = failed.Error()
		case !r.OK():
			x.Fault = r.Faults[0].Line
		}
		if failed == nil {
			x.Last = p.now().UTC()
		}
	})
	return err
}
