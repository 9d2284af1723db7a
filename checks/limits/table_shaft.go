package limits

const practice = "common practice, no source"

// shaftRows: what the tube of a shaft, its joints and the room around it are judged by.
var shaftRows = []Row{
	{Key: "shaft.critical_speed", Value: 0.70, Sense: Max,
		Source:  "a joint supplier's selection pages, graph F: safe speed of cars and trucks",
		Meaning: "highest shaft speed as a share of the tube's first bending speed; a real shaft bends earlier than the sum says",
		Others: []Other{
			{Value: 0.65, Source: "the same pages, industrial shafts"},
			{Value: 0.75, Source: "a propshaft maker's speed limit page (it prints 7.5)"},
		}},
	{Key: "shaft.half_critical", Value: 0.08, Sense: Min,
		Source:  "a propshaft maker's speed limit page: keep out of ±8 % around half the critical speed",
		Meaning: "distance of the speeds that a shaft runs at from half its first bending speed, as a share of that"},
	{Key: "shaft.stress", Value: 0.30, Sense: Max,
		Source:  "ASME code for transmission shafting, as cited in machine design texts: shear at most 0.30 of yield (and 0.18 of ultimate)",
		Meaning: "shear stress in the tube at full torque as a share of the yield strength of its material",
		Others: []Other{
			{Value: 0.577, Source: "onset of yield in shear by the distortion energy theory, no reserve (machine design texts, from memory)"},
		}},
	{Key: "shaft.balance", Value: 16, Unit: "mm/s", Sense: Max,
		Source:  "ISO 21940-11, balance grade G 16 for propeller shafts (from memory); industrial driveshaft catalogue, balancing: between G 16 and G 40",
		Meaning: "balance grade that a shaft is ordered to",
		Others: []Other{
			{Value: 32, Source: "industrial driveshaft catalogue, balancing: what a customer's test on another machine may show"},
			{Value: 40, Source: "ISO 21940-11, G 40 for car wheels and drive shafts (from memory); industrial driveshaft catalogue, upper end"},
		}},
	{Key: "shaft.clearance", Value: 25, Unit: "mm", Sense: Min, Source: practice,
		Meaning: "room between tube and obstacle over the whole travel, engine roll on top"},
	{Key: "shaft.engine_roll", Value: 10, Unit: "mm", Sense: Input, Source: practice,
		Meaning: "room that is kept on top for the engine rolling on its mounts"},
	{Key: "shaft.end_station", Value: 0, Upper: 80, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "distance from a joint's centre to the middle of what weighs at that end of the shaft"},
	{Key: "shaft.steel_modulus", Value: 206, Unit: "GPa", Sense: Input, Source: "usual value for steel (texts on strength, from memory)",
		Meaning: "Young's modulus of steel tube",
		Others: []Other{
			{Value: 200, Upper: 210, Source: "range of texts; 1 % of the speed (from memory)"},
		}},
	{Key: "shaft.steel_shear", Value: 79.3, Unit: "GPa", Sense: Input, Source: "texts on strength (from memory)",
		Meaning: "shear modulus of steel tube",
		Others:  []Other{{Value: 77, Upper: 80, Source: "range of texts (from memory)"}}},
	{Key: "shaft.steel_density", Value: 7850, Unit: "kg/m³", Sense: Input, Source: "texts on strength (from memory)",
		Meaning: "density of steel tube"},
	{Key: "shaft.aluminium_modulus", Value: 69, Unit: "GPa", Sense: Input, Source: "texts on strength (from memory)",
		Meaning: "Young's modulus of aluminium tube"},
	{Key: "shaft.aluminium_shear", Value: 26, Unit: "GPa", Sense: Input, Source: "texts on strength (from memory)",
		Meaning: "shear modulus of aluminium tube"},
	{Key: "shaft.aluminium_density", Value: 2700, Unit: "kg/m³", Sense: Input, Source: "texts on strength (from memory)",
		Meaning: "density of aluminium tube"},
	{Key: "joint.life", Value: 5000, Unit: "h", Sense: Min,
		Source:  "sizing guide of a joint supplier: its ratings are for 5000 h",
		Meaning: "hours that nine of ten joints outlast at their working angle and the mean torque"},
	{Key: "joint.life_exponent", Value: 3, Upper: 10.0 / 3, Sense: Input,
		Source:  "3: Universal Joints and Driveshafts 4.7; 10/3: sizing guide of a joint supplier",
		Meaning: "power of the torque that the life of a joint falls with"},
}

// torqueRows: what goes into the torque of a shaft.
var torqueRows = []Row{
	{Key: "torque.net_share", Value: 0.95, Upper: 1, Sense: Input,
		Source:  "driveline installation guide J3311-1 p. 2: net torque is 95 % of gross; 1 where the figure is a net one",
		Meaning: "share of the engine's stated torque that reaches the gearbox"},
	{Key: "torque.manual_share", Value: 0.85, Sense: Input, Source: "driveline installation guide J3311-1 p. 2",
		Meaning: "efficiency of a manual gearbox in its lowest gear",
		Others:  []Other{{Value: 1, Source: "nothing lost: the most that the shaft can get"}}},
	{Key: "torque.automatic_share", Value: 0.80, Sense: Input, Source: "driveline installation guide J3311-1 p. 2",
		Meaning: "efficiency of an automatic gearbox in its lowest gear",
		Others:  []Other{{Value: 1, Source: "nothing lost: the most that the shaft can get"}}},
	{Key: "torque.transfer_share", Value: 0.95, Sense: Input, Source: "driveline installation guide J3311-1 p. 2",
		Meaning: "efficiency of a transfer box in low range"},
	{Key: "torque.axle_share", Value: 0.95, Sense: Input,
		Source:  "driveline installation guide J3311-1 p. 2: its divisor 11.4 is 12 in/ft times this",
		Meaning: "efficiency of an axle between shaft and wheels"},
	{Key: "torque.tyre_friction", Value: 0.71, Sense: Input, Source: "driveline installation guide J3311-1 p. 2",
		Meaning: "friction of tyre and ground where it is not stated",
		Others:  []Other{{Value: 1, Upper: 1.2, Source: "sticky or locked tyres: common practice, no source"}}},
}
