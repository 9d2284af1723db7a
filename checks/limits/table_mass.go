package limits

// massRows: lifting, and how far two ways to one size may disagree.
var massRows = []Row{
	{Key: "lift.angle", Value: 30, Unit: "deg", Sense: Min, Source: "a building trade insurer's instruction card on slings, UBT 30481: at most 60 from plumb; OSHA 1910.184 and ASME B30.9 (from memory); rigging pages of a university",
		Meaning: "angle of the flattest sling leg from the horizontal; below it nobody lifts"},
	{Key: "lift.stiff_legs", Value: 2, Unit: "count", Sense: Input, Source: "a building trade insurer's instruction card on slings, UBT 30481: of slings with more legs two alone must carry it all",
		Meaning: "legs of a sling of three or more that are reckoned with: a stiff load hangs from two"},
}

// derivedRows: how far what was read and what follows from other readings may lie apart.
var derivedRows = []Row{
	{Key: "derived.angle", Value: 1, Unit: "deg", Sense: Max, Source: judged,
		Meaning: "difference of an angle read and the same worked out from other readings"},
	{Key: "derived.length", Value: 10, Unit: "mm", Sense: Max, Source: judged,
		Meaning: "difference of a length read and the same worked out from other readings"},
	{Key: "derived.centre", Value: 30, Unit: "mm", Sense: Max, Source: judged,
		Meaning: "difference of a centre of mass read and the same worked out from two scales"},
	{Key: "derived.mass", Value: 10, Unit: "kg", Sense: Max, Source: judged,
		Meaning: "difference of a mass read and the same from two scales"},
}
