package farm_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// TestNoDocument: where there is none, the error says so.
func TestNoDocument(t *testing.T) {
	var none *farm.Farm
	for name, ask := range map[string]func() error{
		"check":   none.Check,
		"plan":    func() error { _, err := none.Plan(); return err },
		"carries": func() error { _, err := none.Carries("ewes"); return err },
		"leaders": func() error { _, err := none.Leaders(); return err },
		"land":    func() error { _, err := none.LandFor(); return err },
		"explain": func() error { _, err := none.Explain(0); return err },
		"log":     func() error { _, err := none.CarryOn(0, "", ""); return err },
		"seasons": func() error { _, err := none.Seasons(units.Middle); return err },
	} {
		assert.ErrorContains(t, ask(), "is no document", name)
	}
	assert.Nil(t, none.Clone())
}
