// Package liberationsansbold stands in for an embedded font; see the module.
package liberationsansbold

import "golang.org/x/image/font/gofont/goregular"

// TTF is a font for a reader that wants one.
var TTF = goregular.TTF
