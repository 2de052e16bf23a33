package herd

import (
	"slices"

	"example.org/soum/units"
)

// Kind is the sort of animal.
type Kind int

// The kinds of animal.
const (
	Cattle   Kind = iota + 1 // cows, heifers, steers, bulls
	Sheep                    // ewes, rams, lambs
	Goats                    // does, bucks, kids
	Horses                   // horses and ponies
	Pigs                     // sows, boars, growing pigs
	Chickens                 // hens and broilers
	Turkeys                  // turkeys
	Geese                    // geese
	Ducks                    // ducks
	Camelids                 // alpacas and llamas
	Deer                     // deer, farmed or wild
	Rabbits                  // rabbits
	Donkeys                  // donkeys and mules
)

// Ruminant tells whether the kind chews the cud. Camelids do, with three
// chambers to the stomach where the others have four.
func (k Kind) Ruminant() bool {
	return k == Cattle || k == Sheep || k == Goats || k == Camelids || k == Deer
}

// Equine tells whether the kind is of the horse family: what poisons horses
// poisons donkeys.
func (k Kind) Equine() bool { return k == Horses || k == Donkeys }

// EatsHay reports whether hay stands in for the pasture of this kind: ruminants,
// horses and donkeys, rabbits and geese; pigs and other poultry have a ration
// instead.
func (k Kind) EatsHay() bool {
	return k.Ruminant() || k.Equine() || k == Rabbits || k == Geese
}

// Bird tells whether the kind is a bird.
func (k Kind) Bird() bool { return k >= Chickens && k <= Ducks }

// WaterBird tells whether the kind is web-footed. Such birds can carry avian
// influenza unseen and are kept away from chickens and turkeys [MARYLAND-BIRDS].
func (k Kind) WaterBird() bool { return k == Geese || k == Ducks }

// Need is how good the grass must be, and with it the place in the order of
// grazing: the lowest value goes first. Common practice with no agreed source:
// the cow in milk first, beef cattle and sheep next, pigs behind the ruminants,
// birds last.
type Need int

// The needs, those who go first in front.
const (
	NeedMilk     Need = iota + 1 // giving milk for people
	NeedGrowth                   // growing or fattening
	NeedSuckling                 // rearing young at foot
	NeedUpkeep                   // holding weight
	NeedRooting                  // pigs, behind the ruminants
	NeedGleaning                 // birds, last
)

// Stage is where an animal stands in its year.
type Stage int

// The stages.
const (
	StageDry           Stage = iota + 1 // dry, or at maintenance
	StageLateGestation                  // the last weeks before birth
	StageLactating                      // in milk
	StageGrowing                        // growing
	StageLaying                         // laying eggs
)

// StageIntake is what an animal of a class eats at a stage.
type StageIntake struct {
	// Stage is the stage that the row is of.
	Stage Stage `json:"stage"`
	// Share is the dry matter of a day as a share of live weight.
	Share units.Span[units.Fraction] `json:"share"`
	// Source is a key of SOURCES.md with the place, or says "from memory".
	Source string `json:"source,omitempty"`
	// Mark is how the figure was come by: A, B, D, M or practice.
	Mark string `json:"mark,omitempty"`
}

// ClassRow is a class of the table by its name, or a row of the user's own.
type ClassRow = units.RowOr[Class]

// Class is a class of stock: a row of the table, or a row of the user's own,
// which is the same struct.
type Class struct {
	// Name is the row's name, lower case with hyphens.
	Name string `json:"name"`
	// Kind is the sort of animal.
	Kind Kind `json:"kind"`
	// Need is the class's place in the order of grazing.
	Need Need `json:"need,omitempty"`
	// Weight is the live weight of one animal.
	Weight units.LiveWeight `json:"weight"`
	// WeightSource is where the weight is from.
	WeightSource string `json:"weight_source,omitempty"`
	// WeightMark is how the weight was come by.
	WeightMark string `json:"weight_mark,omitempty"`
	// Intake holds a row for each stage; the first is the default stage.
	Intake []StageIntake `json:"intake"`
	// Pasture is the share of Intake that is grazed; all of it where a row of your own
	// leaves it out.
	Pasture units.Span[units.Fraction] `json:"pasture"`
	// PastureSource is where that share is from.
	PastureSource string `json:"pasture_source,omitempty"`
	// PastureMark is how that share was come by.
	PastureMark string `json:"pasture_mark,omitempty"`
	// Water is the rule of what the class drinks, WaterUnknown where print has
	// none.
	Water WaterRule `json:"water,omitempty"`
	// WaterInMilk is the rule while lactating, where print has another for it;
	// left out, Water holds.
	WaterInMilk WaterRule `json:"water_in_milk,omitempty"`
	// Manure is the class's row of the manure table, ManureUnknown where it has
	// none.
	Manure ManureKind `json:"manure,omitempty"`
	// Excretion is an animal of ExcretionRows, for a class without a row of the
	// manure table.
	Excretion string `json:"excretion,omitempty"`
	// ExcretionBy is the source of that row.
	ExcretionBy ExcretionSource `json:"excretion_by,omitempty"`
	// Note says what a reader of the row should know, disagreements first.
	Note string `json:"note,omitempty"`
}

// Classes gives the table of stock classes, each row a copy.
//
// Check: TestClassesAgainstPrint, TestClassesAreCopies
//
// Source: ours: a collection, each figure with the source and mark on its row
func Classes() []Class {
	rows := slices.Clone(classes)
	for i := range rows {
		rows[i].Intake = slices.Clone(rows[i].Intake)
	}
	return rows
}

// ClassByName gives a copy of one row of the table of stock classes.
//
// Errors: a *units.ParseError that lists the rows, where none has the name
//
// Check: TestClassByName
//
// Source: ours: a look-up in the table of Classes
func ClassByName(name string) (Class, error) {
	for _, c := range classes {
		if c.Name == name {
			c.Intake = slices.Clone(c.Intake)
			return c, nil
		}
	}
	names := namesOf(classes, func(c *Class) string { return c.Name })
	return Class{}, &units.ParseError{Quantity: "herd.Class", Text: name, Problem: "no such class", Accepts: names, Word: true}
}

// IntakeAt gives the class's row for a stage.
//
// Errors: a *units.ParseError that lists the stages that the class has a row for; a
// *units.DomainError for a number that is no stage
func (c Class) IntakeAt(stage Stage) (StageIntake, error) {
	for _, row := range c.Intake {
		if row.Stage == stage {
			return row, nil
		}
	}
	stages := make([]string, len(c.Intake))
	for i, row := range c.Intake {
		stages[i] = row.Stage.String()
	}
	if stage.String() == "" {
		return StageIntake{}, units.OutOfDomain("herd.Class.IntakeAt", 1, formulaBeefIntake.Arguments[1], float64(stage))
	}
	return StageIntake{}, &units.ParseError{Quantity: "class " + c.Name, Text: stage.String(), Problem: "no intake is given for this stage", Accepts: stages, Word: true}
}

// WaterAt gives the rule of what the class drinks at a stage.
func (c Class) WaterAt(stage Stage) WaterRule {
	switch {
	case stage == StageLactating && c.WaterInMilk != 0:
		return c.WaterInMilk
	case c.Water == 0:
		return WaterUnknown
	}
	return c.Water
}
