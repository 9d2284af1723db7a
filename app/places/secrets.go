package places

import (
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
	Password string `json:"password"`
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

// Trust keeps user, password and pinned key of a server, in place of what was kept for it. A field
// that is empty or nil keeps what there was.
func (p *Places) Trust(address, user, password string, pin *place.Pin) error {
	u, err := place.Address(address)
	if err != nil {
		return err
	}
	all, err := p.secrets()
	if err != nil {
		return err
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
	if password != "" {
		s.Password = password
	}
	if pin != nil {
		s.Pin = pin.String()
	}
	return save(p.secretsPath(), all)
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
