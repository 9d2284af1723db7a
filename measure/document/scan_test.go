package document

import (
	"bytes"
	"errors"
	"runtime"
	"strconv"
	"strings"
	"testing"
)

// Escapes as in RFC 8785 section 3.2.2.2; number tokens are kept, which that RFC does not do; keys
// in order of their UTF-8 bytes.
func TestCanonical(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"no spaces", " { \"a\" : [ 1 ,\t2 ]\r\n} ", `{"a":[1,2]}`},
		{"keys sorted by bytes", `{"b":1,"a":2,"B":3,"é":4,"z":5,"":6}`, `{"":6,"B":3,"a":2,"b":1,"z":5,"é":4}`},
		{"beyond U+FFFF after U+FFFD", `{"\ud83d\udd27":1,"\ufffd":2}`, `{"` + "\ufffd" + `":2,"🔧":1}`},
		{"numbers as they stand", `[1.10,1E2,-0,9007199254740993,0.1e+1]`, `[1.10,1E2,-0,9007199254740993,0.1e+1]`},
		{"short escapes", `"\u0022\u005c\u0008\u0009\u000a\u000c\u000d"`, `"\"\\\b\t\n\f\r"`},
		{"other control characters", `"\u0000\u001F"`, `"\u0000\u001f"`},
		{"nothing else is escaped", `"\/<>&\u007f\u2028é"`, "\"/<>&\u007f\u2028é\""},
		{"a pair is one character", `"\uD834\uDD1E"`, `"𝄞"`},
		{"words", `[true,false,null]`, `[true,false,null]`},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := Canonical([]byte(c.in))
			if err != nil || string(got) != c.want {
				t.Fatalf("got %s, %v; want %s", got, err, c.want)
			}
			if again, err := Canonical(got); err != nil || !bytes.Equal(again, got) {
				t.Errorf("its canonical form is not its own: %s, %v", again, err)
			}
		})
	}
}

// What the standard library's decoder lets through or changes, and what is at the edge of the caps.
// Each row has a near twin that is accepted.
func TestScannerRefuses(t *testing.T) {
	long := strings.Repeat
	for _, c := range []struct{ name, bad, line, twin string }{
		{"key twice", `{"a":1,"b":2,"a":1}`, "byte 17: a stands there twice; keep one", `{"a":1,"b":2,"A":1}`},
		{"key twice by an escape", `{"a":1,"\u0061":1}`, "byte 16: a stands there twice; keep one", `{"a":1,"\u0062":1}`},
		{"key twice deep inside", `[{"x":{"a":1,"a":1}}]`, "byte 17: [0].x.a stands there twice; keep one", `[{"x":{"a":1},"y":{"a":1}}]`},
		{"bytes that are not UTF-8", "[\"\xff\"]", "byte 2, in [0]: a text is not UTF-8; save the file again as UTF-8", "[\"\ufffd\"]"},
		{"UTF-8 of a surrogate", "[\"\xed\xa0\x80\"]", "byte 2, in [0]: a text is not UTF-8; save the file again as UTF-8", "[\"\xed\x9f\xbf\"]"},
		{"overlong UTF-8", "[\"\xc0\xaf\"]", "byte 2, in [0]: a text is not UTF-8; save the file again as UTF-8", "[\"\xc2\xaf\"]"},
		{"low half first", `["\udc00\ud800"]`, "byte 2, in [0]: half of a surrogate pair stands alone; write the character itself", `["\ud800\udc00"]`},
		{"hex digits missing", `["\u12g4"]`, `byte 2, in [0]: \u must be followed by four of 0-9 a-f`, `["\u12a4"]`},
		{"unknown escape", `["\x41"]`, `byte 2, in [0]: \'x' is no escape; write a backslash as \\`, `["\\x41"]`},
		{"leading zero", `[01]`, `byte 1, in [0]: "01" is not a number; write it as a plain number such as 2.4`, `[10]`},
		{"bare point", `[1.]`, `byte 1, in [0]: "1." is not a number; write it as a plain number such as 2.4`, `[1.0]`},
		{"plus", `[+1]`, `byte 1, in [0]: a value is missing; '+' stands in its place`, `[1]`},
		{"word", `[yes]`, `byte 1, in [0]: "yes" is no JSON value; put texts in quotes`, `["yes"]`},
		{"upper-case word", `[TRUE]`, `byte 1, in [0]: "TRUE" is no JSON value; put texts in quotes`, `[true]`},
		{"colon missing", `{"a" 1}`, `byte 5, in a: ":" is missing after the key`, `{"a" :1}`},
		{"comma missing", `[1 2]`, `byte 3, in [1]: a comma or ']' is missing`, `[1 ,2]`},
		{"wrong bracket", `[1}`, `byte 2, in [1]: a comma or ']' is missing`, `[1]`},
		{"two values", `{} {}`, "byte 3: something follows the end; remove what stands after the last bracket", `{} `},
		{"text beyond 64 KiB", `["` + long("x", 64<<10+1) + `"]`, "byte 65539, in [0]: a text is longer than 65536 bytes; shorten it", `["` + long("x", 64<<10) + `"]`},
		{"200,001 tokens", "[" + long("1,", 199_998) + "1]", "byte 399999: holds more than 200000 values and keys; check that it is a build file", "[" + long("1,", 199_997) + "1]"},
		{"larger than 8 MiB", "[1]" + long(" ", 8<<20-2), "is 8388609 bytes; at most 8388608 are read; check that it is a build file", "[1]" + long(" ", 8<<20-3)},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Canonical([]byte(c.bad))
			if err == nil || err.Error() != c.line {
				t.Errorf("got %v\nwant %s", err, c.line)
			}
			if _, err := Canonical([]byte(c.twin)); err != nil {
				t.Errorf("its near twin was refused: %v", err)
			}
		})
	}
}

func TestMillionBracketsAreOneLine(t *testing.T) {
	for _, bracket := range []string{"[", `{"a":`} {
		_, _, err := Read([]byte(strings.Repeat(bracket, 1_000_000)))
		if !errors.Is(err, ErrLarge) || strings.Contains(err.Error(), "\n") || len(err.Error()) > 100 {
			t.Errorf("%s: %v", bracket, err)
		}
	}
}

// A path in a line stays short and on one line, whatever the keys are.
func TestPathOfHostileKeysIsOneShortLine(t *testing.T) {
	key := strings.Repeat(`\n\u0000`, 1000)
	in := strings.Repeat(`{"`+key+`":`, 31) + "oops"
	_, err := Canonical([]byte(in))
	if err == nil || strings.ContainsAny(err.Error(), "\n\x00") || len(err.Error()) > 31*300 {
		t.Errorf("%d characters: %.200v", len(err.Error()), err)
	}
}

// What turns out to be no build takes little memory before that is known: a phone has little to give.
func TestHostileFilesTakeLittleMemory(t *testing.T) {
	const most = 100 << 20
	flood := func(member string) []byte {
		b := []byte("{")
		for len(b)+len(member)+32 < maxBytes {
			b = append(append(strconv.AppendInt(append(b, '"'), int64(len(b)), 10), `":`...), member...)
			b = append(b, ',')
		}
		return append(b, `"z":0}`...)
	}
	for name, data := range map[string][]byte{
		"28 MiB of empty lists": []byte(`{"a":[` + strings.Repeat("[],", 28<<20/3) + `0]}`),
		"8 MiB of empty lists":  []byte(`[` + strings.Repeat("[],", (maxBytes-8)/3) + `0]`),
		"8 MiB of brackets":     bytes.Repeat([]byte("["), maxBytes),
		"a flood of keys":       flood("{}"),
		"keys of 64 KiB":        flood(`"` + strings.Repeat("x", 64<<10-8) + `"`),
		"8 MiB of one text":     []byte(`["` + strings.Repeat("x", maxBytes-8) + `"]`),
		"a text of escapes":     []byte(`["` + strings.Repeat(`\u0000`, 64<<10/6) + `"]`),
	} {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		_, _, err := Read(data)
		runtime.ReadMemStats(&after)
		if took := after.TotalAlloc - before.TotalAlloc; err == nil || took > most {
			t.Errorf("%s: %d MiB allocated, %.80v", name, took>>20, err)
		}
	}
}
