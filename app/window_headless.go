//go:build headless

package main

import (
	"fmt"
	"io"

	"yokebook/app/cli"
	"yokebook/app/words"
)

// window says that this program was built without one.
func window(err io.Writer) int {
	fmt.Fprintln(err, words.English.Say("start.headless"))
	return cli.BadInput
}
