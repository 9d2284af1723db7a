// Package part holds the widgets of the screens: keys that answer a slow gloved press as well as a
// quick one, text that grows or shrinks to its place, pictures, verdict marks and the bar that
// shows a value against its limit.
//
// A part gets its data from the screen and gives back one plain event. It knows no build and no
// store, and it takes no keyboard focus, so that no soft keyboard comes up.
package part
