package sync

import (
	"encoding/json"
	"time"

	"yokebook/measure"
	"yokebook/sync/place"
)

// memoryFormat is the format of a memory.
const memoryFormat = "yokebook-sync/1"

// Everything is read again after a day, and a file that was younger than this when it was read is
// read again at the next pass: FAT dates files in steps of 2 s, and some servers in whole seconds.
const (
	wholeAgain = 24 * time.Hour
	settles    = 5 * time.Second
)

// Memory is what a device remembers of a place from one pass to the next. It holds nothing that can't
// be found out again.
type Memory struct {
	Format string             `json:"format"`
	Device measure.ID         `json:"device"`
	Files  map[string]seen    `json:"files"`
	Builds map[measure.ID]row `json:"builds"`
}

// seen is a file as it was read last.
type seen struct {
	Size    int64      `json:"size"`
	Stamp   string     `json:"stamp"`
	Settled bool       `json:"settled"` // it was old enough for its stamp to mean something
	Read    time.Time  `json:"read"`
	Build   measure.ID `json:"build"` // empty: it holds none
	Sum     string     `json:"sum"`   // SHA-256 of its bytes
}

// row is a build as the last pass left it.
type row struct {
	Stamp string `json:"stamp"` // of the build on this device
	Own   string `json:"own"`   // sum of this device's file, as read back
	Row   Row    `json:"row"`
}

// NewMemory remembers nothing.
func NewMemory() *Memory { return &Memory{Files: map[string]seen{}, Builds: map[measure.ID]row{}} }

// ParseMemory reads what Bytes wrote. Anything else is an empty memory.
func ParseMemory(data []byte) *Memory {
	m := NewMemory()
	if err := json.Unmarshal(data, m); err != nil || m.Format != memoryFormat || m.Files == nil || m.Builds == nil {
		return NewMemory()
	}
	return m
}

// Last is how a build stood when a pass last left both sides alike, and whether it still is the same on
// this device; false, false when nothing is remembered of it.
func (m *Memory) Last(h Held) (last Row, known, same bool) {
	r, known := m.Builds[h.ID]
	return r.Row, known, known && h.Stamp != "" && r.Stamp == h.Stamp
}

// Bytes is the memory as a file.
func (m *Memory) Bytes() ([]byte, error) {
	m.Format = memoryFormat
	return json.Marshal(m)
}

// known reports that a file need not be read again.
func (s seen) known(f place.File, now time.Time) bool {
	age := now.Sub(s.Read)
	return s.Settled && s.Size == f.Size && s.Stamp == f.Stamp && s.Stamp != "" && age >= 0 && age < wholeAgain
}
