package words

import "yokebook/checks"

// Message makes the sentence of a message; "" for the silent one.
func (l *Language) Message(m checks.Message) string {
	if m.Key == "" {
		return ""
	}
	return l.Say(m.Key, m.Args...)
}

// Messages makes the sentences of several messages, leaving out silent ones.
func (l *Language) Messages(list []checks.Message) []string {
	var out []string
	for _, m := range list {
		if s := l.Message(m); s != "" {
			out = append(out, s)
		}
	}
	return out
}
