// Package device says what the program asks of the device that it runs on, one small interface for
// each. It knows no window toolkit: package app/screen/system does these things through one, and
// tests put a device of their own in its place.
//
// All functions that are handed over here are called on the goroutine of the window.
package device
