package logbook

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"

	"yokebook/measure"
)

// Place is where work stands in the window of this device: what a person would miss after the
// program was killed. It belongs to no build and goes to no other device. Every member may be empty.
type Place struct {
	Build  measure.ID `json:"build"` // the build that was worked on last
	Open   bool       `json:"open"`  // it is still open
	Point  string     `json:"point"` // the stop
	State  string     `json:"state"` // of the stop, as measure.State writes it
	Typed  string     `json:"typed"` // half-typed, at the stop
	Stands string     `json:"stands"`
	Setup  int        `json:"setup"`
	Height string     `json:"height"` // mm

	HeightAsked bool   `json:"height_asked"` // the height was being typed
	HeightTyped string `json:"height_typed"`

	Corrects measure.ID `json:"corrects"` // the reading that was being corrected
	Right    string     `json:"right"`    // half-typed, to stand in its place

	Reverses string     `json:"reverses"` // the tool whose zero was being found
	First    measure.ID `json:"first"`    // the first of the two readings, when it is kept

	Units  map[string]string `json:"units"`  // by quantity
	Tools  map[string]string `json:"tools"`  // by quantity
	Laid   map[string]Laying `json:"laid"`   // by tool
	Warned []string          `json:"warned"` // cautions that were seen

	Visits []string `json:"visits"` // pages that lie over it, the lowest first
}

// Laying is how a tool lay when it was said last, in a setup.
type Laying struct {
	How   string `json:"how"`
	Setup int    `json:"setup"`
}

const placeFormat = "yokebook-place/1"

type placeFile struct {
	Format string `json:"format"`
	Place  Place  `json:"place"`
}

func (s *Shelf) placePath() string { return filepath.Join(s.store.Dir(), "place.json") }

// Place returns the place that was saved last; the zero Place where there is none that can be read.
func (s *Shelf) Place() Place {
	data, err := os.ReadFile(s.placePath())
	if err != nil {
		return Place{}
	}
	var f placeFile
	if json.Unmarshal(data, &f) != nil || f.Format != placeFormat {
		return Place{}
	}
	return f.Place
}

// SavePlace saves the place in the shelf's folder, so that a program that is killed leaves either the
// earlier one or this one. It is called for every digit and so does not wait for the disk: after a
// power failure there may be none, which costs a person a digit and no reading.
func (s *Shelf) SavePlace(p Place) error {
	data, err := json.Marshal(placeFile{placeFormat, p})
	if err != nil {
		return fmt.Errorf("place: %w", err)
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if bytes.Equal(data, s.place) {
		return nil
	}
	path := s.placePath()
	if err := os.WriteFile(path+".tmp", data, 0o644); err != nil {
		return fmt.Errorf("place: %w", err)
	}
	if err := os.Rename(path+".tmp", path); err != nil {
		return fmt.Errorf("place: %w", err)
	}
	s.place = data
	return nil
}
