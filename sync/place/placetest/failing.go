package placetest

import (
	"context"
	"errors"

	"yokebook/sync/place"
)

// ErrPlace is what a failing call returns.
var ErrPlace = errors.New("the test's place failed")

// Mode says how a call fails and what happens after it.
type Mode int

// The modes.
const (
	Before Mode = iota // the call does nothing; the next ones work
	After              // the call is done, but its answer is lost; the next ones work
	Half               // a write leaves half of its bytes; the next calls work
	Dead               // the call is half done and everything after it fails, as when the program ends there
)

// Modes are all of them.
var Modes = []Mode{Before, After, Half, Dead}

// Failing is a place of which the call with number At fails, counted from 1.
type Failing struct {
	place.Place
	At    int
	Mode  Mode
	Calls int
}

// fails counts a call: first whether it is to be done, then whether it is to be called failed.
func (f *Failing) fails() (do, failed bool) {
	f.Calls++
	switch {
	case f.At == 0 || f.Calls < f.At, f.Calls > f.At && f.Mode != Dead:
		return true, false
	case f.Calls > f.At:
		return false, true
	}
	return f.Mode == After, true
}

// List fails or lists.
func (f *Failing) List(ctx context.Context) (place.Listing, error) {
	if _, failed := f.fails(); failed {
		return place.Listing{}, ErrPlace
	}
	return f.Place.List(ctx)
}

// Get fails or reads.
func (f *Failing) Get(ctx context.Context, name string) ([]byte, error) {
	if _, failed := f.fails(); failed {
		return nil, ErrPlace
	}
	return f.Place.Get(ctx, name)
}

// Put fails or writes.
func (f *Failing) Put(ctx context.Context, name string, data []byte) error {
	first := f.Calls+1 == f.At
	do, failed := f.fails()
	if first && (f.Mode == Half || f.Mode == Dead) {
		data, do = data[:len(data)/2], true
	}
	return f.done(do, failed, func() error { return f.Place.Put(ctx, name, data) })
}

// Move fails or moves.
func (f *Failing) Move(ctx context.Context, from, to string) error {
	do, failed := f.fails()
	return f.done(do, failed, func() error { return f.Place.Move(ctx, from, to) })
}

// Delete fails or deletes.
func (f *Failing) Delete(ctx context.Context, name string) error {
	do, failed := f.fails()
	return f.done(do, failed, func() error { return f.Place.Delete(ctx, name) })
}

func (f *Failing) done(do, failed bool, work func() error) error {
	var err error
	if do {
		err = work()
	}
	if failed {
		return ErrPlace
	}
	return err
}
