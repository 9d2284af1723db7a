package places

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"
	"path/filepath"
	"slices"
	"sync"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/store"
	"yokebook/measure/store/disk"
	buildsync "yokebook/sync"
	"yokebook/sync/serve"
)

// Host is how this device offers its builds. Its functions are called from any goroutine, one at a
// time, and return soon.
type Host struct {
	Listen string // host:port; port 0 picks a free one
	// Invited is called with each new invitation, Paired with each device that accepted one, Passed
	// after each pass over the folder that is offered.
	Invited func(serve.Invitation)
	Paired  func(serve.Device)
	Passed  func(buildsync.Report, error)
	Through func(work func()) // see logbook.Shelf.Builds
}

// Serve offers the builds of a shelf until the context ends. What is offered is a folder of its own
// beside the builds; this device syncs with it like any other, at the start, when a device lists it
// and after each change.
func (p *Places) Serve(ctx context.Context, shelf *logbook.Shelf, h Host) error {
	dir := p.served()
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("places: %w: %w", store.ErrWrite, err)
	}
	id, err := p.identity()
	if err != nil {
		return err
	}
	l, err := serve.Listen(h.Listen)
	if err != nil {
		return err
	}
	defer l.Close()
	address := addressOf(l)
	talk := &sync.Mutex{}
	pass := &refresher{places: p, ctx: ctx, shelf: shelf, dir: dir, host: h, talk: talk, again: make(chan struct{}, 1)}
	pass.now(true)
	server, err := serve.New(serve.Options{Dir: dir, Keeper: paired{p}, Now: p.now,
		Shown: func(code string) {
			talk.Lock()
			defer talk.Unlock()
			h.Invited(serve.Invitation{Address: address, Code: code, Pin: id.Pin})
		},
		Paired: func(d serve.Device) {
			talk.Lock()
			defer talk.Unlock()
			h.Paired(d)
		},
		Changed: pass.soon,
		Listing: func() { pass.now(false) },
	})
	if err != nil {
		return err
	}
	defer server.Close()
	var work sync.WaitGroup
	work.Go(pass.run)
	err = serve.Run(ctx, l, server, id)
	pass.stop()
	work.Wait()
	return err
}

// refresher keeps the offered folder and the shelf alike.
type refresher struct {
	places *Places
	ctx    context.Context
	shelf  *logbook.Shelf
	dir    string
	host   Host
	talk   *sync.Mutex
	again  chan struct{}

	mu   sync.Mutex // one pass at a time
	last time.Time
}

// recently is how old a pass may be for a listing to do without another.
const recently = 2 * time.Second

// now does a pass. Without must it does so only when the last one is older than a moment and nothing
// has to be waited for: two devices that serve each other would wait for ever.
func (r *refresher) now(must bool) {
	if must {
		r.mu.Lock()
	} else if !r.mu.TryLock() {
		return
	}
	defer r.mu.Unlock()
	age := r.places.now().Sub(r.last)
	if !must && age >= 0 && age < recently {
		return
	}
	report, err := r.places.Sync(r.ctx, r.shelf, r.dir, Options{Through: r.host.Through, Queue: must})
	if !must && errors.Is(err, ErrBusy) {
		return
	}
	r.last = r.places.now()
	r.talk.Lock()
	defer r.talk.Unlock()
	r.host.Passed(report, err)
}

// soon asks for a pass without waiting for it.
func (r *refresher) soon() {
	select {
	case r.again <- struct{}{}:
	default: // one is asked for already
	}
}

func (r *refresher) run() {
	for range r.again {
		r.now(true)
	}
}

func (r *refresher) stop() { close(r.again) }

// addressOf is where other devices find a listener: on all addresses, the first of this machine's.
func addressOf(l net.Listener) string {
	host, port, err := net.SplitHostPort(l.Addr().String())
	if err != nil {
		return "https://" + l.Addr().String() + "/"
	}
	if ip := net.ParseIP(host); ip != nil && ip.IsUnspecified() {
		host = "127.0.0.1"
		for _, ip := range serve.Addresses() {
			if ip.To4() != nil { // easier to read out than the longer ones
				host = ip.String()
				break
			}
		}
	}
	return "https://" + net.JoinHostPort(host, port) + "/"
}

// identity loads the key of this device's server, or makes it at the first start.
func (p *Places) identity() (serve.Identity, error) {
	path := filepath.Join(p.dir, "serve", "key.pem")
	if err := tighten(path); err != nil {
		return serve.Identity{}, err
	}
	key, err := disk.Read(disk.OS{}, path, 64<<10)
	if errors.Is(err, fs.ErrNotExist) {
		if key, err = serve.NewKey(); err == nil {
			err = write(path, key)
		}
	}
	if err != nil {
		return serve.Identity{}, fmt.Errorf("places: the server's key: %w", err)
	}
	return serve.IdentityOf(key, p.now())
}

const pairedFormat = "yokebook-paired/1"

type pairedFile struct {
	Format  string         `json:"format"`
	Devices []serve.Device `json:"devices"`
}

// paired keeps the devices that may come in.
type paired struct{ places *Places }

func (k paired) path() string { return filepath.Join(k.places.dir, "serve", "paired.json") }

// Paired loads them.
func (k paired) Paired() ([]serve.Device, error) {
	var f pairedFile
	if err := tighten(k.path()); err != nil {
		return nil, err
	}
	err := load(k.path(), &f)
	return f.Devices, err
}

// Keep saves them.
func (k paired) Keep(all []serve.Device) error {
	return save(k.path(), pairedFile{pairedFormat, all})
}

// Paired lists the devices that may come in.
func (p *Places) Paired() ([]serve.Device, error) { return paired{p}.Paired() }

// Unpair takes the token of a device back. What it wrote stays.
func (p *Places) Unpair(id measure.ID) error {
	all, err := p.Paired()
	if err != nil {
		return err
	}
	left := slices.DeleteFunc(slices.Clone(all), func(d serve.Device) bool { return d.ID == id })
	if len(left) == len(all) {
		return fmt.Errorf("%s is not paired with this device", id)
	}
	return paired{p}.Keep(left)
}

// Accept takes an invitation up and keeps what lets this device in. It returns the address to sync
// with, and where the password went.
func (p *Places) Accept(ctx context.Context, device measure.ID, i serve.Invitation) (address string, kept Kept, err error) {
	name, err := os.Hostname()
	if err != nil {
		name = ""
	}
	token, err := serve.Accept(ctx, i, device, name)
	if err != nil {
		return "", KeptNowhere, err
	}
	kept, err = p.Trust(i.Address, string(device), token, &i.Pin)
	return i.Address, kept, err
}
