package limits

// readingRows: what readings themselves are judged by.
var readingRows = []Row{
	{Key: "reading.spread", Value: 2.8, Unit: "", Sense: Input,
		Source:  "ISO 5725-6:1994, repeatability limit of two results, 2.8 standard deviations (from memory)",
		Meaning: "two repeats may differ by this many standard deviations of one reading"},
}
