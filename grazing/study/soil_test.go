package study_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing/farm"
	"example.org/soum/grazing/study"
	"example.org/soum/units"
)

// TestStudyKeepsTheSoilsAccount: with an account of the soil's water the drawn rain
// still moves growth: of 40 seasons some want more feed than others.
func TestStudyKeepsTheSoilsAccount(t *testing.T) {
	holding := exampleFarm(t)
	reference := make([]units.RainDepth, 12)
	for month := range reference {
		reference[month] = 100 * units.RainMillimetre
	}
	holding.Rain.Balance = &farm.WaterAccount{Reference: reference, Coefficient: 1, Store: 50 * units.RainMillimetre}
	result, err := (&study.Study{Version: 1, Past: study.PastDrawn, Farm: *holding, Record: wichita(t), Draw: study.DrawYears, Seasons: 40, Seed: 1}).Run()
	require.NoError(t, err)
	fed := result.Points[0].Fed
	assert.Greater(t, float64(fed.High), float64(fed.Low))
}
