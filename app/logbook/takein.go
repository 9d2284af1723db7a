package logbook

import (
	"context"

	"yokebook/measure"
)

// FileIn is a build file to be taken in.
type FileIn struct {
	Name string
	Data []byte
	Err  error // why it could not be read; nil when it could
}

// TakenIn says what became of a build file.
type TakenIn struct {
	Name  string
	Build measure.ID
	Err   error // why it was not taken in; what the shelf holds is as it was
}

// ImportAll takes build files in, one after the other, until ctx ends, and says of each that it looked
// at what became of it. One that can't be taken in does not stop the others. told is called before each file
// with how many are done. It is Import for the rest.
func (s *Shelf) ImportAll(ctx context.Context, files []FileIn, told func(done int)) []TakenIn {
	out := make([]TakenIn, 0, len(files))
	for i, f := range files {
		if ctx.Err() != nil {
			break
		}
		told(i)
		r := TakenIn{Name: f.Name, Err: f.Err}
		if f.Err == nil {
			r.Build, _, r.Err = s.Import(f.Data)
		}
		out = append(out, r)
	}
	return out
}
