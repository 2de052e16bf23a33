package herd_test

import (
	"testing"

	"example.org/soum/herd"
	"example.org/soum/units"
)

var (
	sinkDemand  units.Demand
	sinkEnergy  units.EnergyRate
	sinkShare   units.Fraction
	sinkWeight  units.LiveWeight
	sinkNeed    units.NutrientRate
	sinkDegrees units.Temperature
)

// BenchmarkAnswerOfThree is what the guard of three arguments costs alone; the
// others are to be read against it.
func BenchmarkAnswerOfThree(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(50)
	for b.Loop() {
		sinkWeight, _ = herd.WeightAfter(weight, 0.1, 30)
		weight += 1e-9
	}
}

func BenchmarkGoatEnergy(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(50)
	for b.Loop() {
		sinkEnergy, _ = herd.GoatEnergy(weight, 0.1, 2)
		weight += 1e-9
	}
}

func BenchmarkMaintenanceEnergy(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(300)
	for b.Loop() {
		sinkEnergy, _ = herd.MaintenanceEnergy(weight)
		weight += 1e-9
	}
}

func BenchmarkDairyIntakeByWeek(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(600)
	for b.Loop() {
		sinkDemand, _ = herd.DairyIntakeByWeek(30, weight, 12)
		weight += 1e-9
	}
}

func BenchmarkCattleIntake(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(400)
	for b.Loop() {
		sinkDemand, _ = herd.CattleIntake(weight, 0.5, 0.5, 1.1)
		weight += 1e-9
	}
}

func BenchmarkBirdIntake(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(2)
	for b.Loop() {
		sinkDemand, _ = herd.BirdIntake(weight)
		weight += 1e-9
	}
}

func BenchmarkIntakeByFibre(b *testing.B) {
	b.ReportAllocs()
	ndf := units.Fraction(0.4)
	for b.Loop() {
		sinkShare, _ = herd.IntakeByFibre(ndf, 0.0115)
		ndf += 1e-12
	}
}

func BenchmarkGoatIntake(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(50)
	for b.Loop() {
		sinkDemand, _ = herd.GoatIntake(weight, herd.GoatUpkeep, 0.1)
		weight += 1e-9
	}
}

func BenchmarkGrowingIntake(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(310)
	for b.Loop() {
		sinkDemand, _ = herd.GrowingIntake(weight, 0.6)
		weight += 1e-9
	}
}

func BenchmarkTapeWeight(b *testing.B) {
	b.ReportAllocs()
	girth := units.Length(1.5)
	for b.Loop() {
		sinkWeight, _ = herd.TapeWeight(girth, 1.4, herd.TapeCattle)
		girth += 1e-9
	}
}

func BenchmarkColdNeed(b *testing.B) {
	b.ReportAllocs()
	need := units.NutrientRate(5)
	for b.Loop() {
		sinkNeed, _ = herd.ColdNeed(need, -5, -12, herd.ColdOnePercent)
		need += 1e-9
	}
}

func BenchmarkWindChill(b *testing.B) {
	b.ReportAllocs()
	air := units.Temperature(-5)
	for b.Loop() {
		sinkDegrees, _ = herd.WindChill(air, 17*units.MilePerHour, herd.ChillTable)
		air += 1e-9
	}
}
