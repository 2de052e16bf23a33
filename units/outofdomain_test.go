package units_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/units"
)

// TestOutOfDomain: the error of a function without a formula tells as much as that of one.
func TestOutOfDomain(t *testing.T) {
	share := units.Argument{Name: "share", Unit: "%", Factor: float64(units.Percent), Domain: units.Between(0, 1, "")}
	run := units.Argument{Name: "run", Factor: 1, Domain: units.Between(1, math.Inf(1), "")}
	for _, c := range []struct {
		err  error
		want string
	}{
		{units.OutOfDomain("rainfall.Quantile", 2, share, 1.5), "rainfall.Quantile: share is 150 %, must be from 0 % to 100 %"},
		{units.OutOfDomain("rainfall.SeasonByWarmth", 3, run, 0), "rainfall.SeasonByWarmth: run is 0, must be at least 1"},
	} {
		assert.EqualError(t, c.err, c.want)
		assert.True(t, units.Impossible(c.err))
	}
	var domain *units.DomainError
	require.ErrorAs(t, units.OutOfDomain("rainfall.Quantile", 2, share, math.NaN()), &domain)
	assert.Equal(t, "share", domain.Argument)
	assert.Equal(t, 2, domain.Index)
	assert.InDelta(t, 100, domain.High, 1e-12)
	assert.True(t, math.IsNaN(domain.Value))
}
