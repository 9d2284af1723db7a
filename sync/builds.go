package sync

import (
	"errors"

	"yokebook/measure"
)

// ErrNotHeld: this device does not have the build.
var ErrNotHeld = errors.New("is not on this device")

// Held is one build that this device has.
type Held struct {
	ID measure.ID
	// Stamp changes whenever the build does; "" when that is not known.
	Stamp string
}

// Builds is where this device keeps its builds. Its methods are called one at a time.
type Builds interface {
	// Held lists the builds, in any order.
	Held() ([]Held, error)
	// Read returns a build and its stamp. It errs with ErrNotHeld.
	Read(id measure.ID) (*measure.Build, string, error)
	// Take takes all records of b in and returns when they are on the disk: the build as it is then,
	// which may hold more, and its stamp. When it errs, nothing of b need have been kept, and nothing
	// that was kept is lost.
	Take(b *measure.Build) (*measure.Build, string, error)
}
