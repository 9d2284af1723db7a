package document

import (
	"bytes"
	"encoding/json"
	"errors"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
)

// Whatever bytes come: no panic, one line, and what is accepted is written and read again without
// a change.
func FuzzRead(f *testing.F) {
	for _, name := range []string{"hand.json", "full.json", "newer.json", "hand.want", "full.want"} {
		f.Add(golden(f, name))
	}
	names, _ := filepath.Glob(badFolder + "/*.json")
	for _, name := range names {
		f.Add(file(f, filepath.Base(name)))
	}
	for _, seed := range []string{`null`, `{"a":1,"a":2}`, `{"ID":1,"id":2}`, `"\ud800"`, "\"\xff\"", `NaN`, `1e999`,
		`9007199254740993`, strings.Repeat("[", 10_001), `{"a":[]}{}`, "\xef\xbb\xbf{}", `"../../etc\u0000x"`} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		b, _, err := Read(data)
		if err != nil {
			if strings.ContainsAny(err.Error(), "\r\n") || err.Error() == "" {
				t.Fatalf("not one line: %q", err)
			}
			return
		}
		first, err := Write(b)
		if errors.Is(err, ErrLarge) {
			return
		}
		if err != nil {
			t.Fatalf("accepted, but not written: %v", err)
		}
		again, seal, err := Read(first)
		if err != nil || seal != Whole {
			t.Fatalf("written, but not read: %v, seal %v\n%s", err, seal, first)
		}
		second, err := Write(again)
		if err != nil || !bytes.Equal(first, second) {
			t.Fatalf("written twice it differs: %v\n%s\n%s", err, first, second)
		}
	})
}

// The standard decoder is the judge: what the scanner accepts is JSON, and its canonical form says
// the same.
func FuzzCanonical(f *testing.F) {
	for _, seed := range []string{`{"a":[1.10,1E2,-0],"b":"\u00e9\n\/"}`, ` [ ] `, `"\ud83d\udd27"`, `[true,false,null,"",{}]`, `[1,]`, `{"a":1,"a":1}`} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		out, err := Canonical(data)
		if err != nil {
			return
		}
		if !json.Valid(data) {
			t.Fatalf("accepted, but no JSON: %q", data)
		}
		if was, is := anyOf(t, data), anyOf(t, out); !reflect.DeepEqual(was, is) {
			t.Fatalf("%q became %q", data, out)
		}
		if again, err := Canonical(out); err != nil || !bytes.Equal(out, again) {
			t.Fatalf("not its own canonical form: %q, %q, %v", out, again, err)
		}
	})
}

func anyOf(t *testing.T, data []byte) (v any) {
	t.Helper()
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	if err := d.Decode(&v); err != nil {
		t.Fatal(err)
	}
	return v
}
