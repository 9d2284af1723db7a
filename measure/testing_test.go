package measure

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
)

func itoa(n int) string { return strconv.Itoa(n) }

// testID makes the n-th id of a test.
func testID(n int) ID { return ID(fmt.Sprintf("00000000-0000-4000-8000-%012d", n)) }

// number makes a value from a token that is known to be one.
func number(t interface {
	Helper()
	Fatal(...any)
}, token string) Value {
	t.Helper()
	v, err := NumberValue(token)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// refused demands an error of one plain line that says a text.
func refused(t *testing.T, name string, err error, says string) {
	t.Helper()
	switch {
	case err == nil:
		t.Errorf("%s: is accepted, want %q", name, says)
	case !strings.Contains(err.Error(), says):
		t.Errorf("%s: %q does not say %q", name, err, says)
	case strings.ContainsAny(err.Error(), "\n\r"):
		t.Errorf("%s: %q is not one line", name, err)
	}
}
