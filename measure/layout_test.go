package measure

import "testing"

func TestLayoutsTakeOnlyTheirChoices(t *testing.T) {
	l := NewLayout()
	if err := l.Validate(); err != nil {
		t.Fatalf("the layout of a new build: %v", err)
	}
	for _, n := range []int{0, 3, -1} {
		bad := l
		bad.Shafts = n
		refused(t, "shafts", bad.Validate(), "use 1 or 2")
	}
	for _, c := range LayoutChoices {
		for _, choice := range c.Choices {
			good := NewLayout()
			*good.Member(c.Member) = choice
			if err := good.Validate(); err != nil {
				t.Errorf("%s %s: %v", c.Member, choice, err)
			}
		}
		bad := NewLayout()
		*bad.Member(c.Member) = c.Choices[0] + "s"
		refused(t, c.Member, bad.Validate(), c.Member+": ")
		*bad.Member(c.Member) = ""
		if err := bad.Validate(); (err == nil) != c.Optional {
			t.Errorf("%s left out: %v, optional %v", c.Member, err, c.Optional)
		}
	}
}

func TestMembersAreToldByName(t *testing.T) {
	l := NewLayout()
	for _, c := range LayoutChoices {
		if l.Member(c.Member) == nil {
			t.Errorf("%s is no member", c.Member)
		}
	}
	if l.Member("shafts") != nil || l.Member("colour") != nil {
		t.Error("a name that is no text member gives one")
	}
}

func TestOnlyTheFrontAxleHasItsPinionInFront(t *testing.T) {
	for drives, want := range map[string]bool{"": false, "rear": false, "transfer": false, "front": true} {
		if got := (Layout{Drives: drives}).PinionInFront(); got != want {
			t.Errorf("drives %q: %v", drives, got)
		}
	}
}
