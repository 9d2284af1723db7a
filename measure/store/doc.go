// Package store keeps builds on this device: one file per build, opened on demand, in a folder that
// the caller names. It speaks records (a reading, a strike, a skip, a change of a head) in the
// canonical form of package document and judges none of them.
//
//	<folder>/builds/<build id>.db        the records of one build
//	<folder>/builds/<build id>.lock      who has it open; empty of a name when nobody has
//	<folder>/snapshots/<build id>/*.json second copies: whole build files with their checksum
//	<folder>/aside/<build id>/*          what was damaged, as it was found, and a report of each repair
//	<folder>/index.json                  the list of builds, a cache that is rebuilt from the files
//
// # What is promised
//
//   - When Keep returns without error, the record has been written and synced to the disk, and the
//     sync was checked. A process killed or a power supply lost at any later instant loses nothing of it.
//   - One record is one key is one transaction, so there are no halves of anything. The key names
//     kind, id and content; the value carries a SHA-256 over key and record. What no checksum vouches
//     for is never served.
//   - Before a file is opened, it is read and every byte of it accounted for (scan). The library that
//     appends to it only ever opens a file that is whole, and must then find what we found (agrees).
//     Anything else is first written anew from what is good in the file and in the snapshots, and put
//     in place by a rename; the damaged file is kept aside (mend). A repair is a union: it can bring
//     back and never take away. Report says what came from where.
//   - Nothing is thrown away: a snapshot is thinned out only when a newer, verified one holds every
//     record of it; a compaction drops only plain members that later ones replaced.
//   - Builds share no file but the index: damage to one is not noticed by another.
//   - One process has a build open at a time, held by a lock of the operating system that dies with
//     its holder. Peek and Verify write no file of a build.
//
// # What is not promised
//
// A record that was kept after the last snapshot has one copy on this device. When its bytes are
// damaged after they were synced, it is lost, and the report names it; when they are cut off just
// there, it can't be told from a record that was never finished. File.Secure writes the snapshot; its
// caller says when. Both copies lie on one device: a lost device loses both.
// The checksums find damage, not malice.
//
// Records never change. The single value that is written again is "plain", the members of a build that
// are derived from its heads or were written by hand. It is there twice; when no copy, no snapshot and
// no head says the layout, the build is not opened.
//
// # How far the injected file system reaches
//
// Everything that this package writes goes through disk.FS and is tested with each call failing and
// with power lost at each call: new files, repairs, copies aside, reports, snapshots, compaction, the
// index, the name in the lock file. Two libraries open files by path themselves. The lock's only takes
// the lock. buntdb 1.3.0 appends the records; its own reads and writes can't be made to fail here. So
// its work is checked from both sides: what it reads was scanned before, and after each of its writes
// a second handle, which is ours, syncs the file and gets the answer that buntdb ignores. A test
// treats its bytes as lost until that second sync; another lets a child process run into a file size
// limit, so that a write of the library's own stops half way; the others reopen from files cut,
// flipped, and filled with zeros at every place.
package store
