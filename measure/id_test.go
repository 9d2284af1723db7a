package measure

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/uuid"
	"pgregory.net/rapid"
)

func TestIDsAreLowerCaseUUIDs(t *testing.T) {
	const good = "019ab3f0-1234-7abc-8def-0123456789ab"
	if id, err := ParseID(good); err != nil || id != good {
		t.Fatalf("%q: %v", good, err)
	}
	for name, bad := range map[string]string{
		"upper case":             strings.ToUpper(good),
		"a digit short":          good[1:],
		"a digit long":           good + "0",
		"braces":                 "{" + good[2:] + "}",
		"a dash in a wrong spot": strings.Replace(good, "-1234-", "1-234-", 1),
		"a path":                 "../../../../../../../../../etc/passwd",
		"a slash":                good[:35] + "/",
		"a letter beyond f":      good[:35] + "g",
		"a byte beyond ASCII":    good[:34] + "é",
		"nothing":                "",
	} {
		if _, err := ParseID(bad); !errors.Is(err, ErrID) {
			t.Errorf("%s: %q is taken as an id (%v)", name, bad, err)
		}
	}
}

func TestAnyUUIDVersionIsAnID(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		raw := rapid.SliceOfN(rapid.Byte(), 16, 16).Draw(t, "bytes")
		u, err := uuid.FromBytes(raw)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := ParseID(u.String()); err != nil {
			t.Fatal(err)
		}
	})
}

// Source: RFC 9562 appendix A.4, name www.example.com in the name space of DNS names.
func TestNameIDIsVersionFive(t *testing.T) {
	const dns, want = "6ba7b810-9dad-11d1-80b4-00c04fd430c8", "2ed6657d-e927-568b-95e1-2665a8aea6a2"
	if got := NameID(dns, "www.example.com"); got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if a, b := NameID(testID(1), "title"), NameID(testID(2), "title"); a == b {
		t.Error("two builds give one name the same id")
	}
	if _, err := ParseID(string(NameID("no id", "title"))); err != nil {
		t.Errorf("a build without a proper id: %v", err)
	}
}
