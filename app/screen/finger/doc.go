// Package finger touches a window of the phone's driver as the system of a phone does: several
// fingers at once, each down, moved and up where and when a test says. It is for tests under
// -tags mobile; a display can't do it, since its pointer is one finger.
//
// The toolkit has no way in for touches but its own event loop, so the functions of that loop are
// taken by their names, of the version that go.mod pins. A test fails to link where they went.
package finger
