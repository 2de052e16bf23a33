# Every class of error and of warning; vectors; text with units.

e <- fails(forage_available(1, 2, 1), "soum_domain_error", "forage_available: residual is 78.7402 in, must be from 0 in to height (39.3701 in)")
expect(identical(e$argument, "residual") && close_to(e$value, 2 / u$inch) && e$low == 0 && close_to(e$high, 1 / u$inch) && e$unit == "in" &&
       grepl("UMAINE-STICK", e$source), "what a domain error tells")
expect(identical(as.character(e$call[[1]]), "forage_available"), "the error names the call")
fails(forage_available(Inf, 0, 1), "soum_domain_error", "+Inf")
fails(forage_available(1, -Inf, 1), "soum_domain_error", "-Inf")
fails(forage_available(NaN, 0, 1), "soum_domain_error", "NaN")
fails(forage_available(NA, 0, 1), "soum_domain_error", "NaN")
fails(forage_available(1e308, 0, 1e308), "soum_domain_error", "overflows")
fails(forage_mean_to_peak(1, 2, 2), "soum_domain_error", "above turn_in")
fails(herd_manure_mass("unknown", "1000 lb", 1), "soum_domain_error", "kind")
fails(forage_bloat_risk(2), "soum_domain_error", "legume")

# Range: the value and a warning, with the limits that the source has.
got <- caught(forage_usable_share(9 * u$day))
w <- got$warnings[[1]]
expect(close_to(got$value, 0.6) && inherits(w, "soum_range_warning") && inherits(w, "soum_warning"), "a range warning beside the value")
expect(w$argument == "stay" && w$low == 1 && w$high == 7 && w$source == "PSU-STAY" && w$unit == "days", "what a range warning tells")
expect(isFALSE(w$gap), "no gap")
w <- caught(rainfall_passes("27 in"))$warnings[[1]]
expect(grepl("25 in or at least 30 in", conditionMessage(w)) && w$low == 25 && w$high == 30 && isTRUE(w$gap), "a gap between two sources")

# Many rows: one warning of each kind, which counts.
height <- c(a = 8, b = 2, c = NA, d = NaN, e = 10) * u$inch
got <- caught(forage_available(height, "3 in", "250 lb/ac/in"))
expect(identical(is.na(got$value), c(a = FALSE, b = TRUE, c = TRUE, d = TRUE, e = FALSE)), "impossible rows have no value, names are kept")
expect(is.nan(got$value[["b"]]) && is.na(got$value[["c"]]) && !is.nan(got$value[["c"]]) && is.nan(got$value[["d"]]), "a gap stays a gap")
expect(close_to(got$value[["e"]] / u$lb_per_acre, 7 * 250), "good rows have theirs")
expect(length(got$warnings) == 1 && inherits(got$warnings[[1]], "soum_domain_warning") && identical(got$warnings[[1]]$rows, 2:4) &&
       grepl("^3 of 5 rows have no value; the first is row 2: forage_available: residual is 3 in", conditionMessage(got$warnings[[1]])), "one warning counts them")
got <- caught(forage_usable_share(c(-1, 1, 9, 10)))
expect(identical(vapply(got$warnings, function(w) class(w)[1], ""), c("soum_domain_warning", "soum_range_warning")), "one warning of each kind")
expect(identical(got$warnings[[2]]$rows, 3:4) && is.nan(got$value[1]) && close_to(got$value[-1], c(0.8, 0.6, 0.6)), "and the values")
got <- caught(forage_bloat_risk(c(0.2, 2)))
expect(identical(got$value, c("low", NA)) && inherits(got$warnings[[1]], "soum_domain_warning"), "look-ups count, too")

# R's rule of recycling.
expect(close_to(forage_standing(c(1, 2, 3, 4), c(10, 20)), c(10, 40, 30, 80)), "recycling")
fails(forage_standing(1:4, 1:3), "soum_document_error", "has 3 values where height has 4", "density")
expect(identical(forage_standing(numeric(), 1), numeric()), "no rows")
expect(identical(forage_density_of(character(), "good", "low"), numeric()), "no rows of a look-up")
m <- matrix(1:6 / 10, 2, dimnames = list(c("a", "b"), NULL))
expect(identical(dim(forage_standing(m, 1)), 2:3) && identical(dimnames(forage_standing(2, m)), dimnames(m)), "a matrix stays one")
expect(close_to(forage_standing(2L, 3L), 6), "whole numbers are numbers")
frame <- data.frame(height = c("8 in", "10 in"), density = 1)
expect(close_to(with(frame, forage_standing(height, density)), c(8, 10) * u$inch), "columns of a data frame")
expect(length(forage_standing(runif(1e6), 1)) == 1e6, "a million rows")

# Text with its unit, times, words.
expect(close_to(forage_available("8 in", "3 in", "250 lb/ac/in") / u$lb_per_acre, 1250), "text with units") # 5 * 250
expect(close_to(herd_feed(10, as.difftime(2, units = "weeks")), 140), "a difftime for days")
expect(close_to(herd_unit_demand(factor("twenty six pounds")) / u$lb_per_day, 26), "a factor for a word")
fails(forage_available("8 lb", 0, 1), "soum_document_error", "m, mm, cm, ft, in", "height")
fails(forage_available(c("8 in", "8"), 0, 1), "soum_document_error", "height", "height")
fails(forage_available(TRUE, 0, 1), "soum_document_error", "logical", "height")
fails(forage_available(Sys.Date(), 0, 1), "soum_document_error", "Date", "height")
fails(forage_available(list(1), 0, 1), "soum_document_error", "list", "height")
fails(forage_mean_to_peak(1, as.difftime(2, units = "days"), 2), "soum_document_error", "difftime", "turn_in")
fails(herd_demand("ten", 1, 1, 1), "soum_document_error", "plain numbers", "head")
fails(herd_unit_demand("a lot"), "soum_document_error", "twenty five pounds", "definition")
fails(herd_unit_demand(2), "soum_document_error", "twenty five pounds", "definition")
fails(forage_density_of("lawn", "good", "low"), "soum_document_error", "mixed-pasture")
fails(forage_density_of("mixed-pasture", "lush", "low"), "soum_document_error", "excellent", "condition")
fails(forage_density_of(c("mixed-pasture", "lawn"), "good", "low"), "soum_document_error", "mixed-pasture")
fails(forage_bloat_risk("3 lb"), "soum_document_error", "legume", "legume")
fails(rainfall_key_rain_share("May", 1, list(), rep(1, 12)), "soum_document_error", "date", "date")
fails(soum_call("forage.Nothing"), "soum_unknown_function_error", "forage.Nothing")
fails(soum_call("forage.Available", list(height = 1)), "soum_document_error", "missing", "residual")
fails(soum_call("forage.Available", list(height = 1, residual = 0, density = 1, colour = 3)), "soum_document_error", "colour", "colour")
fails(show_work("forage_nothing", list(), "US"), "soum_document_error", "is no formula")
fails(show_work("forage_available", list(height = 1, colour = 2), "US"), "soum_document_error", "residual")
fails(show_work("forage_available", list(height = 1, residual = 2, density = 1), "US"), "soum_domain_error", "residual")
fails(show_work("forage_available", list(height = 1, residual = 0, density = 1), "imperial"), "soum_document_error", "imperial")
expect(show_work("forage_available", list(height = "8 in", residual = "3 in", density = "250 lb/ac/in"), "US")$text ==
       "available = (height \u2212 residual) \u00d7 density = (8 in \u2212 3 in) \u00d7 250 lb/ac/in = 1,250 lb/ac", "work shown")

# Text in and out.
expect(close_to(units_parse("Area", c(a = "1 ac", b = "2 ha")), c(4046.8564224, 20000)), "text of areas")
expect(identical(names(units_parse("Area", c(a = "1 ac", b = "2 ha"))), c("a", "b")), "names are kept")
expect(is.na(units_parse("Area", NA_character_)) && identical(units_parse("Area", character()), numeric()), "no text, no number")
expect(identical(units_show("Area", c(1, 2) * u$acre, "US"), c("1 ac", "2 ac")) && identical(units_show("Area", 4046.8564224), "4046.8564224 m2"), "areas as text")
expect(close_to(units_parse("Temperature", "50 \u00b0F"), 10), "a degree sign") # (50 - 32) / 1.8
fails(units_parse("Area", "1 lb"), "soum_document_error", "m2, ha", "text")
fails(units_parse("Colour", "1 lb"), "soum_document_error", "is no quantity")
fails(units_parse("Area", 3), "soum_document_error", "a number with its unit")
fails(units_show("Colour", 1), "soum_document_error", "is no quantity")
fails(units_show("Area", 1, "imperial"), "soum_document_error", "imperial")
done("errors and vectors")
