package farm_test

import (
	"fmt"
	"strings"
	"testing"

	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestSharesMakeUpTheYear lets a row's months sum to 90 to 110 % of its yield
// and no more.
func TestSharesMakeUpTheYear(t *testing.T) {
	row := strings.ReplaceAll(handPasture, "\n", " ")
	for percent, sound := range map[float64]bool{89.5: false, 90.5: true, 109.5: true, 110.5: false} {
		// May is the rest of the year: the other months of the row sum to 76 %
		changedRow := strings.Replace(row, `"24 %", "24 %"`, fmt.Sprintf(`"%g %%", "24 %%"`, percent-76), 1)
		_, err := farm.Read([]byte(changed(t, `"pasture": "bluegrass-clover"`, `"pasture": `+changedRow)))
		assert.Equal(t, sound, err == nil, "%g %%: %v", percent, err)
	}
}

// TestHayIsAirDryUnlessTold: hay without a figure is 90 % dry matter [NEB-AUM].
func TestHayIsAirDryUnlessTold(t *testing.T) {
	p := plan(t, readSmall(t, `, "dry_matter": "88 %", "waste": "10 %"`, `, "waste": "10 %"`))
	require.Positive(t, p.Hay.Eaten)
	assert.InEpsilon(t, p.Hay.Eaten.Kilograms()/0.90/0.90, p.Hay.Carried.Kilograms(), 1e-9)
}

// TestLeavingLittleIsNoted from just under 3 in on (common practice, without a
// source), not from 3 in.
func TestLeavingLittleIsNoted(t *testing.T) {
	noted := func(leave string) bool {
		holding := readSmall(t, `"leave": "8 cm"`, `"leave": "`+leave+`"`)
		holding.Rotations, holding.Groups = holding.Rotations[:1], holding.Groups[:2]
		for _, code := range notes(plan(t, holding)) {
			if code == "leaves-little" {
				return true
			}
		}
		return false
	}
	assert.False(t, noted("3 in"))
	assert.False(t, noted("3.02 in"))
	assert.True(t, noted("2.98 in"))
}

// TestShortestStripUnlessTold is 2 m with goats and sheep, 4 m with cattle and 1 m with
// birds alone, ours: they want so little that a day's strip would be shorter.
func TestShortestStripUnlessTold(t *testing.T) {
	for class, metres := range map[string]float64{"ewe": 2, "suckler-cow": 4, "horse": 4, "sow": 2, "laying-hen": 1} {
		holding := readSmall(t, `"head": 8`, `"head": 0.001`)
		holding.Groups[0].Class, holding.Groups[0].Stage = herd.ClassRow{Name: class}, 0
		holding.Groups, holding.Rotations = holding.Groups[:1], holding.Rotations[:1]
		holding.Rotations[0].Groups = holding.Rotations[0].Groups[:1]
		assert.InDelta(t, metres, plan(t, holding).Moves[0].Length.Metres(), 1e-9, class)
	}
}

// TestRainMonthsAreRead reads a record's month from its key: rain of June alone
// changes growth from July on, rain of another year does not.
func TestRainMonthsAreRead(t *testing.T) {
	normal := strings.TrimSuffix(strings.Repeat(`"100 mm", `, 12), ", ")
	july := func(key string) float64 {
		p := plan(t, readSmall(t, `"note": "ours"`, fmt.Sprintf(`"rain": {"normal": [%s], "months": {"%s": "50 mm"}}`, normal, key)))
		return p.Months[2].Grown.Kilograms()
	}
	assert.Less(t, july("2001-06"), july("1991-06"))
	assert.Less(t, july("2001-06"), july("2011-06"))
	assert.Less(t, july("2001-04"), july("2002-04"))
}
