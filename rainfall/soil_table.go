package rainfall

import "example.org/soum/units"

// soilHolds makes a row of a span in inches to the foot.
func soilHolds(texture string, by SoilSource, low, high float64, source, mark string) SoilRow {
	return SoilRow{texture, by, units.Span[units.WaterHolding]{
		Low: units.WaterHolding(low) * units.HoldingInchPerFoot, High: units.WaterHolding(high) * units.HoldingInchPerFoot,
	}, printed(source, mark)}
}

var soilRows = []SoilRow{
	soilHolds("very-coarse-sand", SoilByCalifornia, 0.40, 0.75, "UC-SOIL-WATER", "A"),
	soilHolds("coarse-sand", SoilByCalifornia, 0.75, 1.25, "UC-SOIL-WATER", "A"),
	soilHolds("fine-sand", SoilByCalifornia, 0.75, 1.25, "UC-SOIL-WATER", "A"),
	soilHolds("loamy-sand", SoilByCalifornia, 0.75, 1.25, "UC-SOIL-WATER", "A"),
	soilHolds("sandy-loam", SoilByCalifornia, 1.25, 1.75, "UC-SOIL-WATER", "A"),
	soilHolds("fine-sandy-loam", SoilByCalifornia, 1.25, 1.75, "UC-SOIL-WATER", "A"),
	soilHolds("very-fine-sandy-loam", SoilByCalifornia, 1.50, 2.30, "UC-SOIL-WATER", "A"),
	soilHolds("loam", SoilByCalifornia, 1.50, 2.30, "UC-SOIL-WATER", "A"),
	soilHolds("silt-loam", SoilByCalifornia, 1.50, 2.30, "UC-SOIL-WATER", "A"),
	soilHolds("clay-loam", SoilByCalifornia, 1.75, 2.50, "UC-SOIL-WATER", "A"),
	soilHolds("silty-clay-loam", SoilByCalifornia, 1.75, 2.50, "UC-SOIL-WATER", "A"),
	soilHolds("sandy-clay-loam", SoilByCalifornia, 1.75, 2.50, "UC-SOIL-WATER", "A"),
	soilHolds("sandy-clay", SoilByCalifornia, 1.60, 2.50, "UC-SOIL-WATER", "A"),
	soilHolds("silty-clay", SoilByCalifornia, 1.60, 2.50, "UC-SOIL-WATER", "A"),
	soilHolds("clay", SoilByCalifornia, 1.60, 2.50, "UC-SOIL-WATER", "A"),
	soilHolds("sandy-clay-loam", SoilByWyoming, 1.5, 2.1, "NRCS-WYOMING-SOIL", "A"),
	soilHolds("loam", SoilByWyoming, 1.5, 2.1, "NRCS-WYOMING-SOIL", "A"),
	soilHolds("silt-loam", SoilByWyoming, 1.5, 2.1, "NRCS-WYOMING-SOIL", "A"),
	soilHolds("coarse-sand", SoilByNebraska, 0.5, 0.5, "UNL-SOIL-WATER about", "A"),
	soilHolds("silt-loam", SoilByNebraska, 2, 2, "UNL-SOIL-WATER about", "A"),
}

// profileLimits are the ends of the classes of 60 in of soil: PROFILE-CLASSES, mark A.
var profileLimits = [...]units.RainDepth{3 * units.RainInch, 6 * units.RainInch, 9 * units.RainInch}
