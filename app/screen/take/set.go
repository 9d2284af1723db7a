package take

import "encoding/json"

// Set changes a field of the build that is no reading, such as an instrument.
func (m *Model) Set(field string, value json.RawMessage) error {
	_, err := m.log.Set(field, value)
	return err
}
