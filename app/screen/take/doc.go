// Package take is the state of the Take screen: which stop of the route one is at, the half-typed
// value, how the vehicle stands, which page is shown, what the last reading changed. It knows no
// toolkit: the screen calls its methods and shows what it says.
//
// A value is kept in three steps. Keep takes what was typed; where a sign matters the page Sides
// asks for it by a picture; where something looks wrong the page Doubts asks back. Then the logbook
// writes it to the disk and the page Result shows what changed.
//
// How an angle finder lies is asked once in a setup and remembered from reading to reading. A
// Reversal leads through the two readings that find a finder's zero. A correction keeps the stop that
// work stood at and goes back to it. Where and Resume carry all of this over the end of the program.
//
// How the vehicle stands belongs to the vehicle, not to the stop: a stop in another state first
// shows the page Bring, and a changed state raises the setup.
package take
