package forage

import "example.org/soum/units"

// nitrateParts are parts of each form in one part of nitrogen: 1; NEBRASKA-NITRATE,
// mark A; VCE-CONVERSIONS, mark A.
var nitrateParts = [...]float64{NitrateNitrogen - 1: 1, NitrateIon - 1: 4.43, NitratePotassium - 1: 7.2162}

// safeNitrateWeight is the weight in lb for each gram of nitrate nitrogen a day,
// DAIRYLAND-NITRATE, mark B.
const safeNitrateWeight = 100

// upTo is a row of shares of the ration in per cent.
func upTo(scale NitrateScale, from float64, level NitrateLevel, pregnant, low, high units.Fraction, source, mark string) NitrateStep {
	return NitrateStep{scale, NitrateNitrogen, units.Concentration(from) * units.PartPerMillion, level, true,
		units.Single(pregnant * units.Percent), units.Span[units.Fraction]{Low: low * units.Percent, High: high * units.Percent}, printed(source, mark)}
}

// classOnly is a row without shares of the ration.
func classOnly(scale NitrateScale, form NitrateForm, from float64, level NitrateLevel, source, mark string) NitrateStep {
	return NitrateStep{Scale: scale, Form: form, From: units.Concentration(from) * units.PartPerMillion, Level: level, Printed: printed(source, mark)}
}

// nitrateSteps are the scales, each from its lowest class up.
var nitrateSteps = []NitrateStep{
	upTo(NitrateByClemson, 0, LevelSafe, 100, 100, 100, "CLEMSON-NITRATE", "A"),
	upTo(NitrateByClemson, 1000, LevelPregnantLimited, 50, 100, 100, "CLEMSON-NITRATE", "A"),
	upTo(NitrateByClemson, 1500, LevelLimited, 50, 50, 50, "CLEMSON-NITRATE", "A"),
	upTo(NitrateByClemson, 2000, LevelPregnantNone, 0, 35, 40, "CLEMSON-NITRATE", "A"),
	upTo(NitrateByClemson, 3500, LevelPregnantNone, 0, 25, 25, "CLEMSON-NITRATE", "A"),
	upTo(NitrateByClemson, 4000, LevelToxic, 0, 0, 0, "CLEMSON-NITRATE", "A"),

	upTo(NitrateByDairyland, 0, LevelSafe, 100, 100, 100, "DAIRYLAND-NITRATE", "B"),
	upTo(NitrateByDairyland, 1000, LevelPregnantLimited, 50, 100, 100, "DAIRYLAND-NITRATE", "B"),
	upTo(NitrateByDairyland, 2000, LevelLimited, 50, 50, 50, "DAIRYLAND-NITRATE", "B"),
	upTo(NitrateByDairyland, 4000, LevelToxic, 0, 0, 0, "DAIRYLAND-NITRATE", "B"),

	upTo(NitrateByServitech, 0, LevelVeryLow, 100, 100, 100, "SERVITECH-NITRATE", "A"),
	upTo(NitrateByServitech, 700, LevelLow, 50, 100, 100, "SERVITECH-NITRATE", "A"),
	upTo(NitrateByServitech, 1400, LevelMedium, 25, 50, 50, "SERVITECH-NITRATE", "A"),
	classOnly(NitrateByServitech, NitrateNitrogen, 2100, LevelHigh, "SERVITECH-NITRATE", "A"),
	classOnly(NitrateByServitech, NitrateNitrogen, 2800, LevelVeryHigh, "SERVITECH-NITRATE", "A"),
	classOnly(NitrateByServitech, NitrateNitrogen, 3500, LevelExtreme, "SERVITECH-NITRATE", "A"),

	classOnly(NitrateByOklahoma, NitrateNitrogen, 0, LevelNormal, "OKLAHOMA-NITRATE", "A"),
	classOnly(NitrateByOklahoma, NitrateNitrogen, 700, LevelAboveNormal, "OKLAHOMA-NITRATE", "A"),
	classOnly(NitrateByOklahoma, NitrateIon, 0, LevelNormal, "OKLAHOMA-NITRATE", "A"),
	classOnly(NitrateByOklahoma, NitrateIon, 3000, LevelAboveNormal, "OKLAHOMA-NITRATE", "A"),
	classOnly(NitrateByOklahoma, NitratePotassium, 0, LevelNormal, "OKLAHOMA-NITRATE", "A"),
	classOnly(NitrateByOklahoma, NitratePotassium, 5000, LevelAboveNormal, "OKLAHOMA-NITRATE", "A"),

	classOnly(NitrateByManitoba, NitrateIon, 0, LevelSafe, "MANITOBA-NITRATE", "A"),
	classOnly(NitrateByManitoba, NitrateIon, 3000, LevelModeratelySafe, "MANITOBA-NITRATE", "A"),
	classOnly(NitrateByManitoba, NitrateIon, 6000, LevelToxic, "MANITOBA-NITRATE", "A"),
	classOnly(NitrateByManitoba, NitrateIon, 9000, LevelDangerous, "MANITOBA-NITRATE", "A"),
}
