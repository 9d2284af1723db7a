package places

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"yokebook/sync/place"
)

// opened is a place to be closed when the work in it is done.
type opened interface {
	place.Place
	io.Closer
}

// kind is one kind of place: which addresses are its own, in what form they are listed, and how it is
// opened. The place that open gives calls itself by that form.
type kind struct {
	has  func(address string) bool
	name func(address string) (string, error)
	open func(p *Places, name string) (opened, error)
}

// kinds is the table of the kinds. An address belongs to the first that has it; what no other has is a folder.
var kinds = []kind{
	{has: IsServer, name: serverName, open: openServer},
	{has: func(string) bool { return true }, name: folderName, open: openFolder},
}

// kindOf is the kind of an address.
func kindOf(address string) kind {
	for _, k := range kinds[:len(kinds)-1] {
		if k.has(address) {
			return k
		}
	}
	return kinds[len(kinds)-1]
}

// nameOf brings an address into the form in which places are listed.
func nameOf(address string) (string, error) { return kindOf(address).name(address) }

// open opens a place by its address.
func (p *Places) open(address string) (opened, error) {
	k := kindOf(address)
	name, err := k.name(address)
	if err != nil {
		return nil, err
	}
	return k.open(p, name)
}

// IsServer reports the address of a server: it may ask who comes in.
func IsServer(address string) bool {
	return strings.HasPrefix(address, "https://") || strings.HasPrefix(address, "http://")
}

func serverName(address string) (string, error) {
	u, err := place.Address(address)
	if err != nil {
		return "", err
	}
	return u.String(), nil
}

func openServer(p *Places, name string) (opened, error) {
	access, err := p.access(name)
	if err != nil {
		return nil, err
	}
	access.Wait = p.Wait
	w, err := place.OpenWebDAV(name, access)
	if err != nil {
		return nil, err
	}
	return w, nil
}

func folderName(address string) (string, error) {
	path, err := filepath.Abs(address)
	if err != nil {
		return "", fmt.Errorf("%s: %w", address, err)
	}
	return path, nil
}

func openFolder(_ *Places, name string) (opened, error) {
	f, err := place.OpenFolder(name)
	if err != nil {
		return nil, err
	}
	return f, nil
}
