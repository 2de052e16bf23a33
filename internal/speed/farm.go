// Package speed measures whole works of the library in a program of their own: the
// packages' own tests hold a library for properties, whose half a megabyte of tables
// the collector marks again and again, and a user's program does not.
package speed

import (
	"fmt"
	"strings"

	"example.org/soum/grazing/farm"
)

// FiftyStrips gives a farm of five lanes of ten days' strips, grazed for a year by four
// groups, each behind the other.
func FiftyStrips() (*farm.Farm, error) {
	var lanes, ids []string
	for i := range 5 {
		lanes = append(lanes, fmt.Sprintf(`{"id": "lane %d", "width": "20 m", "length": "380 m", "pasture": "orchardgrass-legume", "productivity": "high", "height": "22 cm"}`, i))
		ids = append(ids, fmt.Sprintf(`"lane %d"`, i))
	}
	return farm.Read([]byte(`{"version": 1, "today": "2001-01-01", "season": {"from": "2001-01-01", "to": "2001-12-31"},
		"land": [` + strings.Join(lanes, ", ") + `],
		"groups": [{"id": "cows", "class": "suckler-cow", "head": 4}, {"id": "ewes", "class": "ewe", "head": 8}, {"id": "goats", "class": "dairy-goat", "head": 6}, {"id": "hens", "class": "laying-hen", "head": 40}],
		"rotations": [{"land": [` + strings.Join(ids, ", ") + `], "shortest_rest": "25 days",
			"groups": [{"group": "cows"}, {"group": "ewes", "behind": "1 day"}, {"group": "goats", "behind": "3 days"}, {"group": "hens", "behind": "5 days"}]}]}`))
}
