package logbook

import (
	"errors"
	"fmt"
	"os"
)

// Flush puts the place that was saved last on the disk to stay, so that it outlives a power failure.
// Readings need no flush: they are there before Keep returns. It is not an error that there is none.
func (s *Shelf) Flush() error {
	s.mu.Lock()
	defer s.mu.Unlock()
	f, err := os.OpenFile(s.placePath(), os.O_RDWR, 0)
	if errors.Is(err, os.ErrNotExist) {
		return nil
	}
	if err != nil {
		return fmt.Errorf("place: %w", err)
	}
	err = f.Sync()
	if closed := f.Close(); err == nil {
		err = closed
	}
	if err != nil {
		return fmt.Errorf("place: %w", err)
	}
	return nil
}
