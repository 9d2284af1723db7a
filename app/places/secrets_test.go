package places

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/zalando/go-keyring"
)

const address = "https://192.0.2.1/dav/"

// placesWith returns places in a folder of their own whose passwords a vault keeps.
func placesWith(t *testing.T, v Vault) *Places {
	t.Helper()
	p := Open(t.TempDir(), time.Now)
	p.Vault = v
	return p
}

// trust keeps a password and returns where it went.
func trust(t *testing.T, p *Places, password string) Kept {
	t.Helper()
	kept, err := p.Trust(address, "me", password, nil)
	if err != nil {
		t.Fatal(err)
	}
	return kept
}

// written is everything that is on the disk.
func written(t *testing.T, p *Places) string {
	t.Helper()
	var all strings.Builder
	err := filepath.WalkDir(p.dir, func(path string, e os.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		data, err := os.ReadFile(path)
		all.Write(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all.String()
}

func TestKeyStoreKeepsThePasswordAndNoFileDoes(t *testing.T) {
	keyring.MockInit()
	p := placesWith(t, systemVault{asked})
	if kept := trust(t, p, "hunter2"); kept != KeptInStore {
		t.Fatalf("kept in %q; want the key store", kept)
	}
	if strings.Contains(written(t, p), "hunter2") {
		t.Error("a file holds the password too")
	}
	if a, err := p.access(address); err != nil || a.User != "me" || a.Password != "hunter2" {
		t.Errorf("got %q, %q, %v", a.User, a.Password, err)
	}
	again := Open(p.dir, time.Now)
	again.Vault = p.Vault
	if a, err := again.access(address); err != nil || a.Password != "hunter2" {
		t.Errorf("after a restart: %q, %v", a.Password, err)
	}
	other := placesWith(t, p.Vault) // another folder of builds of the same user
	trust(t, other, "other")
	if a, err := p.access(address); err != nil || a.Password != "hunter2" {
		t.Errorf("two folders share a password: %q, %v", a.Password, err)
	}
	if err := p.Forget(address); err != nil {
		t.Fatal(err)
	}
	if _, err := keyring.Get(service, p.vaultName(address)); !errors.Is(err, keyring.ErrNotFound) {
		t.Errorf("a forgotten place left its password in the key store: %v", err)
	}
}

// twisted gives back something else than it was given.
type twisted struct{ Vault }

func (twisted) Set(string, string) error   { return nil }
func (twisted) Get(string) (string, error) { return "something else", nil }

func TestPasswordGoesToTheFileWhereNoKeyStoreTakesIt(t *testing.T) {
	for _, row := range []struct {
		name  string
		vault func() Vault
	}{
		{"none there", func() Vault { return nil }},
		{"one that errs", func() Vault {
			keyring.MockInitWithError(errors.New("locked"))
			return systemVault{asked}
		}},
		{"one that loses what it took", func() Vault { return twisted{} }},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := placesWith(t, row.vault())
			if kept := trust(t, p, "hunter2"); kept != KeptInFile {
				t.Fatalf("kept in %q; want the file", kept)
			}
			if info, err := os.Stat(p.secretsPath()); err != nil || info.Mode().Perm() != 0o600 {
				t.Errorf("the file: %v, %v", info, err)
			}
			if a, err := p.access(address); err != nil || a.Password != "hunter2" {
				t.Errorf("got %q, %v", a.Password, err)
			}
			if err := p.Forget(address); err != nil || strings.Contains(written(t, p), "hunter2") {
				t.Errorf("forgetting: %v", err)
			}
		})
	}
}

func TestKeyStoreThatIsSilentIsGivenUp(t *testing.T) {
	never := make(chan struct{})
	defer close(never)
	_, err := systemVault{0}.ask(func() (string, error) { <-never; return "", nil })
	if !errors.Is(err, errSilent) {
		t.Errorf("%v; want that it does not answer", err)
	}
}

// A key store that answered once and does not any more is said in one line, and the place is not asked
// without a password.
func TestLockedKeyStoreIsSaidInOneLine(t *testing.T) {
	keyring.MockInit()
	p := placesWith(t, systemVault{asked})
	trust(t, p, "hunter2")
	for name, v := range map[string]func() Vault{
		"gone": func() Vault { return nil },
		"locked": func() Vault {
			keyring.MockInitWithError(errors.New("locked"))
			return systemVault{asked}
		},
		"emptied": func() Vault {
			keyring.MockInit()
			return systemVault{asked}
		},
	} {
		p.Vault = v()
		_, err := p.access(address)
		if err == nil || strings.Contains(err.Error(), "\n") || strings.Contains(err.Error(), "hunter2") ||
			!strings.HasPrefix(err.Error(), address) || !strings.Contains(err.Error(), "give") {
			t.Errorf("%s: %v", name, err)
		}
	}
	keyring.MockInit()
	p.Vault = systemVault{asked}
	trust(t, p, "new one")
	if a, err := p.access(address); err != nil || a.Password != "new one" {
		t.Errorf("given again: %q, %v", a.Password, err)
	}
}

// Two changes of the list at the same time both stay.
func TestPlacesAddedAtTheSameTimeAllStay(t *testing.T) {
	p := placesWith(t, nil)
	done := make(chan error)
	dirs := []string{"a", "b", "c", "d", "e", "f"}
	for _, d := range dirs {
		go func() {
			_, err := p.Add(filepath.Join(p.dir, d), true)
			done <- err
		}()
	}
	for range dirs {
		if err := <-done; err != nil {
			t.Fatal(err)
		}
	}
	if all, err := p.List(); err != nil || len(all) != len(dirs) || !all[0].Auto {
		t.Errorf("%+v, %v; want all %d", all, err, len(dirs))
	}
	if err := p.SetAuto(filepath.Join(p.dir, "c"), false); err != nil {
		t.Fatal(err)
	}
	if all, _ := p.List(); all[2].Auto {
		t.Error("the setting of a place did not change")
	}
	if err := p.SetAuto(filepath.Join(p.dir, "z"), false); err == nil {
		t.Error("a place that is none was changed")
	}
}
