package store

import (
	"bytes"
	"testing"
)

// Whatever the bytes are, the scan ends, takes no record whose content no sum vouches for, and a file
// that it calls whole is one that the library reads the same way.
func FuzzScan(f *testing.F) {
	whole, err := dump(sample(2), nil)
	if err != nil {
		f.Fatal(err)
	}
	f.Add(whole)
	f.Add(whole[:len(whole)-20])
	f.Add(append(bytes.Clone(whole), make([]byte, 64)...))
	for _, row := range strangers {
		f.Add([]byte(row.content))
		f.Add(append(bytes.Clone(whole), row.content...))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		img := scan(data)
		for _, r := range img.records {
			vouched := bytes.Contains(data, []byte(sumOf(r.key, r.body))) || bytes.Contains(data, []byte(hexSum(r.body)))
			if !vouched || !bytes.Contains(data, r.body) {
				t.Fatalf("%s is served, and nothing vouches for it", r.key)
			}
		}
		if !img.whole() {
			return
		}
		db, err := openDB(":memory:")
		if err != nil {
			t.Fatal(err)
		}
		defer db.Close()
		if err := db.Load(bytes.NewReader(data)); err != nil {
			t.Fatalf("called whole, and the library says: %v", err)
		}
		if err := agrees(db, img); err != nil {
			t.Fatal(err)
		}
	})
}
