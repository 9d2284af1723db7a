// Command yokebook opens the window, or does what a verb on the command line says.
package main

import (
	"os"

	"yokebook/app/cli"
)

func main() {
	if len(os.Args) < 2 {
		os.Exit(window(os.Stderr))
	}
	os.Exit(cli.Run(os.Args[1:], os.Stdout, os.Stderr))
}
