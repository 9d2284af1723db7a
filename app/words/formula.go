package words

// Formula says in a sentence how a check reckons.
func (l *Language) Formula(check string) string { return l.Say("formula." + check) }
