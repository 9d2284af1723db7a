// Package clutch answers whether engine, flywheel, disc, cover and gearbox stack up: how much the
// release bearing can move, how much of the hub and of the spigot is engaged, and how much torque
// the facings hold.
//
// Lengths are millimetres. A place u counts from the engine block's face, toward the gearbox
// positive. Torques are N·m, forces N, pressures MPa. The package knows nothing of readings or limits.
package clutch
