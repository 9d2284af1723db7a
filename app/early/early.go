// Package early settles the environment before any other package of the program is initialised.
//
// The window toolkit asks for the user's language while it is initialised, and where the locale is
// C.UTF-8, as in most containers, it complains about it on the error stream in several lines: on
// every start, before main and even for a verb that opens no window. A verb tells an error in
// exactly one line, so the question is answered beforehand: messages are wanted in the locale "C".
//
// This has to be a module of its own. Packages are initialised in the order of their import paths as
// far as their imports allow (release notes of Go 1.21), and every path inside module yokebook comes
// after fyne.io.
package early

import (
	"cmp"
	"os"
	"strings"
)

func init() { settle() }

// settle asks for messages in the locale "C" where the user's is C or POSIX with an encoding. What
// the encoding decides (LC_CTYPE, the keyboard) stays as it was.
func settle() {
	all := os.Getenv("LC_ALL")
	locale := cmp.Or(all, os.Getenv("LC_MESSAGES"), os.Getenv("LANG"))
	if !strings.HasPrefix(locale, "C.") && !strings.HasPrefix(locale, "POSIX.") {
		return
	}
	if all != "" {
		_ = os.Setenv("LC_CTYPE", all)
		_ = os.Unsetenv("LC_ALL")
	}
	_ = os.Setenv("LC_MESSAGES", "C") // these fail for names with a NUL or "=" only
}
