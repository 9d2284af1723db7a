package words

import (
	"strings"
	"testing"

	"yokebook/checks"
)

// Equal counts and diameters prove no fit, so no sentence about splines may say that they do.
func TestSplinesNeverFit(t *testing.T) {
	for _, key := range append(messageKeys(t), "check.spline.input", "check.spline.output", "check.spline.slip") {
		if said := English.Say(key, 1.0, 1.0, 1.0, 1.0, 1.0); strings.Contains(key, "spline") && strings.Contains(said+" ", " fit") {
			t.Errorf("%s says %q", key, said)
		}
	}
	if said := English.Say(checks.MsgTryByHand); said != "counts equal, diameters agree; try by hand, lash not measured" {
		t.Errorf("equal counts say %q", said)
	}
}

func TestWeldedStudsAreNotRecoverable(t *testing.T) {
	if said := English.Say(checks.MsgNotRecoverable); !strings.Contains(said, "not recoverable by calculation") {
		t.Errorf("a welded stud says %q", said)
	}
}

func TestBothCuresOfABearingAreSaid(t *testing.T) {
	said := English.Say(checks.MsgBearingForward, 4.2, 4.2)
	for _, must := range []string{"spacer of 4.2 mm", "friction face 4.2 mm nearer to the gearbox"} {
		if !strings.Contains(said, must) {
			t.Errorf("%q does not say %q", said, must)
		}
	}
}
