package limits

// orderRows go into what a shaft is ordered to; nothing is judged by them.
var orderRows = []Row{
	{Key: "order.contact_margin", Value: 3, Unit: "deg", Sense: Input,
		Source:  practice,
		Meaning: "angle beyond the worst of its travel that a joint must pass without its yokes touching"},
	{Key: "order.tolerance", Value: 2, Unit: "mm", Sense: Input,
		Source:  judged,
		Meaning: "how far the length fully closed may differ from the order where nobody said otherwise"},
}
