package herd_test

import (
	"testing"

	"example.org/soum/herd"
	"example.org/soum/units"
)

var (
	sinkWater units.WaterRate
	sinkIndex float64
)

// The benchmarks are to be read against the guard of as many arguments alone:
// BenchmarkAnswerOfThree.

func BenchmarkBeefWater(b *testing.B) {
	b.ReportAllocs()
	warm := units.Celsius(25)
	for b.Loop() {
		sinkWater, _ = herd.BeefWater(herd.DrinkerDryCow, warm)
		warm += 1e-9
	}
}

func BenchmarkCowWater(b *testing.B) {
	b.ReportAllocs()
	weight := units.LiveWeight(600)
	for b.Loop() {
		sinkWater, _ = herd.CowWater(weight, 5, 25)
		weight += 1e-9
	}
}

func BenchmarkHeatIndex(b *testing.B) {
	b.ReportAllocs()
	warm := units.Celsius(30)
	for b.Loop() {
		sinkIndex, _ = herd.HeatIndex(herd.HeatFahrenheit, warm, 0.5)
		warm += 1e-9
	}
}

func BenchmarkCoGrazing(b *testing.B) {
	b.ReportAllocs()
	head := 100.0
	for b.Loop() {
		sinkIndex, _ = herd.CoGrazing(head, 0.6)
		head += 1e-9
	}
}

func BenchmarkDietSulfur(b *testing.B) {
	b.ReportAllocs()
	ppm := 2000.0
	for b.Loop() {
		sinkShare, _ = herd.DietSulfur(ppm, 0.05, 12, 0.002)
		ppm += 1e-9
	}
}

func BenchmarkHatchDays(b *testing.B) {
	b.ReportAllocs()
	warm := units.Celsius(15)
	for b.Loop() {
		sinkDays, _ = herd.HatchDays(warm, 0.5)
		warm += 1e-9
	}
}

func BenchmarkNutrientReturned(b *testing.B) {
	b.ReportAllocs()
	mass := units.Mass(1)
	for b.Loop() {
		sinkMass, _ = herd.NutrientReturned(mass, 0.25)
		mass += 1e-9
	}
}

var (
	sinkDays units.Days
	sinkMass units.Mass
)
