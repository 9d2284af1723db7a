package cli

import (
	"strings"

	"github.com/spf13/cobra"

	"yokebook/app/logbook"
	"yokebook/app/words"
	"yokebook/measure"
)

// completeFile offers build files for the first argument only.
func completeFile(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return []string{"json"}, cobra.ShellCompDirectiveFilterFileExt
}

// completeFiles offers build files for every argument.
func completeFiles(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	return []string{"json"}, cobra.ShellCompDirectiveFilterFileExt
}

// completeReading offers a build file, then the points.
func completeReading(c *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
	if len(args) == 0 {
		return completeFile(c, args, typed)
	}
	if len(args) > 1 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	var out []string
	for _, pt := range measure.Points {
		if strings.HasPrefix(pt.Key, typed) {
			out = append(out, pt.Key)
		}
	}
	return out, cobra.ShellCompDirectiveNoFileComp
}

// completeBuild offers the builds of this device's store, with their titles.
func (p Program) completeBuild(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	var out []string
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	err := p.onShelf(func(s *logbook.Shelf) error {
		list, err := s.List()
		for _, l := range list {
			out = append(out, string(l.ID)+"\t"+words.Plain(l.Title))
		}
		return err
	})
	if err != nil {
		return nil, cobra.ShellCompDirectiveError
	}
	return out, cobra.ShellCompDirectiveNoFileComp
}
