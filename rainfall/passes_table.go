package rainfall

import "example.org/soum/units"

func inches(low, high float64) units.Span[units.RainDepth] {
	return units.Span[units.RainDepth]{Low: units.RainDepth(low) * units.RainInch, High: units.RainDepth(high) * units.RainInch}
}

func times(low, high float64) units.Span[float64] { return units.Span[float64]{Low: low, High: high} }

// passRows is the table of PassRows.
var passRows = []PassRow{
	{"rule-wet", inches(35, 35), times(5, 5), "the rule itself, over 30 in", printed("HFG-CYCLES", "A")},
	{"alfalfa-idaho-dryland", inches(14, 14), times(1, 1), "cold dryland at 5,000 ft, a season of about 60 days, 1.3 t/ac", printed("IDAHO-DRYLAND", "B")},
	{"bermudagrass-clovis", inches(19.5, 20.0), times(5, 5), "irrigated, cut every 28 days from May to September", printed("CLOVIS-2006", "A")},
	{"alfalfa-california", inches(0, 0), times(6, 8), "irrigated, cut every 24 to 33 days", printed("CALIFORNIA-CUTS", "B")},
	{"alfalfa-michigan-north", inches(0, 0), times(2, 3), "humid, short season", printed("MICHIGAN-CUTS", "B")},
	{"alfalfa-michigan-south", inches(0, 0), times(5, 5), "humid, at most", printed("MICHIGAN-CUTS", "B")},
}
