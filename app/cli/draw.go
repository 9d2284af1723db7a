package cli

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"yokebook/app/draw"
	"yokebook/checks"
	"yokebook/measure"
)

// Sizes of picture files: page units of their width, and pixels to one of them.
const (
	pictureWide   = 1280
	picturePixels = 2
)

func (p Program) draw() *cobra.Command {
	var out, view, at, theme string
	c := p.verb("draw FILE -o OUT [--view VIEW] [--at HEIGHT] [--theme THEME]", p.exactly(1), func(args []string) error {
		kind := strings.ToLower(filepath.Ext(out))
		if out == "" || kind != ".svg" && kind != ".png" {
			return errors.New("where to write is missing; use -o with a name that ends in .svg or .png")
		}
		v, ok := draw.ViewOf(view)
		if !ok {
			return fmt.Errorf("view %.20q is not known; use one of %v", view, draw.Views)
		}
		t, ok := draw.ThemeOf(theme)
		if !ok {
			return fmt.Errorf("theme %.20q is not known; use light or dark", theme)
		}
		b, _, err := readBuild(args[0])
		if err != nil {
			return err
		}
		scene := draw.NewScene(b, checks.Run(b, nil), p.Language)
		height, err := heightIn(scene, at)
		if err != nil {
			return err
		}
		page := scene.View(v, height).Lay(draw.Options{Wide: pictureWide})
		data := page.SVG(t)
		if kind == ".png" {
			if data, err = page.PNG(t, picturePixels); err != nil {
				return err
			}
		}
		if err := writeFile(out, data); err != nil {
			return err
		}
		p.say("cli.drawn", out)
		return nil
	})
	c.Flags().StringVarP(&out, "output", "o", "", p.Language.Say("help.flag.picture"))
	c.Flags().StringVar(&view, "view", string(draw.SideView), p.Language.Say("help.flag.view"))
	c.Flags().StringVar(&at, "at", "", p.Language.Say("help.flag.at"))
	c.Flags().StringVar(&theme, "theme", draw.Light.Name, p.Language.Say("help.flag.theme"))
	c.ValidArgsFunction = completeFile
	return c
}

// heightIn reads the height that a build is to be drawn at; nil for none given.
func heightIn(scene *draw.Scene, text string) (*float64, error) {
	if text == "" {
		return nil, nil
	}
	bump, droop, ok := scene.Heights()
	if !ok {
		return nil, errors.New("--at needs the heights of the axle's travel, which this build does not tell; leave it out")
	}
	value, _, unit, err := measure.ParseEntry(strings.TrimSpace(text), measure.Length, "mm")
	if err != nil {
		return nil, fmt.Errorf("--at: %w", err)
	}
	typed, _ := value.Float()
	h, err := measure.Convert(typed, unit, "mm")
	if err != nil {
		return nil, fmt.Errorf("--at: %w", err)
	}
	if h < bump-0.5 || h > droop+0.5 {
		return nil, fmt.Errorf("--at %s is outside the travel of %.0f … %.0f mm, hub to arch", text, bump, droop)
	}
	return &h, nil
}
