package screen

import (
	"encoding/json"
	"strings"

	"yokebook/app/screen/settle"
	"yokebook/measure"
)

// marked is a visit that is opened again after the program was killed. mark is its name, and after a
// colon what it needs to know; visitOf makes it again. Nothing secret stands in it.
type marked interface{ mark() string }

// markOf is a mark that needs to know several things.
func markOf(name string, about any) string {
	data, err := json.Marshal(about)
	if err != nil { // of plain members; it is opened as it is at first
		return name
	}
	return name + ":" + string(data)
}

// about reads what markOf wrote; where it can't be read, all is as it is at first.
func about[T any](rest string) T {
	var out T
	if json.Unmarshal([]byte(rest), &out) != nil {
		var none T
		return none
	}
	return out
}

// visitOf makes a visit again from its mark; nil for one that is not known or no longer possible.
func (s *Screen) visitOf(mark string) visit {
	name, rest, _ := strings.Cut(mark, ":")
	switch name {
	case "settings":
		return &settings{settle.Key(rest)}
	case "search":
		return &searching{rest}
	case "builds":
		return buildsMore{}
	case "again":
		return againOf(about[againMark](rest))
	case "taking":
		return takingOf(about[takingMark](rest))
	case "places":
		return placesVisit{}
	case "place":
		m := about[placeMark](rest)
		return &placeVisit{address: m.Address, asks: m.Asks, builds: m.Builds}
	case "add":
		return addOf(about[addMark](rest))
	case "files":
		return filesOf(about[[]measure.ID](rest))
	case "offer":
		m := about[offerMark](rest)
		return &offerVisit{devices: m.Devices, asks: m.Asks}
	}
	if s.take == nil {
		return nil
	}
	return s.visitOfBuild(name, rest)
}

// visitOfBuild makes a visit over an open build.
func (s *Screen) visitOfBuild(name, rest string) visit {
	switch name {
	case "cure":
		return s.cureOf(about[cureMark](rest))
	case "tools":
		return &tools{at: rest}
	case "changing":
		return &changing{rest}
	case "forming":
		return s.formingOf(about[formingMark](rest))
	case "handover":
		return s.handoverOf(about[handoverMark](rest))
	case "drawing":
		return drawingOf(rest)
	case "leaving":
		if s.take.HalfTyped() {
			return leavingVisit{}
		}
	}
	return nil
}
