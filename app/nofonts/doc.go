// Package liberation stands in for the module of this path, which embeds twelve fonts, 4.5 MB of a program.
//
// The plotting library reads all twelve when it is initialised, to have them for its own texts. Our charts
// write their texts themselves (app/draw) and use none of them, so each is answered with the one small font
// that the library links besides; go.mod puts this module in the place of the other.
package liberation
