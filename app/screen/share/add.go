package share

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"yokebook/app/places"
	"yokebook/sync/place"
	"yokebook/sync/serve"
)

// Step is one question of a place that is being added.
type Step string

// The questions. Only what a server wants to know is asked.
const (
	AskKind     Step = "kind"     // a folder, a server, or another device that offers its builds
	AskFolder   Step = "folder"   // its path
	AskServer   Step = "server"   // its address
	AskDevice   Step = "device"   // what the other device shows: the whole pairing text, or its address
	AskTrust    Step = "trust"    // is this the server's fingerprint?
	AskUser     Step = "user"     // user name
	AskPassword Step = "password" // password
	AskCode     Step = "code"     // the code that the other device shows
)

// Adding is a place that is being added.
type Adding struct {
	sharing *Sharing
	steps   []Step // the last is asked; Back goes to the one before
	device  bool   // the server is another device of ours
	address string
	access  place.Access
	Kept    places.Kept // where the password went, when it is done
	Done    string      // the address, when it is done
}

// Add begins to add a place.
func (s *Sharing) Add() *Adding { return &Adding{sharing: s, steps: []Step{AskKind}} }

// Asked is how far the adding of a place has come, without what is secret.
type Asked struct {
	Steps   []Step `json:"steps"`
	Device  bool   `json:"device"`
	Address string `json:"address"`
	User    string `json:"user"`
	Pin     string `json:"pin"` // of a server that nobody vouches for; "" where none was shown
}

// Asked says how far it has come.
func (a *Adding) Asked() Asked {
	out := Asked{Steps: a.steps, Device: a.device, Address: a.address, User: a.access.User}
	if a.access.Pin != nil {
		out.Pin = a.access.Pin.String()
	}
	if !slices.Contains(a.steps, AskFolder) && secretAddress(a.address) {
		out.Address = ""
	}
	return out
}

// Resume goes on with adding a place where it had come to. A password is asked for again.
func (s *Sharing) Resume(at Asked) *Adding {
	a := s.Add()
	if len(at.Steps) == 0 || at.Steps[0] != AskKind {
		return a
	}
	a.steps, a.device, a.address, a.access.User = at.Steps, at.Device, at.Address, at.User
	if pin, err := place.ParsePin(at.Pin); err == nil {
		a.access.Pin = &pin
	}
	return a
}

// Secret reports that the answer to a question is kept in no file.
func Secret(step Step, answer string) bool {
	return step == AskPassword || step == AskCode || (step == AskServer || step == AskDevice) && secretAddress(answer)
}

// secretAddress reports an address in which a code stands, or a password, which some write in front of
// the host: what follows a colon there and is no port.
func secretAddress(text string) bool {
	_, host, written := strings.Cut(text, "://")
	if !written {
		host = text
	}
	host, _, _ = strings.Cut(host, "/")
	if _, port, six := strings.Cut(host, "]"); six && strings.HasPrefix(host, "[") {
		host = port
	}
	_, port, _ := strings.Cut(host, ":")
	return strings.Contains(text, "#") || strings.Contains(host, "@") || strings.Trim(port, "0123456789") != ""
}

// Step is what is asked.
func (a *Adding) Step() Step { return a.steps[len(a.steps)-1] }

// Address is the address so far, as it was typed or as it was understood.
func (a *Adding) Address() string { return a.address }

// User is the user name so far.
func (a *Adding) User() string { return a.access.User }

// Pin is the fingerprint that the server showed; zero before.
func (a *Adding) Pin() place.Pin {
	if a.access.Pin == nil {
		return place.Pin{}
	}
	return *a.access.Pin
}

// Choose answers which kind of place it is.
func (a *Adding) Choose(kind Step) { a.ask(kind) }

// Back goes one question back. It reports false at the first.
func (a *Adding) Back() bool {
	if len(a.steps) == 1 {
		return false
	}
	a.steps = a.steps[:len(a.steps)-1]
	if a.Step() == AskKind {
		a.address = ""
	}
	if a.Step() == AskServer || a.Step() == AskDevice { // it may become another server
		a.access = place.Access{}
	}
	return true
}

func (a *Adding) ask(next Step) {
	if a.Step() != next {
		a.steps = append(a.steps, next)
	}
}

// Write answers a question in writing; it errs when the answer can't be right. The task asks the
// place; nil when another question comes first.
func (a *Adding) Write(text string) (Task, error) {
	text = strings.TrimSpace(text)
	switch a.Step() {
	case AskFolder:
		a.address = text
		return a.folder(text)
	case AskServer:
		a.address = text
		u, err := place.Address(text)
		if err != nil {
			return nil, err
		}
		a.address, a.access, a.device = u.String(), place.Access{}, false
		return a.contact, nil
	case AskDevice:
		return a.other(text)
	case AskUser:
		a.access.User = text
		a.ask(AskPassword)
	case AskPassword:
		a.access.Password = text
		return a.contact, nil
	case AskCode:
		return a.accept(serve.Invitation{Address: a.address, Code: text, Pin: a.Pin()}), nil
	}
	return nil, nil
}

// Trust says that the fingerprint is the one that the server's own screen shows.
func (a *Adding) Trust() Task {
	if a.device {
		a.ask(AskCode)
		return nil
	}
	return a.contact
}

func (a *Adding) folder(path string) (Task, error) {
	if path == "" {
		return nil, errors.New("write the path of the folder")
	}
	return func(ctx context.Context) func() error {
		err := a.sharing.Places.TryFolder(ctx, path)
		return func() error {
			if err != nil {
				return err
			}
			return a.add(path)
		}
	}, nil
}

// other takes up what another device shows.
func (a *Adding) other(text string) (Task, error) {
	a.device, a.address = true, text
	if serve.IsInvitation(text) {
		i, err := serve.ParseInvitation(text)
		if err != nil {
			return nil, err
		}
		a.address = i.Address
		return a.accept(i), nil
	}
	if !strings.Contains(text, "://") {
		text = "https://" + text
	}
	u, err := place.Address(text)
	if err != nil {
		return nil, err
	}
	a.address, a.access = u.String(), place.Access{}
	return a.contact, nil
}

// contact asks the server and learns what it wants to know.
func (a *Adding) contact(ctx context.Context) func() error {
	address, access := a.address, a.access
	err := a.sharing.Places.Try(ctx, address, access)
	return func() error { return a.answered(err) }
}

func (a *Adding) answered(err error) error {
	var unknown *place.UnknownServer
	switch {
	case errors.As(err, &unknown):
		a.access.Pin = &unknown.Pin
		a.ask(AskTrust)
		return nil
	case a.device && (err == nil || errors.Is(err, place.ErrRefused)):
		return fmt.Errorf("%s: this is no yokebook that offers its builds; add it as a server", a.address)
	case errors.Is(err, place.ErrRefused):
		tried := a.access.User != "" || a.access.Password != ""
		a.steps = withoutLast(a.steps, AskPassword)
		a.ask(AskUser)
		if tried {
			return err
		}
		return nil
	case err != nil:
		return err
	}
	kept, err := a.sharing.Places.Trust(a.address, a.access.User, a.access.Password, a.access.Pin)
	if err != nil {
		return err
	}
	a.Kept = kept
	return a.add(a.address)
}

// accept pairs this device with the one that showed the invitation.
func (a *Adding) accept(i serve.Invitation) Task {
	return func(ctx context.Context) func() error {
		address, kept, err := a.sharing.Places.Accept(ctx, a.sharing.Device(), i)
		return func() error {
			if err != nil {
				return err
			}
			a.Kept = kept
			return a.add(address)
		}
	}
}

func (a *Adding) add(address string) error {
	x, err := a.sharing.Places.Add(address, true)
	if err != nil {
		return err
	}
	a.Done = x.Address
	a.sharing.Sync(x.Address, false)
	return nil
}

// withoutLast takes a question off the end.
func withoutLast(steps []Step, last Step) []Step {
	if len(steps) > 1 && steps[len(steps)-1] == last {
		return steps[:len(steps)-1]
	}
	return steps
}
