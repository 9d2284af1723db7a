package words

import (
	"fmt"
	"strconv"
	"strings"

	"yokebook/checks"
	"yokebook/measure"
)

// Verdict returns the word for a verdict: clear, out, unsure, waiting.
func (l *Language) Verdict(v checks.Verdict) string {
	if v == checks.Unsaid {
		return l.Say("verdict.unsaid")
	}
	return l.or("verdict."+string(v), string(v))
}

// State returns what a state is called: "at ride height, own weight".
func (l *Language) State(s measure.State) string { return l.stateText(s.String()) }

func (l *Language) stateText(state string) string {
	if state == "" {
		return l.Say("state.whole")
	}
	return l.or("state."+state, state)
}

// Ride returns what the wheels do in a ride: "hanging".
func (l *Language) Ride(r measure.Ride) string { return l.or("ride."+string(r), string(r)) }

// Load returns what weight a load is: "own weight".
func (l *Language) Load(load measure.Load) string { return l.or("load."+string(load), string(load)) }

// Basis returns where a value comes from: "stated".
func (l *Language) Basis(b measure.Basis) string { return l.or("basis."+string(b), string(b)) }

// Question returns the plain question that a point is asked with.
func (l *Language) Question(p measure.Point) string {
	if l.native {
		return p.Question
	}
	return l.or("question."+p.Key, p.Question)
}

// Place returns where to put the tool at a point.
func (l *Language) Place(p measure.Point) string {
	if l.native {
		return p.Place
	}
	return l.or("place."+p.Key, p.Place)
}

// Code returns the meaning of one answer of a point.
func (l *Language) Code(p measure.Point, c measure.Code) string {
	if l.native {
		return c.Means
	}
	return l.or(codeKey(p, c), c.Means)
}

// codeKey names the meaning of an answer: "code.obstacle.side.1".
func codeKey(p measure.Point, c measure.Code) string {
	return fmt.Sprintf("code.%s.%d", p.Key, c.Value)
}

// Point returns the name of a point: "gearbox slope".
func (l *Language) Point(key string) string {
	if name, ok := l.sentences["point."+key]; ok {
		return name
	}
	part, dimension, ok := strings.Cut(key, ".")
	if !ok {
		return spell(key)
	}
	return l.Say("point", l.Part(part), l.or("dimension."+dimension, spell(dimension)))
}

// Part returns the name of a part of the line: "gearbox".
func (l *Language) Part(key string) string { return l.or("part."+key, spell(key)) }

// Input returns the name of something that adds doubt: a point, or the zero of an instrument.
func (l *Language) Input(key string) string {
	if name, ok := l.sentences["input."+key]; ok {
		return name
	}
	if tool, ok := strings.CutSuffix(key, ".zero"); ok {
		return l.Say("input.zero", tool)
	}
	return l.Point(key)
}

// Check returns what a check is called, with its subject: "joint angle, front joint".
func (l *Language) Check(key, subject string) string {
	name := l.or("check."+key, spell(strings.ReplaceAll(key, ".", " ")))
	if subject == "" {
		return name
	}
	return l.Say("check", name, l.Subject(subject))
}

// Subject returns what a finding speaks of: "front joint", "shaft", a part's name, a
// point's.
func (l *Language) Subject(key string) string {
	if _, ok := measure.PointOf(key); ok {
		return l.Point(key)
	}
	if _, err := strconv.Atoi(key); err == nil { // an obstacle's tag
		return l.Say("subject.obstacle", key)
	}
	return l.or("subject."+key, l.Part(key))
}

// Group returns the heading of a group of points.
func (l *Language) Group(g measure.Group) string { return l.or("group."+string(g), string(g)) }

// Instrument returns what a kind of instrument is called: "angle finder".
func (l *Language) Instrument(kind string) string { return l.or("tool."+kind, kind) }

// Unit returns how a unit is written: "°" for deg.
func (l *Language) Unit(unit string) string { return l.or("unit."+unit, unit) }

// Caution returns a caution in plain words; "" for the empty key.
func (l *Language) Caution(key string) string {
	if key == "" {
		return ""
	}
	return l.Say(key)
}

// unitAfter is the unit as it follows a number: close up for ° and ", after a space otherwise.
func (l *Language) unitAfter(unit string) string {
	word := l.Unit(unit)
	if word == "" || word == "°" {
		return word
	}
	return " " + word
}

// spell turns a key into words: "bolt_circle" → "bolt circle".
func spell(key string) string { return strings.ReplaceAll(key, "_", " ") }

// By returns who read a value: "the shaft builder"; a name that no table has comes back as it is.
func (l *Language) By(by string) string { return l.or("by."+by, by) }
