package store

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"regexp"
	"slices"
)

var (
	keyForm  = regexp.MustCompile(`(reading|strike|skip|head)/([0-9a-f-]{36}|-)/([0-9a-f]{64})`)
	ownForm  = regexp.MustCompile(`\r\n(meta|plain|plain/copy)\r\n`)
	bodyForm = regexp.MustCompile(`[0-9a-f]{64} \{`)
)

// maxTries bounds the work on one damaged place.
const maxTries = 2000

// keysIn lists the keys that can be read in a damaged place.
func keysIn(data []byte) []string {
	var out []string
	for _, k := range keyForm.FindAll(data, maxTries) {
		out = append(out, string(k))
	}
	for _, k := range ownForm.FindAllSubmatch(data, maxTries) {
		out = append(out, string(k[1]))
	}
	return out
}

// rescue finds records in a damaged place whose body is proved good by one of the two sums that are
// kept of it: the one in front of the value, over key and body, and the one at the end of the key.
func rescue(data []byte) []stored {
	var out []stored
	seen := map[string]bool{}
	add := func(key string, body []byte) {
		if !seen[key] {
			out = append(out, stored{key: key, body: body})
		}
		seen[key] = true
	}
	for _, at := range keyForm.FindAllSubmatchIndex(data, maxTries) {
		key, body := string(data[at[0]:at[1]]), bodyAfter(data[at[1]:])
		if body != nil && hexSum(body) == string(data[at[6]:at[7]]) && slices.Contains(keysOf(body), key) {
			add(key, body)
		}
	}
	for _, at := range bodyForm.FindAllIndex(data, maxTries) {
		sum, body := string(data[at[0]:at[0]+64]), object(data[at[1]-1:])
		for _, key := range keysOf(body) {
			if body != nil && sumOf(key, body) == sum {
				add(key, body)
			}
		}
	}
	return out
}

// bodyAfter finds the object that follows a key, if it follows near enough to be its own.
func bodyAfter(data []byte) []byte {
	const between = 100 // a length, a sum and line breaks
	i := bytes.IndexByte(data[:min(len(data), between)], '{')
	if i < 0 {
		return nil
	}
	return object(data[i:])
}

// object cuts out the JSON object that data begins with; nil when there is none.
func object(data []byte) []byte {
	var raw json.RawMessage
	if err := json.NewDecoder(bytes.NewReader(data)).Decode(&raw); err != nil {
		return nil
	}
	return raw
}

// keysOf lists the keys that a body may have stood under.
func keysOf(body []byte) []string {
	keys := []string{string(kindMeta), string(kindPlain), plainCopy}
	var has struct{ ID string }
	if body == nil || json.Unmarshal(body, &has) != nil {
		return keys
	}
	if has.ID == "" {
		has.ID = "-"
	}
	for _, k := range []kind{kindReading, kindStrike, kindSkip, kindHead} {
		keys = append(keys, string(k)+"/"+has.ID+"/"+hexSum(body))
	}
	return keys
}

func hexSum(body []byte) string {
	sum := sha256.Sum256(body)
	return hex.EncodeToString(sum[:])
}
