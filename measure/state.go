package measure

import (
	"fmt"
	"strings"
)

// Ride says how the wheels stood.
type Ride string

// Load says what weight was on the wheels.
type Load string

// Case is a load case computed on top of a state: the axle wound up under torque.
type Case string

// The rides, loads and cases of a state.
const (
	Droop  Ride = "droop" // wheels hanging; stands under the frame
	AtRide Ride = "ride"  // standing at ride height; stands under the axle count as this
	Bump   Ride = "bump"  // on the bump stops
	Bench  Ride = "bench" // part off the vehicle, or a value stated from a plate or a book

	NoLoad Load = "none"
	Kerb   Load = "kerb"
	Laden  Load = "laden"

	Drive Case = "drive"
	Coast Case = "coast"
)

// State is how the vehicle stood when something was read. The zero State speaks for the whole
// build. Bench has no load.
type State struct {
	Ride Ride
	Load Load
	Case Case
}

// Common states.
var (
	Hanging   = State{Ride: Droop, Load: NoLoad}
	RideKerb  = State{Ride: AtRide, Load: Kerb}
	RideLaden = State{Ride: AtRide, Load: Laden}
	OnBump    = State{Ride: Bump, Load: Laden}
	OffBench  = State{Ride: Bench}
)

// States lists the states that a person is asked for, in the order in which they are taken.
var States = []State{OffBench, Hanging, RideKerb, RideLaden, OnBump}

// String writes "ride/kerb", "ride/kerb/drive", "bench" or "".
func (s State) String() string {
	parts := []string{string(s.Ride)}
	if s.Load != "" {
		parts = append(parts, string(s.Load))
	}
	if s.Case != "" {
		parts = append(parts, string(s.Case))
	}
	return strings.Join(parts, "/")
}

// ParseState reads what String writes. It errs on any other text.
func ParseState(text string) (State, error) {
	var s State
	if text == "" {
		return s, nil
	}
	parts := strings.Split(text, "/")
	s.Ride = Ride(parts[0])
	if len(parts) > 1 {
		s.Load = Load(parts[1])
	}
	if len(parts) > 2 {
		s.Case = Case(parts[2])
	}
	if len(parts) > 3 || s.Case != "" && s.Case != Drive && s.Case != Coast {
		return State{}, fmt.Errorf("state %.40q: use ride/load such as ride/kerb", text)
	}
	return s, s.validate()
}

func (s State) validate() error {
	switch s.Ride {
	case Droop, AtRide, Bump:
		switch s.Load {
		case NoLoad, Kerb, Laden:
			return nil
		case "":
			return fmt.Errorf("load is missing; use none, kerb or laden")
		}
		return fmt.Errorf("load %.20q is not known; use none, kerb or laden", s.Load)
	case Bench:
		if s.Load != "" {
			return fmt.Errorf("a bench reading has no load; leave load out")
		}
		return nil
	case "":
		return fmt.Errorf("ride is missing; use droop, ride, bump or bench")
	}
	return fmt.Errorf("ride %.20q is not known; use droop, ride, bump or bench", s.Ride)
}

// Running reports a state in which the shaft really turns: standing at ride height on its wheels
// with weight on them.
func (s State) Running() bool { return s.Ride == AtRide && (s.Load == Kerb || s.Load == Laden) }

// Contradiction reports a ride and a load that can't go together: hanging wheels carry nothing,
// standing wheels carry something.
func (s State) Contradiction() bool {
	return s.Ride == Droop && s.Load != NoLoad || (s.Ride == AtRide || s.Ride == Bump) && s.Load == NoLoad
}

// Base is the state without its load case.
func (s State) Base() State { s.Case = ""; return s }

// Less orders states as findings are sorted: droop, ride, bump, bench, whole build; then load
// none, kerb, laden; then no case, drive, coast.
func (s State) Less(o State) bool {
	a, b := s.rank(), o.rank()
	for i := range a {
		if a[i] != b[i] {
			return a[i] < b[i]
		}
	}
	return false
}

func (s State) rank() [3]int {
	ride := map[Ride]int{Droop: 0, AtRide: 1, Bump: 2, Bench: 3, "": 4}
	load := map[Load]int{"": 0, NoLoad: 1, Kerb: 2, Laden: 3}
	load3 := map[Case]int{"": 0, Drive: 1, Coast: 2}
	return [3]int{ride[s.Ride], load[s.Load], load3[s.Case]}
}
