// Package tool draws the pictures that say how to read: the drive line seen from the side with the part
// to be read and the tool on it, the two answers to "which end is high", how the vehicle stands, how a
// finder lies, and the shapes of the verdicts. The front of the vehicle is always on the left.
//
// Each is a page of package draw, in units of its own, and is drawn as large as there is room. It holds
// no words: whoever shows it sets those beside it, in the reader's language.
package tool
