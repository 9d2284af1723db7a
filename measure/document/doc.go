// Package document is the one door for build files: a strict reader for everything that comes from
// elsewhere, a writer whose bytes depend on the content alone, the checksum, and the schema.
//
// # What the reader takes
//
// One JSON object, UTF-8 without byte order mark, at most 8 MiB, 32 levels, 200,000 tokens, texts
// of at most 64 KiB, finite numbers of at most 40 characters, no key twice. Keys are
// case-sensitive. Everything else is refused with one line that says where, what and what to do;
// the caller puts the file's name before it. Members that this version does not know are kept.
//
// A member that may be absent may also be null or "": it then counts as absent. In a record it is
// carried on as it stood, because a record's hash names it.
//
// # What the writer writes
//
// Canonical JSON: keys sorted by their UTF-8 bytes, no spaces, number tokens verbatim, texts with
// the least escapes: \" \\ \b \t \n \f \r, other control characters as \u00xx in lower case, and
// nothing else. Records are sorted by id, then by hash; the hash stands in
// for an id that is absent.
// The member sum is "sha256:<hex>" over these bytes without sum itself and without the one newline
// at the end of the file. It finds damage, not malice.
//
// # Newer formats
//
// "yokebook-build/N" with N above 1 is read as far as it is known. Records that this version can't
// understand are carried raw (measure.Build.Foreign) and the build keeps its format when written.
// The layout must be understood: findings for a wrong layout would be worse than none.
package document
