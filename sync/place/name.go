package place

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"yokebook/measure"
)

// FileName is the one file of a build that a device writes.
func FileName(build, device measure.ID) string {
	return string(build) + "." + string(device) + ".json"
}

// Owner returns build and device of a name that FileName made; false for any other.
func Owner(name string) (build, device measure.ID, ok bool) {
	stem, isJSON := strings.CutSuffix(name, ".json")
	first, second, two := strings.Cut(stem, ".")
	build, err := measure.ParseID(first)
	if err != nil {
		return "", "", false
	}
	device, err = measure.ParseID(second)
	return build, device, err == nil && isJSON && two
}

// IsOurs reports a name that this program gives: a device's file, or a build handed over.
func IsOurs(name string) bool {
	if _, _, ok := Owner(name); ok {
		return true
	}
	stem, isJSON := strings.CutSuffix(name, ".json")
	_, err := measure.ParseID(stem)
	return isJSON && err == nil
}

// TempName is the name that a file has until it is whole. It does not end in ".part", which some
// servers refuse (from memory).
func TempName(name string) string {
	base := strings.LastIndexByte(name, '/') + 1
	return name[:base] + "." + name[base:] + ".tmp"
}

// unfinished are the ends of names that other programs give to files that are still arriving.
var unfinished = []string{".tmp", ".part", ".partial", ".filepart", ".crdownload", ".icloud", ".download"}

// Wanted reports whether a file may be a build, by name and size. Programs that make a copy of a
// file keep ".json" somewhere in its name; ".jso" is what is left of it in a short FAT name.
func Wanted(name string, size int64) bool {
	if !Valid(name) || size == 0 {
		return false
	}
	base := strings.ToLower(name[strings.LastIndexByte(name, '/')+1:])
	if hidden(base) || !strings.Contains(base, ".jso") {
		return false
	}
	for _, end := range unfinished {
		if strings.HasSuffix(base, end) {
			return false
		}
	}
	return true
}

// hidden names belong to systems and programs, not to people.
func hidden(base string) bool { return strings.HasPrefix(base, ".") || strings.HasPrefix(base, "~") }

// Valid reports a name that stays inside a place: one part or two, none of them "." or "..", without
// control characters or backslashes.
func Valid(name string) bool {
	if !utf8.ValidString(name) || strings.ContainsFunc(name, func(r rune) bool { return unicode.IsControl(r) || r == '\\' }) {
		return false
	}
	parts := strings.Split(name, "/")
	for _, p := range parts {
		if p == "" || p == "." || p == ".." || len(p) > 255 {
			return false
		}
	}
	return len(parts) <= 2
}
