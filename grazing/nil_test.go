package grazing_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/grazing"
)

// TestNoDocument: where there is none, the error says so.
func TestNoDocument(t *testing.T) {
	_, err := grazing.PlanSeason(nil)
	assert.ErrorContains(t, err, "is no document")
	_, err = grazing.Carries(nil, "ewes")
	assert.ErrorContains(t, err, "is no document")
	_, err = grazing.LandFor(nil)
	assert.ErrorContains(t, err, "is no document")
	_, err = grazing.Explain(nil, 0)
	assert.ErrorContains(t, err, "is no document")
	_, err = grazing.FitStock(nil)
	assert.ErrorContains(t, err, "is no document")
	_, err = grazing.Study(nil)
	assert.ErrorContains(t, err, "is no document")
}
