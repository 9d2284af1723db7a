package document

import (
	"encoding/json"
	"fmt"
	"strconv"

	"yokebook/measure"
)

func encodeLayout(l measure.Layout) json.RawMessage {
	var o object
	o.whole("shafts", int64(l.Shafts))
	for _, c := range measure.LayoutChoices {
		o.text(c.Member, *l.Member(c.Member))
	}
	o.fields(l.Unknown)
	return o.bytes()
}

// setLayout puts one member into a layout and checks it. null and "" clear an optional member.
func setLayout(l *measure.Layout, name string, n *node) error {
	if name == "shafts" {
		return setShafts(l, n)
	}
	for _, c := range measure.LayoutChoices {
		if c.Member != name {
			continue
		}
		if n.empty() && c.Optional {
			*l.Member(name) = ""
			return nil
		}
		for _, choice := range c.Choices {
			if n.kind == textKind && n.text == choice {
				*l.Member(name) = choice
				return nil
			}
		}
		return fmt.Errorf("%s: %.60s is not known; use one of %v", name, n.canonical(), c.Choices)
	}
	unknown := measure.Fields{name: n.canonical()}
	for key, raw := range l.Unknown {
		if key != name {
			unknown[key] = raw
		}
	}
	l.Unknown = unknown
	return nil
}

func setShafts(l *measure.Layout, n *node) error {
	for _, shafts := range []int{1, 2} {
		if n.kind == numberKind && n.text == strconv.Itoa(shafts) {
			l.Shafts = shafts
			return nil
		}
	}
	return fmt.Errorf("shafts: %.60s is not known; use 1 or 2", n.canonical())
}

// layoutOf reads a layout member by member; required members may still come from heads.
func layoutOf(n *node) (measure.Layout, error) {
	var l measure.Layout
	if n.kind != objectKind {
		return l, fmt.Errorf("is %s; write an object in { }", n.what())
	}
	for _, m := range n.members {
		if err := setLayout(&l, m.key, m.value); err != nil {
			return l, err
		}
	}
	return l, nil
}
