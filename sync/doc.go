// Package sync is what one press of "sync" does: one pass of one device over one place.
//
// A pass reads every file in the place that holds a build, found by content, unites it with what this
// device has (package merge), takes what is new in, and writes one file per build, <build id>.<device
// id>.json, with everything that this device then has. The file is read back before a build counts as
// synced. Files of other devices are never written, moved or removed.
//
// # Why nothing is lost
//
//   - Each file has one writer, so no two devices overwrite each other; and before a device replaces
//     its own file it reads it and takes its records in, so a device that was restored from an old
//     backup gets back what it had written since.
//   - What came in is on this device's disk before the file that shows it goes out.
//   - What a pass remembers (Memory) only saves reading. A build that changed at all, here or there,
//     has all its files read; everything is read again on request and once a day. A memory that is
//     lost, old or damaged makes a pass slower, not wrong.
//
// # What is not promised
//
// Two devices that carry the same device id (one copied from the other) write one file in turns; each
// still holds all its own readings and the next passes bring them together. A place that swallows
// whole files is noticed at the next pass, not prevented.
package sync
