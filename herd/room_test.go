package herd_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/herd"
	"example.org/soum/units"
)

// TestRoomsAgainstPrint compares the table of outdoor room with a second
// reading, row by row, and sees that what is handed out is a copy.
func TestRoomsAgainstPrint(t *testing.T) {
	rows, rooms := secondReading(t, "testdata/rooms.csv"), herd.Rooms()
	require.Len(t, rooms, len(rows))
	for i, row := range rows {
		got := rooms[i]
		assert.Equal(t, []string{row[0], row[4], row[5]}, []string{got.Class, strings.Fields(got.Source)[0], got.Mark}, "row %d", i)
		assert.NotEmpty(t, got.When, "row %d", i)
		assert.Regexp(t, sourceKey, got.Source)
		same(t, row[0], roomRate(t, row[1], row[3]), got.Rate.Low)
		same(t, row[0], roomRate(t, row[2], row[3]), got.Rate.High)
	}
	rooms[0].Class = "spoilt"
	assert.NotEqual(t, "spoilt", herd.Rooms()[0].Class)
}

// roomRate reads a number of head on a unit of area, or an area for one head.
func roomRate(t *testing.T, number, unit string) units.HeadRate {
	if strings.HasPrefix(unit, "head/") {
		rate, err := units.ParseHeadRate(number + " " + unit)
		require.NoError(t, err)
		return rate
	}
	room, err := units.ParseArea(number + " " + unit)
	require.NoError(t, err)
	rate, err := herd.HeadPerArea(room)
	require.NoError(t, err)
	return rate
}

// How many hens has an acre room for at 87.12 square feet each, and what do
// others say?
func ExampleHeadPerArea() {
	rate, err := herd.HeadPerArea(87.12 * units.SquareFoot)
	fmt.Println(rate.In(units.US), err)
	for _, room := range herd.Rooms() {
		if room.Class == "laying-hen" {
			fmt.Println(room.Rate.High.In(units.US), room.When, room.Source)
		}
	}
	// Output:
	// 500 head/ac <nil>
	// 809 head/ac at most, organic range, British code EGG-ORGANIC
	// 500 head/ac a week, as one grower reads it HENS-500
}

// How many sows may a field of 2 acres hold?
func ExampleRooms() {
	for _, room := range herd.Rooms() {
		if room.Class == "sow" {
			fmt.Printf("%.0f to %.0f, %s (%s)\n", room.Rate.Low.HeadPerAcre()*2, room.Rate.High.HeadPerAcre()*2, room.When, room.Source)
		}
	}
	// Output:
	// 16 to 16, at most, on good pasture, for a season (UMN-SOW)
	// 8 to 12, rotated, ground cover kept over three quarters; 25 was tried too (SOW-GROUND-COVER)
}
