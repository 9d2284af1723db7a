// Package place is where files of builds meet: a folder (a stick, the folder of a file-sync program)
// or a WebDAV server. A place only has to keep files; it understands none of them.
//
// # Names
//
// Each device writes one file of a build, <build id>.<device id>.json, and no other, so nobody ever
// overwrites what somebody else wrote. Readers take every file whose name could be one, in the place
// itself and in its folders, one deep: copies that file-sync programs and browsers make, renamed and
// upper-cased names are simply more input. What is skipped: names that begin with "." or "~", files
// that another program is still writing, empty ones, links. A name from outside is never a path of
// more than two parts and never leaves the place.
//
// # Writing
//
// Replace writes under a temporary name, reads that back, moves it into place and reads it back
// again. Preconditions such as If-Match are not relied upon anywhere: most servers ignore them.
package place
