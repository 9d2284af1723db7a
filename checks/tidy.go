package checks

import "slices"

// tidy takes away the notes whose number is none, as those of a speed worked out from a ratio of 0;
// the finding itself says that its readings give no number.
func tidy(list []Finding) []Finding {
	for i := range list {
		if slices.ContainsFunc(list[i].Notes, func(m Message) bool { return !sayable(m) }) {
			list[i].Notes = slices.DeleteFunc(slices.Clone(list[i].Notes), func(m Message) bool { return !sayable(m) })
		}
		if !sayable(list[i].Advice) {
			list[i].Advice = Message{Key: MsgNoNumber}
		}
	}
	return list
}

// sayable reports a message of which every number is finite.
func sayable(m Message) bool {
	return !slices.ContainsFunc(m.Args, func(a any) bool {
		f, ok := a.(float64)
		return ok && !finite(f)
	})
}
