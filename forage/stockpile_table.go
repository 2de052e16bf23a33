package forage

// stockpileLine is a yield in lb/ac without nitrogen, and what each pound adds.
type stockpileLine struct{ bare, each float64 }

// The lines of SINGER-2003, mark A.
var (
	stockpileWet = stockpileLine{1747, 15}
	stockpileDry = stockpileLine{672, 19}
)
