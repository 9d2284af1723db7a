// Package serve offers a folder of builds by WebDAV over TLS to devices that were paired with it, and
// holds the other end of pairing too.
//
// # Pairing
//
// The server shows an Invitation: its address, a code that works once, and the fingerprint of its
// key. A device that has all three speaks to that key and to no other, gives the code, and gets a
// token of its own, which is its password from then on. Tokens are taken back one by one. A code dies
// when it was used, after a quarter of an hour and after ten wrong ones; five failures from one
// address, of codes or of tokens, make a pause of a minute.
//
// # What a paired device may do
//
// List and read everything in the folder, and write <build id>.<its own id>.json: the rule of one
// writer per file is kept by the server. A file is put in place whole or not at all, whatever becomes
// of the upload. There are no locks and no folders to be made; any WebDAV client can mount the folder
// to read it.
package serve
