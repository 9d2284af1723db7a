package places

import (
	"errors"
	"fmt"
	"os"
	"slices"

	"yokebook/measure/store"
)

// Add puts a place on the list, or finds it there. Nothing is asked of the place itself.
func (p *Places) Add(address string, auto bool) (Place, error) {
	name, err := nameOf(address)
	if err != nil {
		return Place{}, err
	}
	return p.change(name, true, func(x *Place) { x.Auto = auto })
}

// SetAuto says whether the window syncs with a place by itself.
func (p *Places) SetAuto(address string, auto bool) error {
	name, err := nameOf(address)
	if err == nil {
		_, err = p.change(name, false, func(x *Place) { x.Auto = auto })
	}
	return err
}

// change changes one place of the list.
func (p *Places) change(name string, add bool, with func(*Place)) (Place, error) {
	p.mu.Lock()
	defer p.mu.Unlock()
	all, err := p.List()
	if err != nil {
		return Place{}, err
	}
	i := slices.IndexFunc(all, func(x Place) bool { return x.Address == name })
	if i < 0 {
		if !add {
			return Place{}, fmt.Errorf("%s is none of this device's places", name)
		}
		i = len(all)
		all = append(all, Place{Address: name})
	}
	with(&all[i])
	return all[i], save(p.listPath(), placesFile{placesFormat, all})
}

// Forget takes a place off the list, with what is remembered of it and what lets us in. What lies
// there is not touched.
func (p *Places) Forget(address string) error {
	name, err := nameOf(address)
	if err != nil {
		return err
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	all, err := p.List()
	if err != nil {
		return err
	}
	kept := slices.DeleteFunc(slices.Clone(all), func(x Place) bool { return x.Address == name })
	had, err := p.dropSecret(name)
	if err != nil {
		return err
	}
	if len(kept) == len(all) && !had {
		return fmt.Errorf("%s is none of this device's places", name)
	}
	if err := os.Remove(p.memoryPath(name)); err != nil && !errors.Is(err, os.ErrNotExist) {
		return fmt.Errorf("places: %w: %w", store.ErrWrite, err)
	}
	return save(p.listPath(), placesFile{placesFormat, kept})
}
