// Package wichita holds the public record of monthly rain that several examples
// ask their questions of.
package wichita

import _ "embed"

//go:embed record.csv
var record string

// Record gives the record as rainfall.ReadMonths reads it: year, month, rain in mm.
func Record() string { return record }
