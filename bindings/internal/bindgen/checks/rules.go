package main

import (
	"slices"

	"example.org/soum/forage"
	"example.org/soum/grazing/fit"
	"example.org/soum/grazing/study"
	"example.org/soum/herd"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// rules add to the schema of a struct what its fields say not one by one, as
// farm.Farm's Check has it.
var rules = map[string]func(object){
	"farm.Land":    landRule,
	"farm.Group":   groupRule,
	"fit.Question": fittingRule,
	"fit.Land":     fitLandRule,
	"fit.Stock":    fitClassRule,
	"fit.OwnDiet": func(o object) {
		for _, key := range []string{"grass", "forbs", "browse"} {
			narrow(o, key, object{"properties": object{"low": atMost100(), "high": atMost100()}})
		}
	},
	"fit.Ratio": func(o object) {
		o["anyOf"] = []object{needs("least"), needs("most")}
		narrow(o, "to", object{"uniqueItems": true})
	},
	"study.Study": studiedRule,
	"study.Sweep": sweepRule,
	"rainfall.MonthlyRain": func(o object) {
		narrow(o, "month", object{"minimum": 1, "maximum": 12})
	},
	"farm.Event":    func(o object) { o["anyOf"] = []object{needs("head"), needs("weight"), needs("stage")} },
	"farm.Rotation": rotationRule,
	"forage.Pasture": func(o object) {
		o["required"] = []string{"turn_in", "leave", "yield_low", "yield_medium", "yield_high", "shares"}
		for _, key := range []string{"yield_low", "yield_medium", "yield_high"} {
			narrow(o, key, object{"$ref": "#/$defs/above0"})
		}
		for _, key := range []string{"turn_in", "leave"} {
			narrow(o, key, object{"properties": object{"low": object{"$ref": "#/$defs/above0"}, "high": object{"$ref": "#/$defs/above0"}}})
		}
		narrow(o, "shares", object{"items": object{"not": object{"pattern": above100}}})
		narrow(o, "key_months", object{"uniqueItems": true, "items": object{"minimum": 1, "maximum": 12}})
	},
	"farm.Rain": func(o object) {
		o["dependentRequired"] = object{"balance": []string{"normal"}}
	},
	"farm.WaterAccount": func(o object) {
		o["allOf"] = []object{
			{"oneOf": []object{needs("crop"), needs("coefficient")}},
			{"oneOf": []object{
				{"required": []string{"soil", "by", "roots"}, "not": needs("store")},
				{"required": []string{"store"}, "not": object{"anyOf": []object{needs("soil"), needs("by"), needs("roots")}}},
			}},
		}
		narrow(o, "coefficient", object{"maximum": 2})
		narrow(o, "rule", object{"not": object{"const": rainfall.BucketStress.String()}})
	},
	"herd.Class": func(o object) {
		o["required"] = []string{"kind", "weight", "intake"}
		narrow(o, "weight", object{"$ref": "#/$defs/above0"})
		narrow(o, "intake", object{"minItems": 1})
		narrow(o, "pasture", object{"properties": object{"low": atMost100(), "high": atMost100()}})
	},
	"herd.StageIntake": func(o object) {
		o["required"] = []string{"share"}
		narrow(o, "share", object{"properties": object{"low": atMost100(), "high": object{"allOf": []object{atMost100(), {"$ref": "#/$defs/above0"}}}}})
	},
}

func atMost100() object { return object{"not": object{"pattern": above100}} }

func needs(keys ...string) object { return object{"required": keys} }

// lacks is an object that has none of some keys.
func lacks(keys ...string) object {
	var all []object
	for _, key := range keys {
		all = append(all, needs(key))
	}
	return object{"not": object{"anyOf": all}}
}

// having is an object with a property that is so.
func having(key string, so object) object {
	return object{"required": []string{key}, "properties": object{key: so}}
}

// with is an object one of whose properties is a word.
func with(key, word string) object { return having(key, object{"const": word}) }

// may is an object whose property, where it has it, is so.
func may(key string, so object) object { return object{"properties": object{key: so}} }

// either asks for one thing where a condition holds, and for another elsewhere.
func either(condition, then, otherwise object) object {
	return object{"if": condition, "then": then, "else": otherwise}
}

// narrow adds a condition to a property.
func narrow(o object, key string, condition object) {
	property := o["properties"].(object)[key].(object)
	all, _ := property["allOf"].([]object)
	property["allOf"] = append(all, condition)
}

// rowNames gives the names of the rows of a table.
func rowNames(of string) (names []string) {
	switch of {
	case "forage.Pasture":
		for _, p := range forage.Pastures() {
			names = append(names, p.Name)
		}
	case "herd.Class":
		for _, c := range herd.Classes() {
			names = append(names, c.Name)
		}
	}
	return names
}

// landRule tells lanes from paddocks, and asks for a height where there are no
// stretches, for a density and a ceiling where the pasture's row has none.
func landRule(o object) {
	all := []object{{
		"oneOf": []object{
			{"required": []string{"width", "length"}, "not": needs("area")},
			{"required": []string{"area"}, "not": object{"anyOf": []object{needs("width"), needs("length")}}},
		},
	}, {
		"if":   object{"required": []string{"stretches"}, "properties": object{"stretches": object{"minItems": 1}}},
		"then": lacks("height", "grazed", "area"),
		"else": needs("height"),
	}, {
		"if":   object{"properties": object{"pasture": object{"type": "object", "not": needs("ceiling")}}},
		"then": needs("ceiling"),
	}}
	for _, condition := range []forage.Condition{forage.Fair, forage.Good, forage.Excellent} {
		var without []string
		for _, p := range forage.Pastures() {
			if _, err := p.Density(condition); err != nil {
				without = append(without, p.Name)
			}
		}
		given := object{"required": []string{"condition"}, "properties": object{"condition": object{"const": condition.String()}}}
		if condition == forage.Good {
			given = object{"properties": given["properties"]} // good if left out
		}
		rows := []object{{"type": "object", "not": needs("density_" + condition.String())}}
		if len(without) > 0 {
			rows = append(rows, object{"enum": without})
		}
		all = append(all, object{
			"if":   object{"allOf": []object{given, {"properties": object{"pasture": object{"anyOf": rows}}}}},
			"then": needs("density"),
		})
	}
	o["allOf"] = all
}

// groupRule names the stages that each class of the table has.
func groupRule(o object) {
	o["properties"].(object)["head"].(object)["maximum"] = 1e6
	var all []object
	for _, have := range classesByStages() {
		stage := object{"properties": object{"stage": object{"enum": have.stages}}}
		all = append(all, object{
			"if":   classIn(have.classes),
			"then": object{"properties": object{"stage": object{"enum": have.stages}, "events": object{"items": stage}}},
		})
	}
	o["allOf"] = all
}

// staged are the classes of the table that have the same stages.
type staged struct{ stages, classes []string }

func classesByStages() (all []staged) {
	for _, c := range herd.Classes() {
		var stages []string
		for _, row := range c.Intake {
			stages = append(stages, row.Stage.String())
		}
		at := slices.IndexFunc(all, func(have staged) bool { return slices.Equal(have.stages, stages) })
		if at < 0 {
			all = append(all, staged{stages: stages})
			at = len(all) - 1
		}
		all[at].classes = append(all[at].classes, c.Name)
	}
	return all
}

func classIn(names []string) object {
	return having("class", object{"enum": names})
}

// rotationRule lets the first group lead, and each land and group come once.
func rotationRule(o object) {
	properties := o["properties"].(object)
	properties["land"].(object)["uniqueItems"] = true
	narrow(o, "groups", object{"prefixItems": []object{{"properties": object{"behind": object{"pattern": `^\s*[+]?[0.]+\s*[^0-9.\s]`}}}}})
}

// fittingRule asks for the prices that a margin wants, and for something to keep
// where the goal is the least hay.
func fittingRule(o object) {
	bought := having("buy", object{"$ref": "#/$defs/above0"})
	o["allOf"] = []object{{
		"if": with("goal", fit.GoalMargin.String()),
		"then": object{"properties": object{
			"stock": object{"items": needs("margin")},
			"hay":   object{"if": bought, "then": needs("price")},
		}},
	}, {
		"if": with("goal", fit.GoalLeastHay.String()),
		"then": object{"anyOf": []object{
			having("needs", object{"minItems": 1}),
			may("stock", object{"contains": having("least", object{"exclusiveMinimum": 0})}),
		}},
	}}
}

// fitLandRule asks for a row, or for what stands in place of it.
func fitLandRule(o object) {
	o["anyOf"] = []object{needs("pasture"), needs("yield", "months")}
	narrow(o, "months", object{"items": atMost100()})
}

// fitClassRule tells diets and stages apart.
func fitClassRule(o object) {
	narrow(o, "most", object{"minimum": 0})
	narrow(o, "months", object{"uniqueItems": true})
	o["dependentRequired"] = object{"birth": []string{"weaned"}, "weaned": []string{"birth"}}
	all := []object{
		either(with("eats", fit.DietOwn.String()), needs("diet"), lacks("diet")),
		{"not": needs("birth", "stage")},
	}
	for month := 1; month <= 12; month++ {
		all = append(all, object{"not": object{"required": []string{"birth", "weaned"}, "properties": object{"birth": object{"const": month}, "weaned": object{"const": month}}}})
	}
	calved := []string{herd.StageDry.String(), herd.StageLactating.String()}
	for _, have := range classesByStages() {
		then := may("stage", object{"enum": have.stages})
		if !slices.Contains(have.stages, calved[0]) || !slices.Contains(have.stages, calved[1]) {
			then["not"] = needs("birth")
		}
		all = append(all, object{"if": classIn(have.classes), "then": then})
	}
	for stage := herd.Stage(1); stage.String() != ""; stage++ {
		all = append(all, object{"if": with("stage", stage.String()), "then": ownIntake(stage.String())})
	}
	all = append(all, object{"if": needs("birth"), "then": object{"allOf": []object{ownIntake(calved[0]), ownIntake(calved[1])}}})
	if free := withoutDiet(); len(free) > 0 {
		all = append(all, object{"if": classIn(free), "then": may("eats", object{"enum": []string{fit.DietOwn.String(), fit.DietAnything.String()}})})
	}
	o["allOf"] = all
}

// ownIntake asks a class that is written out for the intake of a stage.
func ownIntake(stage string) object {
	return may("class", object{"if": object{"type": "object"}, "then": may("intake", object{"contains": with("stage", stage)})})
}

// withoutDiet names the classes of kinds whose diet nobody has printed.
func withoutDiet() (names []string) {
	for _, c := range herd.Classes() {
		if _, err := herd.DietShare(c.Kind, herd.PlantsGrass, units.Whole); err != nil {
			names = append(names, c.Name)
		}
	}
	return names
}

// studiedRule tells what goes with a draw and with a design, and asks for a record.
func studiedRule(o object) {
	narrow(o, "record", object{"minItems": 12})
	o["anyOf"] = []object{needs("record"), may("farm", having("rain", having("months", object{"minProperties": 12})))}
	inputs := func(each object) object { return may("inputs", object{"items": each}) }
	o["allOf"] = []object{
		either(with("draw", study.DrawGamma.String()), needs("fit"), lacks("fit")),
		either(having("inputs", object{"minItems": 1}), needs("design"), lacks("design")),
		either(with("design", study.DesignHypercube.String()), object{"allOf": []object{needs("points"), inputs(lacks("steps"))}}, lacks("points")),
		{"if": with("design", study.DesignGrid.String()), "then": inputs(needs("steps"))},
	}
}

// sweepRule tells what goes with an input.
func sweepRule(o object) {
	above0 := object{"$ref": "#/$defs/above0"}
	narrow(o, "rotation", object{"minimum": 0})
	narrow(o, "heights", object{"properties": object{"low": above0, "high": above0}})
	whole := object{"minimum": 1, "multipleOf": 1}
	only := func(key string) object {
		var others []object
		for _, other := range []string{"span", "heights", "hay"} {
			if other != key {
				others = append(others, needs(other))
			}
		}
		return object{"required": []string{key}, "not": object{"anyOf": others}}
	}
	o["allOf"] = []object{
		either(sweeps(study.InputLeave, study.InputTurnIn), only("heights"), either(sweeps(study.InputHay), only("hay"), only("span"))),
		either(sweeps(study.InputHead, study.InputHeadFactor), needs("group"), either(sweeps(study.InputIntakeFactor), object{}, lacks("group"))),
		either(sweeps(study.InputLandFactor), object{}, lacks("land")),
		either(sweeps(study.InputLeave, study.InputTurnIn, study.InputRest, study.InputMoves), object{}, may("rotation", object{"const": 0})),
		{"if": sweeps(study.InputHead, study.InputRest, study.InputMoves), "then": may("span", object{"properties": object{"low": whole, "high": whole}})},
		either(sweeps(study.InputRainFactor), may("span", may("low", object{"minimum": 0})), may("span", may("low", object{"exclusiveMinimum": 0}))),
		{"if": sweeps(study.InputRainFactor, study.InputLandFactor, study.InputIntakeFactor), "then": may("span", may("high", object{"maximum": 10}))},
	}
}

// sweeps is a sweep of one of some inputs.
func sweeps(inputs ...study.Input) object {
	var words []string
	for _, input := range inputs {
		words = append(words, input.String())
	}
	return may("input", object{"enum": words})
}
