package measure

import (
	"errors"
	"fmt"

	"github.com/google/uuid"
)

// ID names a record: a UUID of any version in its 36-character lower-case form. Ours are version 7.
// An ID is a name, never an order and never a path that came from outside unchecked.
type ID string

// ErrID is returned for text that is not a lower-case UUID.
var ErrID = errors.New("not a lower-case UUID of 36 characters")

// ParseID checks text and returns it as an ID. It errs with ErrID.
func ParseID(text string) (ID, error) {
	if len(text) != 36 {
		return "", fmt.Errorf("%.60q is %w", text, ErrID)
	}
	for i := 0; i < len(text); i++ {
		c := text[i]
		dash := i == 8 || i == 13 || i == 18 || i == 23
		switch {
		case dash && c == '-', !dash && (c >= '0' && c <= '9' || c >= 'a' && c <= 'f'):
		default:
			return "", fmt.Errorf("%.60q is %w", text, ErrID)
		}
	}
	return ID(text), nil
}

// NameID returns the UUID of version 5 for a name inside a build's name space.
// Source: RFC 9562 section 5.5.
func NameID(build ID, name string) ID {
	space, err := uuid.Parse(string(build))
	if err != nil {
		space = uuid.Nil
	}
	return ID(uuid.NewSHA1(space, []byte(name)).String())
}
