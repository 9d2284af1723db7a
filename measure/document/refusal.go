package document

import (
	"errors"
	"fmt"
)

// Kinds of refusal that callers tell apart with errors.Is. Every other refusal is plain bad input.
var (
	ErrCut    = errors.New("cut off")           // ends early: perhaps it is still arriving
	ErrSum    = errors.New("wrong sum")         // damaged or altered after it was written
	ErrFormat = errors.New("not a build")       // JSON of another kind
	ErrLarge  = errors.New("larger than taken") // too many bytes, levels or tokens
)

// refusal is one plain line and its kind.
type refusal struct {
	line string
	kind error
}

func (r refusal) Error() string { return r.line }
func (r refusal) Unwrap() error { return r.kind }

func refuse(kind error, format string, args ...any) error {
	return refusal{line: fmt.Sprintf(format, args...), kind: kind}
}
