package herd

// heatSteps are the classes of each scale, from the lowest index of each on.
var heatSteps = []HeatStep{
	{SafetyIndex, 75, HeatAlert, "CLEMSON-HEAT", "A"},
	{SafetyIndex, 79, HeatDanger, "CLEMSON-HEAT", "A"},
	{SafetyIndex, 84, HeatEmergency, "CLEMSON-HEAT", "A"},
	{DairyIndex, 72, HeatStressed, "EXT-DAIRY-HEAT", "A"},
	{HighYieldIndex, 68, HeatStressed, "EXT-DAIRY-HEAT", "A"},
	{DairyClasses, 68, HeatMild, "EAGLE-HEAT", "B"},
	{DairyClasses, 72, HeatModerate, "EAGLE-HEAT", "B"},
	{DairyClasses, 80, HeatSevere, "EAGLE-HEAT", "B"},
	{SlovenianClasses, 72, HeatModerate, "SLOVENIA-HEAT", "B"},
	{SlovenianClasses, 78, HeatSevere, "SLOVENIA-HEAT", "B"},
	{SlovenianClasses, 89, HeatVerySevere, "SLOVENIA-HEAT", "B"},
}
