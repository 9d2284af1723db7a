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
	Tag    string     `json:"tag"`   // of the stop, where there are several obstacles
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

	Groups []string `json:"groups"` // groups beyond the shaft line that are on the route
	ByUse  bool     `json:"by_use"` // the route goes by what settles most

	// Pages lie over the stop, the lowest first: the name of each and, after a colon, what it is about
	// or what was half written on it.
	Pages []string `json:"pages"`

	Fresh *Fresh `json:"fresh"` // a build that was being started; nil: none

	Visits []string `json:"visits"` // pages that lie over it, the lowest first

	Tops map[string]int `json:"tops"` // first row shown of lists that were turned, by the pages that lead to them
}

// Fresh is a build that is being started: its half-written title and what was answered so far.
type Fresh struct {
	Title   string   `json:"title"`
	Named   bool     `json:"named"` // the title is settled
	Answers []string `json:"answers"`
}

// Laying is how a tool lay when it was said last, in a setup.
type Laying struct {
	How   string `json:"how"`
	Setup int    `json:"setup"`
}

const placeFormat = "yokebook-place/1"

type placeFile struct {
	Format  string  `json:"format"`
	Place   Place   `json:"place"`
	Earlier []Place `json:"earlier"` // of builds that were worked on before, the newest first, one each
}

// mostPlaces is how many builds' places are remembered.
const mostPlaces = 40

func (s *Shelf) placePath() string { return filepath.Join(s.store.Dir(), "place.json") }

// Place returns the place that was saved last; the zero Place where there is none that can be read.
func (s *Shelf) Place() Place { return s.readPlaces().Place }

// PlaceOf returns the place that was saved last of one build; false where there is none.
func (s *Shelf) PlaceOf(build measure.ID) (Place, bool) {
	f := s.readPlaces()
	for _, p := range append([]Place{f.Place}, f.Earlier...) {
		if p.Build == build {
			return p, true
		}
	}
	return Place{}, false
}

func (s *Shelf) readPlaces() placeFile {
	data, err := os.ReadFile(s.placePath())
	if err != nil {
		return placeFile{}
	}
	var f placeFile
	if json.Unmarshal(data, &f) != nil || f.Format != placeFormat {
		return placeFile{}
	}
	return f
}

// SavePlace saves the place in the shelf's folder, so that a program that is killed leaves either the
// earlier one or this one. It is called for every digit and so does not wait for the disk: after a
// power failure there may be none, which costs a person a digit and no reading.
func (s *Shelf) SavePlace(p Place) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	data, err := json.Marshal(placeFile{placeFormat, p, s.earlier(p.Build)})
	if err != nil {
		return fmt.Errorf("place: %w", err)
	}
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

// earlier are the places of all builds but one, the newest first.
func (s *Shelf) earlier(than measure.ID) []Place {
	f := s.readPlaces()
	var out []Place
	for _, p := range append([]Place{f.Place}, f.Earlier...) {
		if p.Build != than && p.Build != "" && len(out) < mostPlaces {
			p.Open, p.Pages, p.Fresh, p.Visits = false, nil, nil, nil
			out = append(out, p)
		}
	}
	return out
}
