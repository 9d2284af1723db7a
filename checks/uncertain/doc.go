// Package uncertain carries doubt through arithmetic by drawing.
//
// Every cause of doubt (the display step of one reading, the zero error of one finder on one day)
// is a column of N unit draws, named by a key. A formula is computed once for each row, so causes
// that two readings share cancel in a difference and add in a sum without further bookkeeping.
//
// The draws are stratified: a column holds the N points of its distribution at (i+½)/N, i = 0…N−1,
// once each, in an order that depends on the key alone. So the same key gives the same bits on
// every device, and a new cause leaves all other columns as they were.
//
// Method: propagation of distributions, JCGM 101:2008 (from memory), with the sample space cut
// into equal slices. Where it stops: N rows settle a chance to about one part in a thousand and
// say nothing of rarer things.
//
// Nothing here calls math.Exp, Log, Pow, Erf, Hypot or Gamma, whose last bits differ between
// processors, and no product is left open to a fused multiply-add.
package uncertain
