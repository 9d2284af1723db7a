package places

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"path/filepath"
	"slices"

	"yokebook/sync/place"
)

const secretsFormat = "yokebook-secrets/1"

// secrets is the file of what must stay with the user.
type secrets struct {
	Format  string   `json:"format"`
	Servers []secret `json:"servers"`
}

// secret lets us in at one address and tells the right server from another.
type secret struct {
	Address  string `json:"address"`
	User     string `json:"user"`
	Password string `json:"password"` // empty when it is in the system's key store, or there is none
	InStore  bool   `json:"in_store"`
	Pin      string `json:"pin"` // empty: a certificate that the system trusts
}

func (p *Places) secretsPath() string { return filepath.Join(p.dir, "secrets.json") }

func (p *Places) secrets() (secrets, error) {
	var s secrets
	if err := tighten(p.secretsPath()); err != nil {
		return s, err
	}
	err := load(p.secretsPath(), &s)
	return s, err
}

// Trust keeps user, password and pinned key of a server, in place of what was kept for it, and says
// where the password went. A field that is empty or nil keeps what there was.
func (p *Places) Trust(address, user, password string, pin *place.Pin) (Kept, error) {
	u, err := place.Address(address)
	if err != nil {
		return KeptNowhere, err
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	all, err := p.secrets()
	if err != nil {
		return KeptNowhere, err
	}
	all.Format = secretsFormat
	i := slices.IndexFunc(all.Servers, func(s secret) bool { return s.Address == u.String() })
	if i < 0 {
		i = len(all.Servers)
		all.Servers = append(all.Servers, secret{Address: u.String()})
	}
	s := &all.Servers[i]
	if user != "" {
		s.User = user
	}
	if pin != nil {
		s.Pin = pin.String()
	}
	kept := KeptNowhere
	if password != "" {
		kept = p.putAway(s, password)
	}
	return kept, save(p.secretsPath(), all)
}

// putAway puts a password into the system's key store, and reads it back; where that does not work,
// into the file.
func (p *Places) putAway(s *secret, password string) Kept {
	if p.Vault != nil {
		name := p.vaultName(s.Address)
		err := p.Vault.Set(name, password)
		if err == nil {
			var back string
			if back, err = p.Vault.Get(name); err == nil && back == password {
				s.Password, s.InStore = "", true
				return KeptInStore
			}
		}
	}
	s.Password, s.InStore = password, false
	return KeptInFile
}

// vaultName is what a password is kept under: two folders of builds of one user keep theirs apart.
func (p *Places) vaultName(address string) string {
	dir, err := filepath.Abs(p.dir)
	if err != nil {
		dir = p.dir
	}
	sum := sha256.Sum256([]byte(dir))
	return address + " " + hex.EncodeToString(sum[:4])
}

// access finds what lets us in at an address.
func (p *Places) access(address string) (place.Access, error) {
	all, err := p.secrets()
	if err != nil {
		return place.Access{}, err
	}
	for _, s := range all.Servers {
		if s.Address != address {
			continue
		}
		a := place.Access{User: s.User, Password: s.Password}
		if s.InStore {
			if a.Password, err = p.unlocked(address); err != nil {
				return a, fmt.Errorf("%s: %w", address, err)
			}
		}
		if s.Pin != "" {
			pin, err := place.ParsePin(s.Pin)
			if err != nil {
				return a, err
			}
			a.Pin = &pin
		}
		return a, nil
	}
	return place.Access{}, nil
}

// unlocked takes a password out of the system's key store. Its errors hold nothing of it.
func (p *Places) unlocked(address string) (string, error) {
	if p.Vault == nil {
		return "", fmt.Errorf("%w; unlock it, or give the password again", errSilent)
	}
	password, err := p.Vault.Get(p.vaultName(address))
	if err != nil && !errors.Is(err, ErrNoSecret) {
		return "", fmt.Errorf("%w (%v); unlock it, or give the password again", errSilent, err)
	}
	return password, err
}

// dropSecret forgets what lets us in at an address. It reports whether there was anything.
// The lock is held.
func (p *Places) dropSecret(address string) (bool, error) {
	all, err := p.secrets()
	if err != nil {
		return false, err
	}
	i := slices.IndexFunc(all.Servers, func(s secret) bool { return s.Address == address })
	if i < 0 {
		return false, nil
	}
	if all.Servers[i].InStore {
		if p.Vault == nil {
			return true, fmt.Errorf("%s: %w; unlock it, then forget the place", address, errSilent)
		}
		if err := p.Vault.Delete(p.vaultName(address)); err != nil && !errors.Is(err, ErrNoSecret) {
			return true, fmt.Errorf("%s: %w (%v); unlock it, then forget the place", address, errSilent, err)
		}
	}
	all.Servers = slices.Delete(all.Servers, i, i+1)
	return true, save(p.secretsPath(), all)
}
