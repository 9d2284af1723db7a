// Package disk is the small part of a file system that the store stands on, so that a test can put
// another one in its place: one that fails at the n-th call, or one that loses what was not synced
// (package disktest).
//
// Everything that the store writes itself goes through an FS. The library that appends records to a
// build's file opens that file by its path and is not reached; see package store for what that means.
package disk
