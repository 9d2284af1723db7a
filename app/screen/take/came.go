package take

// Came brings the stop up to date after records came into the build from elsewhere. What is typed and
// asked stays as it is.
func (m *Model) Came() {
	if s, ok := m.find(m.stop.Point.Key, m.stop.State); ok {
		m.stop = s
	}
}
