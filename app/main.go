package main

import (
	"fyne.io/fyne/v2/app"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	_ "fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
)

func main() {
	a := app.NewWithID("org.example.yokebook")
	w := a.NewWindow("yokebook")
	w.SetContent(container.New(layout.NewVBoxLayout(), widget.NewLabel("x"), canvas.NewText("x", nil)))
	w.ShowAndRun()
}
