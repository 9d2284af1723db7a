package words

// enFormulas: how each check reckons, in a sentence, for the person who opens a finding.
var enFormulas = table{
	"formula.build.chance": "Of 4,096 draws of everything that is in doubt, the share in which every judged limit holds at once. It says nothing of what " +
		"was not read, not judged or not checked: it is no permit to drive.",

	"formula.joint.angle": "The angle in space between the two axes that meet in the joint: its cosine is the product of their " +
		"directions, each made of slope and plan angle. With all plan angles 0 it is the difference of the slopes.",
	"formula.joint.most_angle":  "The largest angle of this joint in any state that was read or predicted, against the most that the joint may bend.",
	"formula.joint.least_angle": "The angle in space between the two axes that meet in the joint. A joint that never bends wears its needles in one place.",
	"formula.joint.match":       "The larger end angle less the smaller one. Ends that match don't yet turn evenly: the residual says how evenly.",
	"formula.joint.residual": "The angle of the one joint that would make as much unevenness as all joints of the line together: each joint " +
		"changes speed by its angle, about its own plane, and the yokes' phase and the twist between the planes say how much of it cancels.",
	"formula.joint.ripple": "Greatest less least speed behind all joints within one turn, as a share of the speed ahead of them.",
	"formula.joint.torsional": "The greatest angular acceleration that one joint of the residual angle makes at the shaft's highest speed: for small " +
		"angles, speed squared times angle squared.",
	"formula.joint.inertia_drive": "The greatest angular acceleration of this shaft at its highest speed, by all joints between the gearbox and it.",
	"formula.joint.inertia_coast": "The greatest angular acceleration of this shaft at its highest speed, by all joints between the axle and it.",
	"formula.joint.torque": "The torque on the shaft in the lowest gear (engine torque times ratios and losses); in road use no more than makes the laden " +
		"wheels slip. Against what the joint is rated for. Shocks (clutch let in hard, a spinning wheel that grips again) are not in it.",
	"formula.joint.couple": "Torque on the shaft times the tangent or the sine of the joint's angle: what bends shaft and bearings twice a turn.",
	"formula.joint.life": "Hours that nine of ten joints outlast: 1,500,000 over angle and speed, times the ratio of rated to mean torque, raised " +
		"to 3 or 10/3. The angle is the largest that it runs at, laden and under torque too; below 3° it counts as 3°.",

	"formula.travel.agreement": "What was read in a state less what the axle's path, worked out from springs or links, gives for its height.",
	"formula.slip.travel":      "Longest less shortest distance that the sliding part has to follow between full droop and full bump.",
	"formula.slip.engaged":     "The smallest of male spline, female spline and what is not drawn out, at the longest position.",
	"formula.slip.closing":     "How far the sliding part still stands out when the axle is where the shaft is shortest.",
	"formula.slip.seal": "Length of the slip yoke's bright barrel less the depth of the seal's lip and less how far the yoke is drawn out at most: what " +
		"still stands inside the lip.",
	"formula.slip.length": "The length at which both ends of the travel keep their stroke: in the middle of what closing and drawing out leave.",

	"formula.shaft.critical_speed": "Critical bending speed (the first) of a tube on two joints: grows with its diameter, falls with the square of its length, and with what its " +
		"ends weigh. Against the highest shaft speed, with a margin. For a straight, balanced tube on stiff bearings; a real shaft lies " +
		"lower.",
	"formula.shaft.half_critical": "Half of the critical bending speed, where the joints' two pushes a turn meet it, against the speeds in use.",
	"formula.shaft.stress": "Shear stress at the outside of the tube: torque over its polar section modulus. Against a share of what the steel yields at. " +
		"For a sound tube: shocks, welds, dents and rust are not in it.",
	"formula.shaft.twist":   "How far the tube winds up at full torque: torque times length over shear modulus and polar moment of area.",
	"formula.shaft.balance": "Grade of balance times mass over angular speed, half of it at each end.",
	"formula.shaft.clearance": "Room from the line between the joint centres to the obstacle, less half the tube, less what the shaft comes nearer at " +
		"that place anywhere in the travel.",
	"formula.flange.match": "Counts what differs between vehicle and shaft: number of bolts, bolt circle, kind and diameter of the pilot, and where read its height, bolt size and thread pitch; with straps or U-bolts the caps. How much play the pilot may have follows from shaft speed and balance grade.",

	"formula.clutch.flywheel": "Bolts, bolt circle and register of the flywheel, each less that of the crank.",
	"formula.clutch.runout":   "What the dial shows over a whole turn; of a bore that is twice its offset.",
	"formula.clutch.release": "From the bearing fully back to the finger tips: (adapter + bellhousing depth − bearing height) − (flywheel face + " +
		"fingers' height), with what wear takes, and what is left of the stroke against the fingers' travel.",
	"formula.clutch.hub": "The length of hub that lies on the gearbox shaft's splines, both placed from the engine block's face, and the gap to the flywheel's bolts.",
	"formula.clutch.boss": "From the hub's gearbox end, disc new, lengthwise: to the finger tips pressed as far as they may go, and to the end of the sleeve that the " +
		"release bearing slides on. How wide the hub is, is not in it.",
	"formula.clutch.spigot": "The length of the input shaft's nose that lies in the spigot bearing, both placed from the engine block's face, and the gap to the bottom of its bore.",
	"formula.clutch.fit":    "Outside diameter of the friction face less that of the disc.",
	"formula.clutch.torque": "Two faces (one disc) times friction times clamp force times a quarter of the sum of both facing diameters (bedded-in facings), " +
		"against the engine's torque with a service factor. Oil on the facing, heat and a worn spring are not in it.",

	"formula.spline.input":    "Tooth counts, diameters and lengths of both parts, compared each within its doubt. It never says that they fit: lash is not measured.",
	"formula.spline.output":   "Tooth counts, diameters and lengths of both parts, compared each within its doubt. It never says that they fit: lash is not measured.",
	"formula.spline.slip":     "Tooth counts, diameters and lengths of both parts, compared each within its doubt. It never says that they fit: lash is not measured.",
	"formula.spline.capacity": "Pressure on the flanks and shear at the foot of the teeth at full torque, over the length in mesh, against what the steel stands.",
	"formula.spline.identity": "How many of the standards in the table have this count and these diameters within their doubt.",
	"formula.retainer.clamp":  "Clamp by torque over nut factor and thread diameter, against what the grade holds and what the flange needs.",

	"formula.mass.axles": "Each axle's load as weighed, plus what the new engine and gearbox bring and less what the old ones took, shared by their distance " +
		"from the axles.",
	"formula.mount.load": "Share of the engine's and gearbox's weight on each mount, by their distances from the centre of mass.",
	"formula.lift.slings": "Load over the number of legs that carry it and the sine of their angle to level: the flatter the legs, the more each pulls. Of three or more legs two " +
		"are reckoned with. Hook, crane and lifting places are not in it.",

	"formula.fit.direction":  "What a person answered.",
	"formula.fit.starter":    "What a person answered.",
	"formula.fit.dowels":     "What a person answered.",
	"formula.fit.selector":   "What a person answered.",
	"formula.fit.speedo":     "What a person answered.",
	"formula.fit.handbrake":  "What a person answered.",
	"formula.fit.exhaust":    "What a person answered.",
	"formula.fit.loop":       "What a person answered.",
	"formula.fit.brakehose":  "What a person answered.",
	"formula.fit.breather":   "What a person answered.",
	"formula.fit.bumpstop":   "What a person answered.",
	"formula.fit.ground":     "What a person answered.",
	"formula.reading.setup":  "Counts readings of older setups whose slopes can't be compared yet, because the datum was not read in both.",
	"formula.reading.spread": "Greatest less least of the readings of one place, against what the tool may scatter; of three or more, how far one stands apart.",
	"formula.reading.zero":   "Counts setups in which the finder was turned end for end and its zero not found: half the difference of two readings of one place.",
	"formula.reading.state":  "Counts readings whose ride, load, height or size can't be, or hardly.",

	"formula.derived.agreement": "What was read less what follows from other readings by geometry.",
}
