package device

import (
	"bytes"
	"fmt"
	"io"
)

// Write writes a file through a stream of the system and reads it back. Android reports no error of
// a stream that is written to (a full card, a cloud that is away), so what was read back decides.
// create and open give the two streams; Write closes both.
func Write(name string, data []byte, create func() (io.WriteCloser, error), open func() (io.ReadCloser, error)) error {
	to, err := create()
	if err != nil {
		return fmt.Errorf("%s: can't be written there (%w); choose another place", name, err)
	}
	_, err = to.Write(data)
	if closed := to.Close(); err == nil {
		err = closed
	}
	if err != nil {
		return fmt.Errorf("%s: was not written whole (%w); choose another place", name, err)
	}
	back, err := Read(name, open)
	if err != nil {
		return fmt.Errorf("%w; it may not have been written: choose another place", err)
	}
	if !bytes.Equal(back, data) {
		return fmt.Errorf("%s: %d bytes were written and %d other ones came back; choose another place", name, len(data), len(back))
	}
	return nil
}

// Most is the largest file that is read: a build of 100,000 readings takes half of it.
const Most = 64 << 20

// Read reads a whole file through a stream of the system and closes it.
func Read(name string, open func() (io.ReadCloser, error)) ([]byte, error) {
	from, err := open()
	if err != nil {
		return nil, fmt.Errorf("%s: can't be read (%w)", name, err)
	}
	data, err := io.ReadAll(io.LimitReader(from, Most+1))
	if closed := from.Close(); err == nil {
		err = closed
	}
	if err != nil {
		return nil, fmt.Errorf("%s: can't be read to its end (%w)", name, err)
	}
	if len(data) > Most {
		return nil, fmt.Errorf("%s: is larger than %d MB; it is no file of this program", name, Most>>20)
	}
	return data, nil
}
