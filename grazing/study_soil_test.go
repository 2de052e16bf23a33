package grazing_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// TestStudyKeepsTheSoilsAccount: with an account of the soil's water the drawn rain
// still moves growth: of 40 seasons some want more feed than others.
func TestStudyKeepsTheSoilsAccount(t *testing.T) {
	farm := exampleFarm(t)
	reference := make([]units.RainDepth, 12)
	for month := range reference {
		reference[month] = 100 * units.RainMillimetre
	}
	farm.Rain.Balance = &grazing.WaterAccount{Reference: reference, Coefficient: 1, Store: 50 * units.RainMillimetre}
	result, err := grazing.Study(&grazing.Studied{Version: 1, Past: grazing.PastDrawn, Farm: *farm, Record: wichita(t), Draw: grazing.DrawYears, Seasons: 40, Seed: 1})
	require.NoError(t, err)
	fed := result.Points[0].Fed
	assert.Greater(t, float64(fed.High), float64(fed.Low))
}
