package herd_test

import (
	"testing"

	"example.org/soum/herd"
	"example.org/soum/internal/check"
	"example.org/soum/units"
)

// BenchmarkAnswerOfThree is what the guard of three arguments costs alone; the
// others are to be read against it.
func BenchmarkAnswerOfThree(b *testing.B) {
	check.Speed(b, units.LiveWeight(50), func(weight units.LiveWeight) (units.LiveWeight, error) { return herd.WeightAfter(weight, 0.1, 30) })
}

func BenchmarkGoatEnergy(b *testing.B) {
	check.Speed(b, units.LiveWeight(50), func(weight units.LiveWeight) (units.EnergyRate, error) { return herd.GoatEnergy(weight, 0.1, 2) })
}

func BenchmarkMaintenanceEnergy(b *testing.B) {
	check.Speed(b, units.LiveWeight(300), func(weight units.LiveWeight) (units.EnergyRate, error) { return herd.MaintenanceEnergy(weight) })
}

func BenchmarkDairyIntakeByWeek(b *testing.B) {
	check.Speed(b, units.LiveWeight(600), func(weight units.LiveWeight) (units.Demand, error) { return herd.DairyIntakeByWeek(30, weight, 12) })
}

func BenchmarkCattleIntake(b *testing.B) {
	check.Speed(b, units.LiveWeight(400), func(weight units.LiveWeight) (units.Demand, error) { return herd.CattleIntake(weight, 0.5, 0.5, 1.1) })
}

func BenchmarkBirdIntake(b *testing.B) {
	check.Speed(b, units.LiveWeight(2), func(weight units.LiveWeight) (units.Demand, error) { return herd.BirdIntake(weight) })
}

func BenchmarkIntakeByFibre(b *testing.B) {
	check.Speed(b, units.Fraction(0.4), func(ndf units.Fraction) (units.Fraction, error) { return herd.IntakeByFibre(ndf, 0.0115) })
}

func BenchmarkGoatIntake(b *testing.B) {
	check.Speed(b, units.LiveWeight(50), func(weight units.LiveWeight) (units.Demand, error) {
		return herd.GoatIntake(weight, herd.GoatUpkeep, 0.1)
	})
}

func BenchmarkGrowingIntake(b *testing.B) {
	check.Speed(b, units.LiveWeight(310), func(weight units.LiveWeight) (units.Demand, error) { return herd.GrowingIntake(weight, 0.6) })
}

func BenchmarkTapeWeight(b *testing.B) {
	check.Speed(b, units.Length(1.5), func(girth units.Length) (units.LiveWeight, error) {
		return herd.TapeWeight(girth, 1.4, herd.TapeCattle)
	})
}

func BenchmarkColdNeed(b *testing.B) {
	check.Speed(b, units.NutrientRate(5), func(need units.NutrientRate) (units.NutrientRate, error) {
		return herd.ColdNeed(need, -5, -12, herd.ColdOnePercent)
	})
}

func BenchmarkWindChill(b *testing.B) {
	check.Speed(b, units.Temperature(-5), func(air units.Temperature) (units.Temperature, error) {
		return herd.WindChill(air, 17*units.MilePerHour, herd.ChillTable)
	})
}
