package shaft

// LowGear is what the engine can put on the shaft in its lowest gear.
type LowGear struct {
	EngineNm    float64 // highest torque, as stated
	NetShare    float64 // of it that reaches the gearbox: 1 where it is stated net
	Gear        float64 // ratio of the lowest gear
	GearShare   float64 // efficiency of the gearbox in it
	Converter   float64 // factor by which a torque converter multiplies at a standstill; 1 for a clutch
	Transfer    float64 // low ratio of the transfer box; 1 where there is none
	TransferEff float64 // its efficiency; 1 where there is none
}

// LowGearTorque returns the torque on the shaft, N·m: the product of all. It errs when a number is
// not above 0 and finite. Source: driveline application practice, low gear torque (SAE J3311-1
// guide and others; efficiencies from its tables).
func LowGearTorque(g LowGear) (nm float64, err error) {
	parts := []part{{"engine torque", g.EngineNm}, {"net share", g.NetShare}, {"gear ratio", g.Gear}, {"gearbox efficiency", g.GearShare},
		{"converter ratio", g.Converter}, {"transfer ratio", g.Transfer}, {"transfer efficiency", g.TransferEff}}
	if err := positive(parts...); err != nil {
		return 0, err
	}
	nm = 1
	for _, p := range parts {
		nm *= p.value
	}
	return sized("torque", nm)
}

// Grip is what the tyres can put on the shaft before they slip.
type Grip struct {
	AxleKg    float64 // mass on the driven axle, laden
	Friction  float64 // of tyre and ground, dimensionless
	RadiusMM  float64 // rolling
	AxleRatio float64
	AxleShare float64 // efficiency of the axle
	G         float64 // m/s²
}

// SlipTorque returns the torque on the shaft at which the driven wheels slip, N·m:
//
//	T = μ·m·g·r/(η·i)
//
// It errs when a number is not above 0 and finite. Source: driveline application practice, wheel
// slip torque 0.71·W[lb]·RR[in]/(11.4·i) in lbf·ft; 11.4 is 12 in/ft times an axle efficiency of 0.95.
func SlipTorque(g Grip) (nm float64, err error) {
	if err := positive(part{"axle mass", g.AxleKg}, part{"tyre friction", g.Friction}, part{"tyre radius", g.RadiusMM},
		part{"axle ratio", g.AxleRatio}, part{"axle efficiency", g.AxleShare}, part{"gravity", g.G}); err != nil {
		return 0, err
	}
	return sized("torque", g.Friction*g.AxleKg*g.G*g.RadiusMM/1000/(g.AxleShare*g.AxleRatio))
}
