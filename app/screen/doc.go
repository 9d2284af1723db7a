// Package screen is the window: builds, and the Take screen that walks along the route of one.
//
// Screens are thin. What they show is the state of a model that knows no toolkit (packages take and
// start); what they do is to call it and to show it again. Widgets stand in package part, their
// places in arrange, pictures in app/draw/tool, colours in look, and every word comes from app/words.
//
// Where work stands is saved with every change, in the shelf's folder, so that the window opens again at
// the same stop however the program ended.
//
// A page is built anew when another one is shown; while digits are typed only the display changes.
// Everything runs on the toolkit's one goroutine.
package screen
