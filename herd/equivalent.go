package herd

import (
	"math"
	"slices"

	"example.org/soum/units"
)

// Reckoning is whose way of telling stock in units is meant. What one unit is
// differs between them, so a number of units is nothing without it.
type Reckoning int

// The reckonings. Those without rows go by weight.
const (
	ReckoningWeight                 Reckoning = iota + 1 // animal units by weight over 1,000 lb
	ReckoningMetabolic                                   // animal units by weight^0.75
	ReckoningVallentine                                  // range textbook, North America
	ReckoningManitoba                                    // Manitoba Agriculture
	ReckoningSmallholder                                 // a smallholder's table
	ReckoningExtension                                   // eXtension, the dry cow a tenth less
	ReckoningCalifornia                                  // University of California course
	ReckoningTexas                                       // Texas chart, by weight and intake
	ReckoningFederal                                     // federal land of the United States
	ReckoningBryan                                       // NRCS Bryan, Texas, feed of a month
	ReckoningMontana                                     // Montana State
	ReckoningIdaho                                       // NRCS Idaho
	ReckoningSouthern                                    // a southern livestock paper
	ReckoningIowaHorses                                  // Iowa State, horses
	ReckoningJornada                                     // Jornada review
	ReckoningMexico                                      // Mexico
	ReckoningSouthAfrica                                 // South Africa, large stock
	ReckoningEuropean                                    // European Union
	ReckoningNix                                         // British farm management pocketbook
	ReckoningEntryLevel                                  // English entry level scheme
	ReckoningStewardship                                 // English countryside scheme
	ReckoningScottish                                    // Scottish college, as smallholders use it
	ReckoningAdultEquivalent                             // Australia, large cattle
	ReckoningDrySheepMla                                 // Australia, 50 kg wether
	ReckoningDrySheepVictoria                            // Victoria, 45 kg wether
	ReckoningDrySheepMerino                              // Merino weaners; ewes by MerinoDrySheep
	ReckoningDrySheepSouthAustralia                      // South Australia
	ReckoningDrySheepTasmania                            // Tasmania
	ReckoningNewZealand                                  // New Zealand, 55 kg ewe
	ReckoningNewZealandSmallholding                      // New Zealand, 40 kg ewe; others by NewZealandUnits
	ReckoningTropicalWeight                              // tropical units by weight^0.75, TropicalUnits
	ReckoningTropicalShort                               // tropical units, short rule
	ReckoningTropicalStorck                              // tropical units, Storck and others
	ReckoningTropicalChewaka                             // tropical units, Chewaka study
	ReckoningGreylags                                    // wild geese against ewes
)

// UnitKind is the sort of unit that a reckoning counts in. Two reckonings of
// one sort are still two.
type UnitKind int

// The sorts of unit.
const (
	KindAnimalUnit    UnitKind = iota + 1 // AU, a beef cow of about 1,000 lb
	KindLivestockUnit                     // LU or LSU, a dairy cow
	KindAdult                             // AE, a steer of 450 kg
	KindDrySheep                          // DSE, a wether held at its weight
	KindStockUnit                         // SU, a ewe rearing a lamb
	KindTropical                          // TLU, an animal of 250 kg
	KindEwe                               // a ewe of 50 kg
)

// unitSymbols are the units as they are written.
var unitSymbols = [...]string{KindAnimalUnit: "AU", KindLivestockUnit: "LU", KindAdult: "AE", KindDrySheep: "DSE", KindStockUnit: "SU", KindTropical: "TLU", KindEwe: "ewes"}

// ReckoningDefinition tells what one unit of a reckoning is.
type ReckoningDefinition struct {
	// Reckoning is whose unit it is.
	Reckoning Reckoning `json:"reckoning"`
	// Unit is the sort of unit.
	Unit UnitKind `json:"unit"`
	// What is one unit, in words.
	What string `json:"what"`
	units.Printed
}

// Definition gives what one unit of a reckoning is, and who says so.
//
// Note: sources disagree on the unit itself. The North American one is a cow of
// 1,000 lb with her young calf (NDMC-AU, EXT-AUM), with or without (MANITOBA-AUM),
// or a dry cow of 1,100 lb (JORNADA-1994), and RANGELANDS-GATEWAY counts the pair
// 1.35. The 26 lb of feed a day are oven dry with some and air dry with others:
// UnitDemand. A dry sheep weighs 50 kg, or 45 kg in Victoria.
//
// Where:
//   - reckoning: whose unit
//
// Check: TestDefinitions
//
// Source: ours: a collection, each definition with its source
func Definition(reckoning Reckoning) (ReckoningDefinition, error) {
	for _, d := range definitions {
		if d.Reckoning == reckoning {
			return d, nil
		}
	}
	_, err := units.Answer(&formulaDefinition, 0.0, float64(reckoning))
	return ReckoningDefinition{}, err
}

// Reckoned is a number of units together with the reckoning they are of. It has
// no plus sign: Plus refuses another reckoning.
type Reckoned struct {
	// Value is the number of units.
	Value float64 `json:"value"`
	// Reckoning is what one unit is.
	Reckoning Reckoning `json:"reckoning"`
}

// String tells the number, the unit and whose it is: "2.83 LU (scottish)".
func (r Reckoned) String() string {
	d, err := Definition(r.Reckoning)
	if err != nil {
		return units.Number(r.Value) + " units of no reckoning"
	}
	return units.Number(r.Value) + " " + unitSymbols[d.Unit] + " (" + r.Reckoning.String() + ")"
}

// Plus adds units of the same reckoning; those of another are refused, since
// one unit of each is a different animal.
func (r Reckoned) Plus(other Reckoned) (Reckoned, error) {
	if r.Reckoning != other.Reckoning {
		return Reckoned{math.NaN(), r.Reckoning}, &units.ParseError{Quantity: "herd.Reckoning", Text: other.String(), Problem: "cannot be added to " + r.String() + ": a unit of the one is not a unit of the other", Accepts: []string{r.Reckoning.String()}, Word: true}
	}
	return Reckoned{r.Value + other.Value, r.Reckoning}, nil
}

// In converts to another reckoning where a source prints a rate: Conversion.
func (r Reckoned) In(to Reckoning) (Reckoned, error) {
	factor, err := Conversion(r.Reckoning, to)
	return Reckoned{r.Value * factor, to}, err
}

// PerHectare gives the units on each hectare of the land that can be grazed.
//
// Errors: a *units.DomainError where the area is not above 0
func (r Reckoned) PerHectare(area units.Area) (float64, error) {
	if !(area > 0) || math.IsInf(float64(area), 1) {
		return math.NaN(), units.OutOfDomain("herd.Reckoned.PerHectare", 1, formulaDrySheepRate.Arguments[2], float64(area))
	}
	return r.Value / area.Hectares(), nil
}

// EquivalentRow is a row of a table of equivalents: what some animals of a
// class count in the units of a reckoning.
type EquivalentRow struct {
	// Reckoning is whose row it is.
	Reckoning Reckoning `json:"reckoning"`
	// Class is the stock in words, lower case with hyphens.
	Class string `json:"class"`
	// Head is the number of animals that Units is for.
	Head float64 `json:"head"`
	// Units is the printed span for so many.
	Units units.Span[float64] `json:"units"`
	// Weight is the live weight that print names, 0 where it names none.
	Weight units.LiveWeight `json:"weight"`
	units.Printed
	// Note says what else print says of the class.
	Note string `json:"note,omitempty"`
}

// Each gives what one animal of the row counts, at one end of the span.
//
// Errors: a *units.DomainError for an end that is none
func (r EquivalentRow) Each(end units.End) (Reckoned, error) {
	if end < units.Low || end > units.High {
		return Reckoned{math.NaN(), r.Reckoning}, noEnd("herd.EquivalentRow.Each", 1, end)
	}
	return Reckoned{r.each(end), r.Reckoning}, nil
}

func (r *EquivalentRow) each(end units.End) float64 { return r.Units.At(end) / r.Head }

// Equivalents gives the rows of one reckoning, as a copy; none where it goes by
// weight alone.
//
// Where:
//   - reckoning: whose rows
//
// Check: TestEquivalentsAgainstPrint
//
// Source: ours: a collection, each row with its source
func Equivalents(reckoning Reckoning) ([]EquivalentRow, error) {
	if _, err := units.Answer(&formulaEquivalents, 0.0, float64(reckoning)); err != nil {
		return nil, err
	}
	rows := []EquivalentRow{}
	for i := range equivalents {
		if equivalents[i].Reckoning == reckoning {
			rows = append(rows, equivalents[i])
		}
	}
	return rows, nil
}

// Equivalent gives the row of a class in a reckoning.
//
// Where:
//   - stock: a class of the reckoning's rows
//   - reckoning: whose row
//
// Errors: a *units.ParseError that lists the classes of the reckoning
//
// Note: the same animal counts differently by source, and the choice is yours. A
// horse is 0.8 (ReckoningEuropean, ReckoningNix), 0.9 at rest
// (ReckoningIowaHorses), 1.0 (ReckoningEntryLevel), 1.20 to 1.27
// (ReckoningManitoba, ReckoningTexas), up to 2.0 (ReckoningSmallholder), ten dry
// sheep (ReckoningDrySheepSouthAustralia) or 10 to 12 ewes
// (ReckoningNewZealandSmallholding). Sheep to a cow are 5 (ReckoningFederal), 6
// (ReckoningTexas), 8 (ReckoningDrySheepMla), 8.3 to 9 (British units), 10
// (ReckoningEuropean); grazing trials found 3.4 to 3.5 ewes to a steer, and by
// nitrogen 6.9 ewes make a cow. A goat is 0.10 to 0.19. A hen is 0.017, 0.014 or
// 0.005, a goose 0.003 or 0.030, ten times apart: these were made for feed
// budgets or manure, and a grazing goose eats far more (ReckoningGreylags). The
// table of manure rules stands apart: ManureUnits.
//
// Check: TestEquivalentsAgainstPrint, TestEquivalentRefuses
//
// Source: ours: a look-up in the tables of Equivalents
func Equivalent(stock string, reckoning Reckoning) (EquivalentRow, error) {
	row := equivalent(stock, reckoning)
	if row == nil {
		return EquivalentRow{}, noEquivalent(&formulaEquivalent, "stock", stock, reckoning, 0, float64(reckoning))
	}
	return *row, nil
}

// equivalent looks a row up, nil where there is none.
func equivalent(stock string, reckoning Reckoning) *EquivalentRow {
	for i := range equivalents {
		if row := &equivalents[i]; row.Class == stock && row.Reckoning == reckoning {
			return row
		}
	}
	return nil
}

// noEquivalent tells which classes a reckoning has, or which reckonings have any.
func noEquivalent(formula *units.Formula, argument, stock string, reckoning Reckoning, arguments ...float64) error {
	var names []string
	for _, row := range equivalents {
		if row.Reckoning == reckoning {
			names = append(names, row.Class)
		}
	}
	if names == nil {
		with := namesOf(equivalents, func(row *EquivalentRow) string { return row.Reckoning.String() })
		return formula.NoRow("reckoning", reckoning.String(), "has no classes: it goes by weight", with, arguments...)
	}
	return formula.NoRow(argument, stock, "no such class in the reckoning "+reckoning.String(), names, arguments...)
}

// TotalEquivalent gives a herd in the units of one reckoning: each class's head
// times what one of them counts, summed.
//
// Errors: a *units.DomainError where the two lists differ in length or a number
// of head is negative or not a number; a *units.ParseError for a class that the
// reckoning has no row of
//
// Note: young at foot are in the mother's figure with some reckonings and apart
// with others: see the rows' notes.
//
// Check: TestTotalEquivalent, TestTotalEquivalentRefuses
//
// Source: SA-DSE; SMALLHOLDING-LU
func TotalEquivalent(classes []string, head []float64, reckoning Reckoning, end units.End) (Reckoned, error) {
	total := Reckoned{math.NaN(), reckoning}
	if err := asManyHead(len(classes), len(head), "herd.TotalEquivalent"); err != nil {
		return total, err
	}
	sum := 0.0
	for i, class := range classes {
		row := equivalent(class, reckoning)
		if row == nil {
			return total, noEquivalent(&totalEquivalent, "classes", class, reckoning, 0, head[i], float64(reckoning), float64(end))
		}
		part, err := units.Answer(&totalEquivalent, head[i]*row.each(end), 0, head[i], float64(reckoning), float64(end))
		if err != nil {
			return total, err
		}
		sum += part
	}
	var err error
	total.Value, err = units.Answer(&totalEquivalent, sum, 0, 0, float64(reckoning), float64(end))
	return total, err
}

// totalEquivalent is the limits of TotalEquivalent, one entry of each list: a doc
// comment cannot declare those of lists.
var totalEquivalent = units.Formula{Name: "herd.TotalEquivalent", Source: "SA-DSE", Arguments: []units.Argument{
	{Name: "classes", Factor: 1, Domain: anyNumber},
	{Name: "head", Factor: 1, Domain: anyNumber},
	formulaEquivalent.Arguments[1],
	formulaEquivalentHead.Arguments[4],
}}

// asManyHead refuses lists of different lengths.
func asManyHead(want, got int, function string) error {
	lists := units.Formula{Name: function, Arguments: []units.Argument{
		{Name: "len(head)", Factor: 1, Domain: units.Limits{Low: float64(want), High: float64(want), LowOf: -1, HighOf: -1}},
	}}
	_, err := units.Answer(&lists, 0.0, float64(got))
	return err
}

// EquivalentHead gives how many animals of one class count as much as some of
// another, both at one end of their spans, by one reckoning. Print rounds it to
// whole head.
//
// Where:
//   - head: number of animals; >= 0
//   - of: their class, one of the reckoning's rows
//   - to: the other class
//   - reckoning: whose rows
//   - end: of the printed spans
//
// Errors: a *units.ParseError for a class that the reckoning has no row of
//
// Note: it compares what they count, which is mostly feed. Unlike kinds eat
// unlike plants, so that a mixed herd may carry more than the sum says, and the
// rows of poultry say nothing of grass.
//
// Check: TestEquivalentHead
//
// Source: SA-DSE its column of head equal to 100 wethers
func EquivalentHead(head float64, of, to string, reckoning Reckoning, end units.End) (float64, error) {
	arguments := [...]float64{head, 0, 0, float64(reckoning), float64(end)}
	from, other := equivalent(of, reckoning), equivalent(to, reckoning)
	switch {
	case from == nil:
		return math.NaN(), noEquivalent(&formulaEquivalentHead, "of", of, reckoning, arguments[:]...)
	case other == nil:
		return math.NaN(), noEquivalent(&formulaEquivalentHead, "to", to, reckoning, arguments[:]...)
	}
	return units.Answer(&formulaEquivalentHead, head*from.each(end)/other.each(end), arguments[:]...)
}

// Conversion returns the units of one reckoning in a unit of another, where a
// source prints the rate.
//
// Table: an adult equivalent is 8.4 dry sheep, and back; a unit of any reckoning
// is one of its own
//
// Where:
//   - from: the reckoning of the one unit
//   - to: the reckoning that it is told in
//
// Errors: a *units.ParseError for any other pair, since no source prints a rate for
// it: count the herd anew from its classes
//
// Source: MLA-DSE 1 AE is 8.4 DSE; definition: a unit is one of its own
func Conversion(from, to Reckoning) (float64, error) {
	factor := conversion(from, to)
	if factor == 0 && from.String() != "" && to.String() != "" {
		return units.NoFigure[float64](&formulaConversion, 1, "no source prints a rate from "+from.String(), convertsTo(from), float64(from), float64(to))
	}
	return units.Answer(&formulaConversion, factor, float64(from), float64(to))
}

// convertsTo lists the reckonings for which there is a rate.
func convertsTo(from Reckoning) []string {
	var names []string
	for to := ReckoningWeight; to <= ReckoningGreylags; to++ {
		if conversion(from, to) != 0 {
			names = append(names, to.String())
		}
	}
	return names
}

// conversion is 0 where print has none.
func conversion(from, to Reckoning) float64 {
	if from == to {
		return 1
	}
	for _, c := range conversions {
		switch {
		case c.from == from && c.to == to:
			return c.factor
		case c.from == to && c.to == from:
			return 1 / c.factor
		}
	}
	return 0
}

// TropicalUnits returns the tropical livestock units of one animal by metabolic
// weight, one for an animal of 250 kg.
//
// Formula: pow(weight / 250, 0.75)
//
// Where:
//   - weight in kg: live weight; >= 0
//
// Note: the tables that go by the same name (ReckoningTropicalShort,
// ReckoningTropicalStorck, ReckoningTropicalChewaka) do not follow it. By the
// short rule cattle of any size are 0.7, which studies of whole herds read as
// 175 kg each. The form of the rule is worked out from the source's words.
//
// Source: FAO-TLU
func TropicalUnits(weight units.LiveWeight) (float64, error) {
	root := math.Sqrt(float64(weight) / 250) // two square roots are the same on every machine
	return units.Answer(&formulaTropicalUnits, root*math.Sqrt(root), float64(weight))
}

// NewZealandUnits returns the livestock units of one ewe by her weight and
// lambing: one for 40 kg rearing one lamb, a tenth more for each 5 kg and for
// each 20 points of lambing.
//
// Formula: 1 + 0.1 * (weight - 40) / 5 + 0.1 * (lambing - 1) / 0.2
//
// Where:
//   - weight in kg: live weight of the ewe; > 25
//   - lambing in %: lambs reared to a hundred ewes; >= 0
//
// Note: units are counted on 30 June. The unit of ReckoningNewZealand is another:
// a ewe of 55 kg rearing one lamb.
//
// Source: NZ-LIFESTYLE-LU
func NewZealandUnits(weight units.LiveWeight, lambing units.Fraction) (float64, error) {
	value := 1 + 0.1*(float64(weight)-40)/5 + 0.1*(float64(lambing)-1)/0.2
	return units.Answer(&formulaNewZealandUnits, value, float64(weight), float64(lambing))
}

// MerinoState is where a Merino ewe stands in her year.
type MerinoState int

// The states of a Merino ewe.
const (
	MerinoDry             MerinoState = iota + 1 // dry
	MerinoPregnantSingle                         // in lamb with one
	MerinoPregnantTwin                           // in lamb with two
	MerinoLactatingSingle                        // rearing one
	MerinoLactatingTwin                          // rearing two
)

// MerinoDrySheep returns the dry sheep equivalents of a Merino ewe by her weight
// and state.
//
// Table: the printed rows of 35, 40, 45, 50 and 60 kg, a straight line between
// them (ours); below and above, the nearest row with a range error
//
// Where:
//   - weight in kg: live weight of the ewe; > 0; 35 to 60 [MMFS-12-14]
//   - state: dry, in lamb or in milk
//
// Note: rows of ewes in milk begin at 40 kg. Print rounds to a tenth, so that a
// ewe of 40 or 45 kg is 0.9 either way. Other sets differ: a breeding ewe is 1.5
// in South Australia, a ewe with lambs 3.3 in Tasmania.
//
// Source: MMFS-12-14
func MerinoDrySheep(weight units.LiveWeight, state MerinoState) (float64, error) {
	value := merinoDrySheep(weight, state)
	if least := merinoLeast(state); weight < least {
		within := formulaMerinoDrySheep.Arguments[0].Range
		within.Low = float64(least)
		return units.AnswerWithin(&formulaMerinoDrySheep, 0, within, value, float64(weight), float64(state))
	}
	return units.Answer(&formulaMerinoDrySheep, value, float64(weight), float64(state))
}

// merinoFrom is the first row that has a figure for the state.
func merinoFrom(state MerinoState) int {
	if state >= MerinoLactatingSingle {
		return 1
	}
	return 0
}

func merinoLeast(state MerinoState) units.LiveWeight { return merinoRows[merinoFrom(state)].weight }

// merinoDrySheep gives 0 for what is no state, for the guard to refuse.
func merinoDrySheep(weight units.LiveWeight, state MerinoState) float64 {
	if state < MerinoDry || state > MerinoLactatingTwin {
		return 0
	}
	rows := merinoRows[merinoFrom(state):]
	if weight <= rows[0].weight {
		return rows[0].dse[state-1]
	}
	for i := 1; i < len(rows); i++ {
		low, high := &rows[i-1], &rows[i]
		if weight <= high.weight {
			share := float64((weight - low.weight) / (high.weight - low.weight))
			return low.dse[state-1] + share*(high.dse[state-1]-low.dse[state-1])
		}
	}
	return rows[len(rows)-1].dse[state-1]
}

// ManureUnits is a number of animal units as rules on manure count them. They
// say how much dung a barn makes, not how much grass is eaten, and are a type of
// their own that no reckoning of forage takes.
type ManureUnits struct {
	// Value is the number of units.
	Value float64 `json:"value"`
}

// String tells the number, and that it is of manure.
func (m ManureUnits) String() string { return units.Number(m.Value) + " AU of manure" }

// ManureUnitRow is a row of a statute's table: what one animal counts.
type ManureUnitRow struct {
	// Class is the stock in words, lower case with hyphens.
	Class string `json:"class"`
	// Each is what one animal counts.
	Each ManureUnits `json:"each"`
	units.Printed
}

// ManureUnitRows gives the table of units for manure rules, as a copy.
//
// Note: it is the statute of one state, as read in a town's copy; the law in
// force where you are decides. Never use it for forage.
//
// Check: TestManureUnitsAgainstPrint
//
// Source: MINN-116-06
func ManureUnitRows() []ManureUnitRow { return slices.Clone(manureUnitRows) }

// TotalManureUnits gives a herd in units for manure rules.
//
// Errors: a *units.DomainError where the two lists differ in length or a number
// of head is negative or not a number; a *units.ParseError that lists the rows,
// for a class that has none
//
// Check: TestTotalManureUnits
//
// Source: MINN-116-06
func TotalManureUnits(classes []string, head []float64) (ManureUnits, error) {
	none := ManureUnits{math.NaN()}
	if err := asManyHead(len(classes), len(head), "herd.TotalManureUnits"); err != nil {
		return none, err
	}
	sum := 0.0
	for i, class := range classes {
		at := slices.IndexFunc(manureUnitRows, func(row ManureUnitRow) bool { return row.Class == class })
		if at < 0 {
			names := namesOf(manureUnitRows, func(row *ManureUnitRow) string { return row.Class })
			return none, totalManureUnits.NoRow("classes", class, "no such class in the rules on manure; others go by ManureUnitsByWeight", names, 0, head[i])
		}
		part, err := units.Answer(&totalManureUnits, head[i]*manureUnitRows[at].Each.Value, 0, head[i])
		if err != nil {
			return none, err
		}
		sum += part
	}
	total, err := units.Answer(&totalManureUnits, sum, 0, 0)
	return ManureUnits{total}, err
}

// totalManureUnits is the limits of TotalManureUnits, one entry of each list.
var totalManureUnits = units.Formula{Name: "herd.TotalManureUnits", Source: "MINN-116-06", Arguments: []units.Argument{
	{Name: "classes", Factor: 1, Domain: anyNumber},
	{Name: "head", Factor: 1, Domain: anyNumber},
}}

// ManureUnitsByWeight gives an animal that the statute does not list in units
// for manure rules, by its weight over 1,000 lb.
//
// Where:
//   - weight in lb: live weight of one animal; >= 0
//
// Check: TestManureUnitsByWeight
//
// Source: MINN-116-06 others
func ManureUnitsByWeight(weight units.LiveWeight) (ManureUnits, error) {
	value, err := units.Answer(&formulaManureUnitsByWeight, float64(weight)/thousandPounds, float64(weight))
	return ManureUnits{value}, err
}
