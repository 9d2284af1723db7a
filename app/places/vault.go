package places

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"time"

	"github.com/zalando/go-keyring"
)

// Vault is a key store of the system.
type Vault interface {
	// Set keeps a secret under a name, in place of what was kept there.
	Set(name, secret string) error
	// Get errs with ErrNoSecret when nothing is kept under the name.
	Get(name string) (string, error)
	// Delete errs with ErrNoSecret when nothing was kept under the name.
	Delete(name string) error
}

// The errors of a Vault that a caller tells apart.
var (
	ErrNoSecret = errors.New("the system's key store does not hold the password of this place; give it again")
	errSilent   = errors.New("the system's key store does not answer")
)

// Kept says where a password went.
type Kept string

// Where passwords go. Both are messages of package words, behind "places.kept.".
const (
	KeptNowhere Kept = ""      // there was none to keep
	KeptInStore Kept = "store" // in the system's key store
	KeptInFile  Kept = "file"  // in a file that only the user can read
)

// service names the program in the system's key store.
const service = "yokebook"

// asked is how long the system's key store may take: it may have to ask a person to unlock it.
const asked = 45 * time.Second

// SystemVault is the key store of this system; nil where there is none to ask: on Android, whose
// programs keep files that no other program reads, and on a machine without a session to hold one.
func SystemVault() Vault {
	switch runtime.GOOS {
	case "windows", "darwin":
		return systemVault{asked}
	case "android":
		return nil
	}
	if os.Getenv("DBUS_SESSION_BUS_ADDRESS") == "" {
		// Without an address the library would start a bus of its own, which nobody else speaks on.
		bus := filepath.Join("/run/user", strconv.Itoa(os.Getuid()), "bus")
		if _, err := os.Stat(bus); err != nil {
			return nil
		}
	}
	return systemVault{asked}
}

// systemVault asks the system, and gives up on one that is silent.
type systemVault struct{ patience time.Duration }

func (v systemVault) Set(name, secret string) error {
	_, err := v.ask(func() (string, error) { return "", keyring.Set(service, name, secret) })
	return err
}

func (v systemVault) Get(name string) (string, error) {
	return v.ask(func() (string, error) { return keyring.Get(service, name) })
}

func (v systemVault) Delete(name string) error {
	_, err := v.ask(func() (string, error) { return "", keyring.Delete(service, name) })
	return err
}

func (v systemVault) ask(question func() (string, error)) (string, error) {
	type answer struct {
		secret string
		err    error
	}
	got := make(chan answer, 1)
	go func() {
		secret, err := question()
		got <- answer{secret, err}
	}()
	select {
	case a := <-got:
		if errors.Is(a.err, keyring.ErrNotFound) {
			return "", ErrNoSecret
		}
		return a.secret, a.err
	case <-time.After(v.patience):
		return "", errSilent
	}
}
