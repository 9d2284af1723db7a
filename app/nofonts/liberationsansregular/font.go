// Package liberationsansregular stands in for an embedded font; see the module.
package liberationsansregular

import "golang.org/x/image/font/gofont/goregular"

// TTF is a font for a reader that wants one.
var TTF = goregular.TTF
