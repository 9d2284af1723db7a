// Package merge unites any number of files of one build into one, in any order and any number of
// times with the same bytes as result. Nothing is lost and nobody wins by being newer: records are
// a set, known by id and content, and what is current is derived from it afterwards.
//
//	readings, strikes, skips, heads   union; the same id with other content is kept twice and reported
//	title, note, layout, instruments, limits   see below
//	members this version does not know   union; where two clash the greater canonical bytes stay, reported
//
// # Plain keys
//
// A plain key of which no head speaks counts as one head with clock 0 and an id made from its
// content (document.Implied). Heads are united like any records. In the result such a head is
// written as a plain key again where it is alone in its field, and as a head where it is not. This
// is exact: a file always stands for the same set of heads, which is why the order never matters.
package merge
