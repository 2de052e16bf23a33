package main

import (
	"slices"

	"example.org/soum/forage"
	"example.org/soum/herd"
	"example.org/soum/rainfall"
)

// rules add to the schema of a struct what its fields say not one by one, as
// grazing.Farm's Check has it.
var rules = map[string]func(object){
	"grazing.Land":     landRule,
	"grazing.Group":    groupRule,
	"grazing.Event":    func(o object) { o["anyOf"] = []object{needs("head"), needs("weight"), needs("stage")} },
	"grazing.Rotation": rotationRule,
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
	"grazing.Rain": func(o object) {
		o["dependentRequired"] = object{"balance": []string{"normal"}}
	},
	"grazing.WaterAccount": func(o object) {
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
	for _, c := range herd.Classes() {
		var stages []string
		for _, row := range c.Intake {
			stages = append(stages, row.Stage.String())
		}
		at := slices.IndexFunc(all, func(have object) bool { return slices.Equal(have["stages"].([]string), stages) })
		if at < 0 {
			all = append(all, object{"stages": stages, "classes": []string{}})
			at = len(all) - 1
		}
		all[at]["classes"] = append(all[at]["classes"].([]string), c.Name)
	}
	for i, have := range all {
		stage := object{"properties": object{"stage": object{"enum": have["stages"]}}}
		all[i] = object{
			"if":   object{"required": []string{"class"}, "properties": object{"class": object{"enum": have["classes"]}}},
			"then": object{"properties": object{"stage": object{"enum": have["stages"]}, "events": object{"items": stage}}},
		}
	}
	o["allOf"] = all
}

// rotationRule lets the first group lead, and each land and group come once.
func rotationRule(o object) {
	properties := o["properties"].(object)
	properties["land"].(object)["uniqueItems"] = true
	narrow(o, "groups", object{"prefixItems": []object{{"properties": object{"behind": object{"pattern": `^\s*[+]?[0.]+\s*[^0-9.\s]`}}}}})
}
