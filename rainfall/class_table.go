package rainfall

// band is a class between two printed numbers.
func band(scheme ClassScheme, name string, low, high float64, source, mark string) ClassRow {
	return ClassRow{Scheme: scheme, Name: name, Low: low, High: high, Printed: printed(source, mark)}
}

// under is a class without a lower end.
func under(scheme ClassScheme, name string, high float64, source, mark string) ClassRow {
	return ClassRow{Scheme: scheme, Name: name, High: high, LowOpen: true, Printed: printed(source, mark)}
}

// over is a class without an upper end.
func over(scheme ClassScheme, name string, low float64, source, mark string) ClassRow {
	return ClassRow{Scheme: scheme, Name: name, Low: low, HighOpen: true, Printed: printed(source, mark)}
}

// classRows is the table of RainClass, the outer classes of a scheme first. What
// the prints leave without a name is called no drought, which is ours.
var classRows = []ClassRow{
	under(SchemeIndex, "extremely dry", -2, "WMO-1090-TABLE", "B"),
	band(SchemeIndex, "severely dry", -1.99, -1.5, "WMO-1090-TABLE", "B"),
	band(SchemeIndex, "moderately dry", -1.49, -1, "WMO-1090-TABLE", "B"),
	band(SchemeIndex, "near normal", -0.99, 0.99, "WMO-1090-TABLE", "B"),
	band(SchemeIndex, "moderately wet", 1, 1.49, "WMO-1090-TABLE", "B"),
	band(SchemeIndex, "very wet", 1.5, 1.99, "WMO-1090-TABLE", "B"),
	over(SchemeIndex, "extremely wet", 2, "WMO-1090-TABLE", "B"),

	under(SchemeIndexOlder, "extreme drought", -2, "MCKEE-WORDS", "B"),
	band(SchemeIndexOlder, "severe drought", -1.99, -1.5, "MCKEE-WORDS", "B"),
	band(SchemeIndexOlder, "moderate drought", -1.49, -1, "MCKEE-WORDS", "B"),
	band(SchemeIndexOlder, "mild drought", -0.99, 0, "MCKEE-WORDS", "B"),
	over(SchemeIndexOlder, "no drought", 0, "MCKEE-WORDS, the name ours", "practice"),

	under(SchemeMonitorIndex, "exceptional drought", -2, "MONITOR-CLASSES D4", "A"),
	band(SchemeMonitorIndex, "extreme drought", -1.9, -1.6, "MONITOR-CLASSES D3", "A"),
	band(SchemeMonitorIndex, "severe drought", -1.5, -1.3, "MONITOR-CLASSES D2", "A"),
	band(SchemeMonitorIndex, "moderate drought", -1.2, -0.8, "MONITOR-CLASSES D1", "A"),
	band(SchemeMonitorIndex, "abnormally dry", -0.7, -0.5, "MONITOR-CLASSES D0", "A"),
	over(SchemeMonitorIndex, "no drought", -0.4, "MONITOR-CLASSES, the name ours", "practice"),

	under(SchemeMonitorPalmer, "exceptional drought", -5, "MONITOR-CLASSES D4", "A"),
	band(SchemeMonitorPalmer, "extreme drought", -4.9, -4, "MONITOR-CLASSES D3", "A"),
	band(SchemeMonitorPalmer, "severe drought", -3.9, -3, "MONITOR-CLASSES D2", "A"),
	band(SchemeMonitorPalmer, "moderate drought", -2.9, -2, "MONITOR-CLASSES D1", "A"),
	band(SchemeMonitorPalmer, "abnormally dry", -1.9, -1, "MONITOR-CLASSES D0", "A"),
	over(SchemeMonitorPalmer, "no drought", -0.9, "MONITOR-CLASSES, the name ours", "practice"),

	band(SchemeMonitorWhole, "exceptional drought", 0, 2, "MONITOR-CLASSES D4", "A"),
	band(SchemeMonitorWhole, "extreme drought", 3, 5, "MONITOR-CLASSES D3", "A"),
	band(SchemeMonitorWhole, "severe drought", 6, 10, "MONITOR-CLASSES D2", "A"),
	band(SchemeMonitorWhole, "moderate drought", 11, 20, "MONITOR-CLASSES D1", "A"),
	band(SchemeMonitorWhole, "abnormally dry", 21, 30, "MONITOR-CLASSES D0", "A"),
	band(SchemeMonitorWhole, "no drought", 31, 100, "MONITOR-CLASSES, the name ours", "practice"),

	band(SchemeMonitorBounds, "exceptional drought", 0, 2, "DROUGHT-GOV D4", "A"),
	band(SchemeMonitorBounds, "extreme drought", 2, 5, "DROUGHT-GOV D3", "A"),
	band(SchemeMonitorBounds, "severe drought", 5, 10, "DROUGHT-GOV D2", "A"),
	band(SchemeMonitorBounds, "moderate drought", 10, 20, "DROUGHT-GOV D1", "A"),
	band(SchemeMonitorBounds, "abnormally dry", 20, 30, "DROUGHT-GOV D0", "A"),
	band(SchemeMonitorBounds, "exceptionally wet", 98, 100, "DROUGHT-GOV W4, the word from memory", "A"),
	band(SchemeMonitorBounds, "extremely wet", 95, 98, "DROUGHT-GOV W3, the word from memory", "A"),
	band(SchemeMonitorBounds, "severely wet", 90, 95, "DROUGHT-GOV W2, the word from memory", "A"),
	band(SchemeMonitorBounds, "moderately wet", 80, 90, "DROUGHT-GOV W1, the word from memory", "A"),
	band(SchemeMonitorBounds, "abnormally wet", 70, 80, "DROUGHT-GOV W0, the word from memory", "A"),
	band(SchemeMonitorBounds, "no drought", 30, 70, "DROUGHT-GOV, the name ours", "practice"),

	band(SchemeDecilePairs, "much below normal", 1, 2, "GIBBS-DECILES", "A"),
	band(SchemeDecilePairs, "below normal", 3, 4, "GIBBS-DECILES", "A"),
	band(SchemeDecilePairs, "near normal", 5, 6, "GIBBS-DECILES", "A"),
	band(SchemeDecilePairs, "above normal", 7, 8, "GIBBS-DECILES", "A"),
	band(SchemeDecilePairs, "much above normal", 9, 10, "GIBBS-DECILES", "A"),

	band(SchemeDecileSplit, "very much below normal", 1, 1, "CARIBBEAN-DECILES", "A"),
	band(SchemeDecileSplit, "below normal", 2, 3, "CARIBBEAN-DECILES", "A"),
	band(SchemeDecileSplit, "normal", 4, 7, "CARIBBEAN-DECILES", "A"),
	band(SchemeDecileSplit, "above normal", 8, 9, "CARIBBEAN-DECILES", "A"),
	band(SchemeDecileSplit, "very much above normal", 10, 10, "CARIBBEAN-DECILES", "A"),

	over(SchemePercentOfYear, "no drought", 75, "NRCS-DROUGHT, the name ours", "practice"),
	band(SchemePercentOfYear, "drought", 0, 75, "NRCS-DROUGHT", "A"),
}
