//go:build !headless

package main

import (
	"fmt"
	"io"
	"os"
	"runtime"

	_ "early.yokebook" // before the window toolkit; see there

	"yokebook/app/cli"
	"yokebook/app/logbook"
	"yokebook/app/screen/run"
	"yokebook/app/words"
)

// window opens the window on this device's store and returns when it is closed.
func window(err io.Writer) int {
	if !display() {
		fmt.Fprintln(err, words.English.Say("start.no_display"))
		return cli.BadInput
	}
	if failed := run.Window(logbook.Home); failed != nil {
		fmt.Fprintln(err, words.English.Say("start.failed", failed.Error()))
		return cli.BadInput
	}
	return cli.Done
}

// display reports whether there is something to open a window on. Only systems that may lack it
// are asked.
func display() bool {
	switch runtime.GOOS {
	case "linux", "freebsd", "openbsd", "netbsd":
		return os.Getenv("DISPLAY") != "" || os.Getenv("WAYLAND_DISPLAY") != ""
	}
	return true
}
