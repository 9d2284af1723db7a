package sheet

// Forms are the ways in which a sheet is written, by the ending of the file's name.
var Forms = map[string]func(*Sheet) ([]byte, error){
	".txt":  func(s *Sheet) ([]byte, error) { return s.Text(), nil },
	".pdf":  (*Sheet).PDF,
	".html": (*Sheet).HTML,
}
