// Package store keeps builds on this device: one file per build, opened on demand, in a folder that
// the caller names. It speaks records (a reading, a strike, a skip, a change of a head) in the
// canonical form of package document and judges none of them.
//
//	<folder>/builds/<build id>.db    the records of one build
//	<folder>/builds/<build id>.lock  who has it open; empty of a name when nobody has
//	<folder>/index.json              the list of builds, a cache that is rebuilt from the files
//
// # What is promised
//
//   - When Keep returns without error, the record has been written and synced to the disk, and the
//     sync was checked. A process killed at any later instant loses nothing of it.
//   - One record is one key is one transaction, so there are no halves of anything. The key names
//     kind, id and content; the value carries a SHA-256 over key and record. A record whose sum is
//     wrong is set aside: reported by name, never served, never removed. The others load.
//   - Records never change. The single value that is written again is "plain", the members of a
//     build that are derived from its heads or were written by hand. It is there twice; when neither
//     copy is good and no head says the layout, the build is not opened.
//   - One process has a build open at a time, held by a lock of the operating system that dies with
//     its holder. Peek reads without the lock and never writes.
//
// # What is not promised
//
// The file format is that of buntdb 1.3.0, whose ways were measured. It ignores an error of its own
// sync, so Keep syncs a second handle and looks at the answer. It cuts off a last command that ends
// too early, silently: after a kill that is the record that was never acknowledged, but a damaged
// length in the middle of a file takes everything behind it. It has no marks or sums of its own, so
// a flipped bit in its framing (not in a value) makes the open fail or drops a record, and some
// crafted lengths would make the open run without end. An open that fails leaves the file as it is.
// Automatic compaction is off: a file only grows.
package store
