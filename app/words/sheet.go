package words

// Dimension returns what is read on a part, without the part: "bolt circle".
func (l *Language) Dimension(key string) string { return l.or("dimension."+key, spell(key)) }
