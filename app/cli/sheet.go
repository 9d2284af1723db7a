package cli

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"yokebook/app/sheet"
	"yokebook/app/words"
	"yokebook/checks"
)

func (p Program) sheet() *cobra.Command {
	var out, paper, units, lang string
	var ordered bool
	c := p.verb("sheet FILE -o OUT [--paper PAPER] [--units UNITS] [--lang LANG] [--as-ordered]", p.exactly(1), func(args []string) error {
		write, ok := sheet.Forms[strings.ToLower(filepath.Ext(out))]
		if !ok {
			return errors.New("where to write is missing; use -o with a name that ends in .pdf, .txt or .html")
		}
		o, err := p.sheetOptions(paper, units, lang)
		if err != nil {
			return err
		}
		o.Ordered = ordered
		b, _, err := readBuild(args[0])
		if err != nil {
			return err
		}
		s, err := sheet.Make(b, checks.Run(b, nil), o)
		if err != nil {
			return err
		}
		data, err := write(s)
		if err != nil {
			return err
		}
		if err := writeFile(out, data); err != nil {
			return err
		}
		p.say("cli.sheet", out, s.Code)
		return nil
	})
	c.Flags().StringVarP(&out, "output", "o", "", p.Language.Say("help.flag.sheet"))
	c.Flags().StringVar(&paper, "paper", sheet.A4.Name, p.Language.Say("help.flag.paper"))
	c.Flags().StringVar(&units, "units", string(words.Metric), p.Language.Say("help.flag.units"))
	c.Flags().StringVar(&lang, "lang", p.Language.Tag, p.Language.Say("help.flag.lang"))
	c.Flags().BoolVar(&ordered, "as-ordered", false, p.Language.Say("help.flag.ordered"))
	c.ValidArgsFunction = completeFile
	return c
}

// sheetOptions reads the flags of a sheet.
func (p Program) sheetOptions(paper, units, lang string) (sheet.Options, error) {
	var o sheet.Options
	var ok bool
	if o.Paper, ok = sheet.PaperOf(paper); !ok {
		return o, fmt.Errorf("paper %.20q is not known; use a4 or letter", paper)
	}
	if o.Units, ok = words.UnitsOf(units); !ok {
		return o, fmt.Errorf("units %.20q are not known; use metric, imperial or both", units)
	}
	var tags []string
	for _, l := range words.Languages {
		if l.Tag == lang {
			o.Language = l
		}
		tags = append(tags, l.Tag)
	}
	if lang == p.Language.Tag {
		o.Language = p.Language
	}
	if o.Language == nil {
		return o, fmt.Errorf("language %.20q is not spoken; use %s", lang, strings.Join(tags, ", "))
	}
	return o, nil
}
