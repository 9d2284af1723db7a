package draw

import "strings"

func said(d Drawing, text string) bool {
	for _, l := range d.Labels {
		if strings.Contains(l.Text, text) {
			return true
		}
	}
	return false
}

func noted(d Drawing, text string) bool {
	for _, n := range d.Notes {
		if strings.Contains(n, text) {
			return true
		}
	}
	return false
}
