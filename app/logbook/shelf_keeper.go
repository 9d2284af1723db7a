package logbook

import (
	"yokebook/measure"
	"yokebook/measure/store"
)

// secureEvery is how many records are kept before the second copy follows by itself.
const secureEvery = 8

// shelved is the keeper of a Book on the shelf.
type shelved struct {
	*store.File
	shelf     *Shelf
	build     *measure.Build // as kept; never changed in place, so that it can be copied meanwhile
	since     int            // records kept since the second copy was tried last
	copying   chan error     // the answer of a second copy that is being written; nil: none is
	unsecured error          // why the second copy is behind
}

func (k *shelved) keep(next *measure.Build, add []store.Record) (*measure.Build, error) {
	for _, r := range add {
		if err := k.Keep(r); err != nil {
			return nil, err
		}
	}
	k.build = next
	if k.since += len(add); k.since >= secureEvery {
		k.secureMeanwhile()
	}
	return next, nil
}

// secureMeanwhile writes the second copy without keeping anybody waiting. Notes tells when it fails.
func (k *shelved) secureMeanwhile() {
	k.await()
	b, answer := k.build, make(chan error, 1)
	k.since, k.copying = 0, answer
	go func() { answer <- k.Secure(b) }()
}

// await ends a second copy that is being written.
func (k *shelved) await() {
	if k.copying != nil {
		k.unsecured = <-k.copying
		k.copying = nil
	}
}

// secure writes the second copy and returns when it is on the disk.
func (k *shelved) secure() error {
	k.await()
	k.since = 0
	k.unsecured = k.Secure(k.build)
	return k.unsecured
}

// Close writes the second copy and closes the build in any case.
func (k *shelved) Close() error {
	k.shelf.taking.Lock()
	defer k.shelf.taking.Unlock()
	k.shelf.mu.Lock()
	delete(k.shelf.open, k.build.ID)
	k.shelf.mu.Unlock()
	err := k.secure()
	if closeErr := k.File.Close(); err == nil {
		err = closeErr
	}
	return err
}
