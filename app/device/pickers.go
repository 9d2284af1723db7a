package device

import "errors"

// ErrDismissed says that a picker was left without a choice. Nothing was read or written.
var ErrDismissed = errors.New("nothing was chosen")

// Picked is a file that was chosen. Data is its whole content.
type Picked struct {
	Name string
	Data []byte
}

// Pickers lets a person choose where a file goes to and which files to read, with the dialogs of the
// system. A file is copied in or out: where it came from can't be relied on later.
type Pickers interface {
	// Save offers name, writes data to the place that is chosen and reads it back. done gets nil only
	// when what was read back is what was to be written, ErrDismissed when no place was chosen, and
	// otherwise one plain line.
	Save(name string, data []byte, done func(error))

	// Open reads the files that are chosen; where the system's dialog gives one at a time, it is one.
	// done gets ErrDismissed when none was chosen. It never gets files and an error together.
	Open(done func(files []Picked, err error))
}
