package place

import (
	"bytes"
	"context"
	"errors"
	"fmt"
)

// Replace puts data in place of a file and returns when it was read back from there. When it errs
// the file holds its old bytes or the new ones, whole; then a temporary file may be left, which the
// next Replace of the same file takes away. It errs with ErrUnlike when the place did not give back
// what it was given; trying again later can help.
//
// One device at a time replaces a file: the name holds the device.
func Replace(ctx context.Context, p Place, name string, data []byte) error {
	if len(data) > MaxFile {
		return fmt.Errorf("%s: %s %w", p.Name(), name, ErrLarge)
	}
	temp := TempName(name)
	err := p.Put(ctx, temp, data)
	if err == nil {
		err = same(ctx, p, temp, data)
	}
	if err != nil {
		_ = p.Delete(ctx, temp) // the first error is the one to tell
		return err
	}
	// A move whose answer was lost has happened all the same: the file itself says so.
	moveErr := p.Move(ctx, temp, name)
	if err := same(ctx, p, name, data); err == nil || moveErr == nil {
		return err
	}
	_ = p.Delete(ctx, temp)
	return moveErr
}

// same reads a file back.
func same(ctx context.Context, p Place, name string, want []byte) error {
	got, err := p.Get(ctx, name)
	if errors.Is(err, ErrNone) || errors.Is(err, ErrLarge) || err == nil && !bytes.Equal(got, want) {
		return fmt.Errorf("%s: %s %w; try again", p.Name(), name, ErrUnlike)
	}
	return err
}
