// Package places knows the places that this device syncs with: their addresses, what was remembered
// of them, and what lets us in. Window and command line sync through it.
//
//	<folder>/places.json           addresses and how the last pass went
//	<folder>/places/<hash>.json    what a pass remembers of one place; may be deleted at any time
//	<folder>/secrets.json          users, pinned keys, and the passwords that no key store of the system took;
//	                               readable by the user only
//	<folder>/sync.lock             held while a pass is at work
//
// The folder is that of this device's builds. A password or token is in the system's key store or in
// secrets.json and nowhere else: no build, no list, no log and no error line holds one.
package places
