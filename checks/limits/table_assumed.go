package limits

const judged = "our judgement, no source"

// assumedRows: half the range that is taken for a point nobody read, and other stand-ins.
var assumedRows = []Row{
	{Key: "assumed.gearbox.plan", Value: 1, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "a gearbox whose plan angle was not read counts as 0 ± this, every value in it as likely"},
	{Key: "assumed.front_shaft.plan", Value: 2, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "a front shaft whose plan angle was not read counts as 0 ± this, every value in it as likely"},
	{Key: "assumed.shaft.plan", Value: 2, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "a shaft whose plan angle was not read counts as 0 ± this, every value in it as likely"},
	{Key: "assumed.pinion.plan", Value: 1, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "a pinion whose plan angle was not read counts as 0 ± this, every value in it as likely"},
	{Key: "assumed.front_shaft.phase", Value: 3, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "a front shaft whose yokes were not compared counts as in line ± this, every value in it as likely"},
	{Key: "assumed.shaft.phase", Value: 3, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "a shaft whose yokes were not compared counts as in line ± this, every value in it as likely"},
	{Key: "assumed.shaft.length", Value: 1000, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "length by which a difference in height widens a slope where the shaft's length was not read"},
	{Key: "estimated.share", Value: 0.1, Unit: "", Sense: Input, Source: judged,
		Meaning: "an estimated size counts as ± this share of itself"},
	{Key: "estimated.angle", Value: 2, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "an estimated angle counts as ± this"},
}

// judgingRows: numbers that the judging itself goes by.
var judgingRows = []Row{
	{Key: "phase.worth", Value: 0.3, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "another phase of the yokes is named where it leaves a residual smaller by more than this"},
	{Key: "state.height", Value: 5, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "readings whose heights differ by no more than this count as taken in the same place"},
	{Key: "speed.road_factor", Value: 1.1, Unit: "", Sense: Input, Source: judged,
		Meaning: "highest shaft speed from the road: the stated top speed times this, as for a run downhill"},
	{Key: "verdict.chance", Value: 0.95, Unit: "", Sense: Input, Source: "JCGM 106:2012 and ISO 14253-1:2017, one-sided 95 % (from memory)",
		Meaning: "least chance with which a limit must be met for clear, or missed for out"},
}
