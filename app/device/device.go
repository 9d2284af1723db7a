package device

// Storage says where the program keeps what is its own: the one folder that it may write to on a
// phone, which goes when the program is removed.
type Storage interface {
	// Root is the path of the folder. It errs with one plain line where there is none.
	Root() (string, error)
}

// Lamp keeps the screen from going dark.
type Lamp interface {
	// StayLit keeps the screen lit, or leaves it to the system again. Calling it twice is harmless.
	StayLit(on bool)
}

// Clipboard takes text for another program: the quick way to send a sheet.
type Clipboard interface {
	Copy(text string)
}

// Exit is the way out of the program by the system's own back key.
type Exit interface {
	Leave()
}

// Device is what the screens have of the device that they run on. A member that is nil is something
// that this device can't do, and the screens don't offer it.
type Device struct {
	Pickers   Pickers
	Lamp      Lamp
	Clipboard Clipboard
	Exit      Exit
}
