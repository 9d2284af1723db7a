package store

import "bytes"

// image is what a strict look at the bytes of a file finds.
type image struct {
	records []stored // those with a good checksum, in the order of the file
	gaps    []gap    // everything else; none in a file that is whole
}

// stored is a record with a good checksum.
type stored struct {
	key     string
	body    []byte
	late    bool // it stands behind a damaged place
	rescued bool // it stands in one
}

// gap is a place of a file that holds no record as it was written.
type gap struct {
	at      int
	kind    Kind
	keys    []string // keys that can be read there
	rescued []string // keys of the records whose content is good all the same
}

// scan reads the bytes of a file and changes nothing. It never fails: what is no record is a gap.
// Behind a gap it goes on at the next command, so that a damaged length takes nothing with it.
func scan(data []byte) image {
	var img image
	for pos := 0; pos < len(data); {
		key, value, size, s := frameAt(data[pos:])
		if s == whole {
			if body, wrong := unseal(string(key), string(value)); wrong == "" {
				img.records = append(img.records, stored{key: string(key), body: body, late: len(img.gaps) > 0})
				pos += size
				continue
			}
		}
		end := nextMark(data, pos)
		img.addGap(data[pos:end], pos, s, end == len(data))
		pos = end
	}
	return img
}

// nextMark finds the next command behind pos.
func nextMark(data []byte, pos int) int {
	if i := bytes.Index(data[pos+1:], []byte(mark)); i >= 0 {
		return pos + 1 + i
	}
	return len(data)
}

// addGap says what is wrong at a place and rescues the records whose content is good all the same.
func (img *image) addGap(data []byte, at int, s shape, last bool) {
	g := gap{at: at, kind: Damaged, keys: keysIn(data)}
	text := bytes.TrimRight(data, "\x00")
	if len(text) < len(data) && last {
		_, _, _, s = frameAt(text)
	}
	switch {
	case len(text) == 0:
		g.kind = Zeros
	case last && s == cutOff && !bytes.HasSuffix(text, []byte("}\r\n")): // that is how a record ends, not how it is cut
		g.kind = Unfinished
	}
	for _, r := range rescue(data) {
		r.late, r.rescued = true, true
		img.records = append(img.records, r)
		g.rescued = append(g.rescued, r.key)
	}
	img.gaps = append(img.gaps, g)
}

// whole reports a file that the library may open: it will find what we found and change nothing.
func (img image) whole() bool {
	return len(img.gaps) == 0 && len(img.records) > 0 && img.records[0].key == string(kindMeta)
}

// latest returns the record that counts for each key, in the order in which the keys came first.
func (img image) latest() []stored {
	at := map[string]int{}
	var out []stored
	for _, r := range img.records {
		i, known := at[r.key]
		if !known {
			at[r.key] = len(out)
			out = append(out, r)
			continue
		}
		out[i].body = r.body
	}
	return out
}
