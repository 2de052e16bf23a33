package farm_test

import (
	"fmt"
	"log"

	"example.org/soum/forage"
	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
	"example.org/soum/units"
)

// winterFarm is a farm in December, when nothing grows, so that its sums can be
// done in the head: grass of 20 cm at 100 kg/ha/cm, 10 cm to be left, is 1,000
// kg/ha, of which 80 % are eaten; ten animals of 80 kg eating 2.5 % of their
// weight want 20 kg a day, which is 250 m², or 10 m of a lane 25 m wide.
const winterFarm = `{
  "version": 1, "today": "2001-12-01", "season": {"from": "2001-12-01", "to": "2001-12-10"},
  "land": [{"id": "lane", "width": "25 m", "length": "120 m", "pasture": "mixed-pasture", "density": "100 kg/ha/cm", "height": "20 cm"}],
  "groups": [{"id": "ewes", "class": "ewe", "head": 10, "weight": "80 kg", "stage": "dry"}],
  "rotations": [{"land": ["lane"], "groups": [{"group": "ewes"}], "turn_in": "15 cm", "leave": "10 cm", "shortest_rest": "30 days"}]
}`

func ExampleFarm_Plan() {
	holding, err := farm.Read([]byte(winterFarm))
	if err != nil {
		log.Fatal(err)
	}
	plan, err := holding.Plan()
	if err != nil {
		log.Fatal(err)
	}
	for _, m := range plan.Moves[:3] {
		fmt.Printf("%s: %s from %s to %s, leave %s\n", m.Date, m.Land, m.From.In(units.Metric), m.To.In(units.Metric), m.Leave.In(units.Metric))
	}
	// Output:
	// 2001-12-01: lane from 0 m to 10 m, leave 10 cm
	// 2001-12-02: lane from 10 m to 20 m, leave 10 cm
	// 2001-12-03: lane from 20 m to 30 m, leave 10 cm
}

func ExampleRead() {
	_, err := farm.Read([]byte(`{"version": 1, "today": "2001-02-30"}`))
	fmt.Println(err)
	// Output:
	// today: "2001-02-30" is no date: there is no such day; a date such as "2000-04-15": the day the heights were read (one of: year-month-day, such as 2000-04-15)
}

// The lane of the winter farm is 3,000 m², twelve days at 250 m² a day for ten
// ewes, and the season has ten: at 300 m² a day it carries twelve. Nothing grows, so winter binds.
func ExampleFarm_Carries() {
	holding, err := farm.Read([]byte(winterFarm))
	if err != nil {
		log.Fatal(err)
	}
	carried, err := holding.Carries("ewes")
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%d ewes, %d at least; beyond that %v binds\n", carried.Middle, carried.Low, carried.Limits[1])
	// Output:
	// 12 ewes, 12 at least; beyond that winter binds
}

// Ten ewes need 2,500 m² for ten days, five sixths of the lane; the search goes
// in steps of one per cent.
func ExampleFarm_LandFor() {
	holding, err := farm.Read([]byte(winterFarm))
	if err != nil {
		log.Fatal(err)
	}
	need, err := holding.LandFor()
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(need.Found, need.Area >= 2500 && need.Area < 2500*1.01)
	// Output:
	// true true
}

func ExampleFarm_Explain() {
	holding, err := farm.Read([]byte(winterFarm))
	if err != nil {
		log.Fatal(err)
	}
	explanations, err := holding.Explain(holding.Today)
	if err != nil {
		log.Fatal(err)
	}
	for _, step := range explanations[0].Steps {
		if step.Function == "forage.UsableShare" { // a look-up: its text is the table
			fmt.Println("usable share:", step.Answer)
			continue
		}
		fmt.Println(step.Text)
	}
	// Output:
	// demand of ewes = head × weight × intake × pasture = 10 × 80 kg × 2.5 % × 100 % = 20 kg/day
	// available = (height − residual) × density = (20 cm − 10 cm) × 100 kg/ha/cm = 1,000 kg/ha
	// usable share: 80 %
	// stay area = demand × days ÷ (available × use) = 20 kg/day × 1 day ÷ (1,000 kg/ha × 80 %) = 0.025 ha
	// strip length = area ÷ width = 0.025 ha ÷ 25 m × 10,000 m²/ha = 10 m
}

func ExampleFirst() {
	today, err := units.ParseDate("2026-05-01")
	if err != nil {
		log.Fatal(err)
	}
	holding, err := farm.First(farm.Answers{
		Today: today, Units: units.US, Area: 4 * units.Acre, Pasture: "mixed-pasture", Rain: 34 * units.RainInch, Height: 8 * units.HeightInch,
		Stock: []farm.StockAnswer{{Class: "laying-hen", Head: 30}, {Class: "ewe", Head: 12}},
	})
	if err != nil {
		log.Fatal(err)
	}
	for _, member := range holding.Rotations[0].Groups {
		fmt.Println(member.Group, "behind the leader by", member.Behind.In(units.US))
	}
	// Output:
	// ewe behind the leader by 0 days
	// laying-hen behind the leader by 1 day
}

// A dry spell: 30 mm of rain in May where the grass wants 100, and a soil that holds
// 60 mm: 90 mm are used, nine tenths. In June there is the rain alone, 25 mm, a
// quarter.
func ExampleFarm_Plan_soilWater() {
	const dry = `{
	  "version": 1, "today": "2001-05-01", "season": {"from": "2001-05-01", "to": "2001-06-30"},
	  "land": [{"id": "lane", "width": "25 m", "length": "120 m", "pasture": "mixed-pasture", "height": "20 cm"}],
	  "groups": [{"id": "ewes", "class": "ewe", "head": 10, "stage": "dry"}],
	  "rotations": [{"land": ["lane"], "groups": [{"group": "ewes"}], "shortest_rest": "30 days"}],
	  "rain": {
	    "normal": ["50 mm", "50 mm", "50 mm", "50 mm", "50 mm", "50 mm", "50 mm", "50 mm", "50 mm", "50 mm", "50 mm", "50 mm"],
	    "months": {"2001-05": "30 mm", "2001-06": "25 mm"},
	    "balance": {
	      "reference": ["10 mm", "20 mm", "40 mm", "70 mm", "100 mm", "100 mm", "100 mm", "100 mm", "70 mm", "40 mm", "20 mm", "10 mm"],
	      "coefficient": 1, "store": "60 mm", "note": "full on 1 May"}}
	}`
	holding, err := farm.Read([]byte(dry))
	if err != nil {
		log.Fatal(err)
	}
	plan, err := holding.Plan()
	if err != nil {
		log.Fatal(err)
	}
	for _, m := range plan.Soil {
		fmt.Printf("%d-%02d: used %s of %s, growth %s of the book's\n", m.Year, m.Month, m.Actual.In(units.Metric), m.Demand.In(units.Metric), m.Growth.In(units.Metric))
	}
	// Output:
	// 2001-05: used 90 mm of 100 mm, growth 90 % of the book's
	// 2001-06: used 25 mm of 100 mm, growth 25 % of the book's
}

// A farm may also be written in Go. Six ewes of 60 kg in milk eat 4.5 % of their weight,
// 16.2 kg a day; of 12 cm × 250 kg/ha/cm = 0.3 kg/m² four fifths are eaten in a day, so
// the strip is 16.2 / 0.24 = 67.5 m², 2.7 m of a lane 25 m wide.
func ExampleFarm() {
	today, _ := units.ParseDate("2001-05-01")
	end, _ := units.ParseDate("2001-05-10")
	f := farm.Farm{
		Version: 1, Units: units.Metric, Today: today, Season: farm.Season{From: today, To: end},
		Land: []farm.Land{{
			ID: "lane", Width: 25 * units.Metre, Length: 200 * units.Metre,
			Pasture: forage.PastureRow{Name: "mixed-pasture"}, Height: 20 * units.HeightCentimetre, Density: 250 * units.KilogramPerHectareCentimetre,
		}},
		Groups:    []farm.Group{{ID: "ewes", Class: herd.ClassRow{Name: "ewe"}, Head: 6, Weight: 60 * units.LiveKilogram, Stage: herd.StageLactating}},
		Rotations: []farm.Rotation{{Land: []string{"lane"}, Groups: []farm.Member{{Group: "ewes"}}, Leave: 8 * units.HeightCentimetre, ShortestRest: 25 * units.Day}},
	}
	plan, err := f.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	m := &plan.Moves[0]
	fmt.Printf("%s: %s from %s, %s.\n", m.Date, m.Land, m.From.In(units.Metric), m.Length.In(units.Metric))
	// Output: 2001-05-01: lane from 0 m, 2.7 m.
}
