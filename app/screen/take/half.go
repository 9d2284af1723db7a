package take

import "strings"

// HalfTyped reports that the page holds a value that was begun and not kept.
func (m *Model) HalfTyped() bool {
	switch m.page {
	case Keypad, Height:
		return !m.Typed().Empty()
	case Write:
		return strings.TrimSpace(m.written) != ""
	}
	return false
}
