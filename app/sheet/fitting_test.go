package sheet

import (
	"bytes"
	"strings"
	"testing"

	"yokebook/measure"
)

// The camper stands 1046 mm between the joint centres at ride height with its slip 44 mm out. The rear
// shaft comes back 1010 mm fully closed, so at ride height it must stand 36 mm out.
func TestTheSheetOfWhatWasBuiltIsAFittingSheet(t *testing.T) {
	b := buildOf(t, "links-two-piece")
	order, _ := sheetOf(t, b, Options{})
	made := with(t, b, "as_built.closed_length", "1010", "mm", measure.Measured)
	made.Readings[len(made.Readings)-1].By = "builder"
	fit, _ := sheetOf(t, made, Options{})
	text := strings.Join(strings.Fields(string(mustText(t, fit))), " ")
	for _, want := range []string{"Fitting sheet", "NOT TO BE DRIVEN YET", "C must stand out", "C must stand out 36.0 ± 2.9 mm", "ordered 1002", "1010 mm", "the shaft builder", "These findings differ",
		"Match marks", "First run: stands under the AXLE"} {
		if !strings.Contains(text, want) {
			t.Errorf("the fitting sheet lacks %q", want)
		}
	}
	if strings.Contains(text, "NOT FOR MANUFACTURE") {
		t.Error("the fitting sheet speaks of manufacture")
	}
	again, _ := sheetOf(t, made, Options{Ordered: true})
	if again.Name != order.Name || again.First != order.First {
		t.Errorf("as ordered it says %q, %q; before it said %q, %q", again.Name, again.First, order.Name, order.First)
	}
	one, err := Forms[".pdf"](fit)
	if err != nil {
		t.Fatal(err)
	}
	two, _ := Forms[".pdf"](fit)
	if !bytes.Equal(one, two) {
		t.Error("the same fitting sheet gives other bytes")
	}
}

func mustText(t *testing.T, s *Sheet) []byte {
	t.Helper()
	data, err := Forms[".txt"](s)
	if err != nil {
		t.Fatal(err)
	}
	return data
}
