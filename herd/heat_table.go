package herd

// heatSteps are the classes of each scale, from the lowest index of each on.
var heatSteps = []HeatStep{
	{SafetyIndex, 75, HeatAlert, printed("CLEMSON-HEAT", "A")},
	{SafetyIndex, 79, HeatDanger, printed("CLEMSON-HEAT", "A")},
	{SafetyIndex, 84, HeatEmergency, printed("CLEMSON-HEAT", "A")},
	{DairyIndex, 72, HeatStressed, printed("EXT-DAIRY-HEAT", "A")},
	{HighYieldIndex, 68, HeatStressed, printed("EXT-DAIRY-HEAT", "A")},
	{DairyClasses, 68, HeatMild, printed("EAGLE-HEAT", "B")},
	{DairyClasses, 72, HeatModerate, printed("EAGLE-HEAT", "B")},
	{DairyClasses, 80, HeatSevere, printed("EAGLE-HEAT", "B")},
	{SlovenianClasses, 72, HeatModerate, printed("SLOVENIA-HEAT", "B")},
	{SlovenianClasses, 78, HeatSevere, printed("SLOVENIA-HEAT", "B")},
	{SlovenianClasses, 89, HeatVerySevere, printed("SLOVENIA-HEAT", "B")},
}
