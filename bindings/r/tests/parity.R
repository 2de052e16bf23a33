# Every function of the manifest is there, documented and callable, and gives
# what is printed.

exported <- getNamespaceExports("soum")
pages <- tools::Rd_db("soum")
page_text <- function(name) {
    file <- tools::Rd2txt(pages[[paste0(name, ".Rd")]], tempfile(), outputEncoding = "UTF-8", options = list(underline_titles = FALSE, width = 10000))
    gsub("_\b", "", paste(readLines(file, encoding = "UTF-8"), collapse = " "))
}

# Text of the manifest with R's names in it.
spoken <- function(f, text) {
    for (g in manifest$functions) if (grepl("_", g$snake)) text <- gsub(paste0("\\b", sub(".*\\.", "", g$name), "\\b"), r_name(g), text)
    for (p in f$parameters) text <- gsub(paste0("\\b", p$name, "\\b"), p$snake, text)
    text
}
squeezed <- function(text) gsub("[^A-Za-z0-9]+", "", text)

expect(length(manifest$functions) == soum_library()$functions, "as many functions as the manifest has")
expect(identical(soum_library()$version, manifest$version), "the version of the manifest")
by_hand <- c("documents", "show_work", "soum_call", "soum-package", "soum_to_json", "u", "units_parse")
expect(setequal(sub("\\.Rd$", "", names(pages)), c(by_hand, vapply(manifest$functions, r_name, ""))), "no page of what is not there")
expect(identical(soum_library()$manifest, manifest$number), "the number of the manifest")
read_all <- nzchar(Sys.getenv("SOUM_LONG")) # pages: one in eight else
for (i in seq_along(manifest$functions)) {
    f <- manifest$functions[[i]]
    name <- r_name(f)
    if (!expect(name %in% exported, name, " is there")) next
    expect(identical(as.character(names(formals(get(name)))), as.character(parameters_of(f))), name, ": its arguments")
    if (!expect(paste0(name, ".Rd") %in% names(pages), name, " has a page")) next
    if (i %% 8 != 0 && !read_all) next
    text <- page_text(name)
    told <- c(sub("^[^ ]+ ", "", f$summary), # without the name
              unlist(lapply(f$parameters, function(p) c(p$doc, if (!is.null(p$limits) && p$type$kind != "word") paste("limits:", p$limits)))))
    for (part in told) expect(grepl(squeezed(spoken(f, part)), squeezed(text), fixed = TRUE), name, ": its page tells \"", part, "\"")
    for (s in f$sections) if (s$head == "Source")
        expect(grepl(squeezed(spoken(f, s$text)), squeezed(text), fixed = TRUE), name, ": its page tells the source")
}
for (unit in manifest$units) {
    expect(identical(u[[unit$name]], unit$factor), "u$", unit$name)
    for (quantity in unit$quantities)
        expect(close_to(units_parse(quantity, paste("1", unit$symbol)), unit$factor), "1 ", unit$symbol, " as ", quantity)
}
expect(length(u) == length(manifest$units), "no other units")

# The printed checks, one by one.
by_name <- setNames(manifest$functions, vapply(manifest$functions, function(f) f$name, ""))
unplain <- function(x) if (inherits(x, "AsIs")) unclass(x) else x
good <- list() # for each formula the rows that have a value
for (check in checks) {
    name <- check$`function`
    label <- paste0(name, " ", soum_to_json(check$arguments), " (", check$table, ": ", check$source, " ", check$note, ")")
    f <- by_name[[name]]
    if (is.null(f)) {
        if (!expect(name %in% c("units.parse", "units.show"), label, ": is known")) next
        got <- caught(do.call(sub(".", "_", name, fixed = TRUE), check$arguments))
    } else {
        keys <- vapply(f$parameters, function(p) p$name, "")
        arguments <- lapply(check$arguments[keys], unplain)
        names(arguments) <- parameters_of(f)
        got <- caught(do.call(r_name(f), arguments))
    }
    kind <- sub(" .*", "", check$error)
    argument <- sub("^[a-z]* ?", "", check$error)
    if (kind == "domain") {
        for (p in f$parameters) if (p$name == argument) argument <- p$snake
        expect(inherits(got$error, "soum_domain_error"), label, ": a domain error")
        expect(identical(got$error$argument, argument), label, ": the error is of ", got$error$argument)
    } else {
        if (!expect(is.null(got$error), label, ": ", if (!is.null(got$error)) conditionMessage(got$error))) next
        if (kind == "range") {
            for (p in f$parameters) if (p$name == argument) argument <- p$snake
            expect(length(got$warnings) == 1 && inherits(got$warnings[[1]], "soum_range_warning"), label, ": a range warning")
            expect(identical(got$warnings[[1]]$argument, argument), label, ": the warning is of ", argument)
        } else expect(length(got$warnings) == 0, label, ": no warning")
        if (is.character(check$value)) expect(identical(as.character(got$value), check$value), label, ": ", got$value)
        else {
            expect(abs(got$value - check$value) <= check$tolerance, label, ": ", got$value, " is not ", check$value)
            expect(close_to(got$value, check$exact), label, ": ", sprintf("%.17g", got$value), " is not Go's ", sprintf("%.17g", check$exact))
        }
    }
    if (!is.null(f) && f$kind == "formula") good[[name]] <- c(good[[name]], list(list(arguments = arguments, kind = kind, got = got)))
}

# Formulas: vectors give what single rows give; the two doors agree; the work
# ends in the value.
for (f in manifest$functions) if (f$kind == "formula") {
    rows <- good[[f$name]]
    if (!expect(any(vapply(rows, function(r) r$kind == "", NA)), f$name, " was called with figures in range")) next
    columns <- lapply(setNames(parameters_of(f), parameters_of(f)), function(p) unlist(lapply(rows, function(r) r$arguments[[p]])))
    value <- vapply(rows, function(r) if (is.null(r$got$error)) as.double(r$got$value) else NaN, 0)
    together <- caught(do.call(r_name(f), columns))
    if (length(rows) > 1) {
        expect(identical(together$value, value), f$name, ": a vector gives what its rows give")
        wrong <- which(vapply(rows, function(r) r$kind == "domain", NA))
        told <- Filter(function(w) inherits(w, "soum_domain_warning"), together$warnings)
        expect(identical(as.integer(unlist(lapply(told, function(w) w$rows))), wrong) && length(told) == (length(wrong) > 0),
               f$name, ": one warning counts the impossible rows")
    }
    one <- Filter(function(r) r$kind == "", rows)[[1]]
    keys <- setNames(one$arguments, vapply(f$parameters, function(p) p$name, ""))
    expect(identical(soum_call(f$name, keys), one$got$value), f$name, ": by name as by number")
    work <- show_work(r_name(f), one$arguments, "US")
    expect(identical(work$value, one$got$value) && nzchar(work$text) && nzchar(work$source), f$name, ": its work")
    expect(nzchar(show_work(f$name, one$arguments, "metric")$text), f$name, ": its work in metric units")
    expect(identical(suppressWarnings(do.call(r_name(f), lapply(one$arguments, function(x) x[0]))), numeric(0)), f$name, ": no rows")
}

# Look-ups and work: what each of these gives, then a call of every one.
record <- data.frame(year = 2001, month = 1:12, rain = (1:12) / 1000)
stocking <- list(ceiling = 4000 * u$kg_per_hectare, relative_growth = 0.05, half_intake = 500 * u$kg_per_hectare,
                 full_intake = 50 * u$kg_per_hectare_day, start = 1000 * u$kg_per_hectare, days = 1000)
calls <- list(
    herd_classes = function() "ewe" %in% herd_classes()$name,
    herd_class_by_name = function() herd_class_by_name("ewe")$kind == "sheep",
    herd_water_figures = function() "dairy cow" %in% herd_water_figures()$rule,
    # E6 of Penn State's steps: 30 * 1.6 + 1.7
    herd_total_units = function() close_to(herd_total_units(c(30, 1), c(1.6, 1.7)), 49.7) && close_to(herd_total_units(3, 2), 6),
    forage_bloat_risk = function() identical(forage_bloat_risk(c("20 %", "60 %")), c("low", "raised")),
    forage_pastures = function() is.data.frame(forage_pastures()) && "mixed-pasture" %in% forage_pastures()$name,
    forage_pasture_by_name = function() identical(forage_pasture_by_name("mixed-pasture")$key_months, c(4, 5, 6)) &&
        length(forage_pasture_by_name(c("mixed-pasture", "tall-fescue"))) == 2,
    forage_density_of = function() forage_density_of("mixed-pasture", c("fair", "good"), "middle")[2] > 0,
    forage_turn_in_of = function() close_to(forage_turn_in_of("mixed-pasture", factor("low")), 6 * u$inch, 1e-9), # 6 in are printed
    forage_leave_of = function() close_to(forage_leave_of("mixed-pasture", "low"), 3 * u$inch, 1e-9),           # 3 in are printed
    forage_yield_of = function() length(forage_yield_of(c("mixed-pasture", "tall-fescue"), "medium")) == 2,
    forage_share_of = function() abs(sum(forage_share_of("mixed-pasture", 1:12)) - 1) < 0.1,
    rainfall_month_normals = function() close_to(rainfall_month_normals(record), record$rain),
    rainfall_year_total = function() close_to(rainfall_year_total(record, 2001), 0.078), # 1 + 2 + ... + 12 mm
    rainfall_key_rain_share = function() close_to(rainfall_key_rain_share(as.Date("2001-06-01"), c(4, 5), record, rep(0.0045, 12)), 1),
    farm_first = function() farm_first(list(today = as.Date("2001-05-01"), units = "US", area_m2 = "8 ac",
        pasture = "mixed-pasture", rain_m = "30 in", stock = data.frame(class = "ewe", head = 9)))$version == 1,
    grazing_month_balance = function() {
        # 4,000 lb/ac on 8 ac at 60 %, a twelfth each month, less 20 kg on 31 days
        b <- grazing_month_balance("4000 lb/ac", rep(1 / 12, 12), "8 ac", "60 %", rep(20, 12), 2001)
        is.data.frame(b) && close_to(b$difference_kg[1], 4000 * 8 * 0.6 / 12 * u$lb - 20 * 31, 1e-9)
    },
    farm_carries = function() { c <- farm_carries(small_farm(), "ewes"); c$head_low <= c$head_high && length(c$limits) == 3 },
    farm_land_for = function() is.logical(farm_land_for(small_farm())$found),
    farm_explain = function() { e <- farm_explain(small_farm(), "2001-05-02"); is.data.frame(e) && nzchar(e$steps[[1]][[1]]$answer) },
    farm_plan = function() is.data.frame(farm_plan(small_farm())$moves),
    grazing_set_stocked = function() length(grazing_set_stocked(stocking)) >= 1000,
    # the roots of 0.05 V (1 - V/4000) = 50 V / (500 + V)
    grazing_set_stocked_balances = function() close_to(grazing_set_stocked_balances(stocking), (0.875 + c(-1, 1) * sqrt(0.875^2 - 0.5)) * 2000 * u$kg_per_hectare, 1e-9))
for (name in names(calls)) {
    got <- caught(calls[[name]]())
    expect(isTRUE(got$value) && length(got$warnings) == 0, name, " answers ", if (!is.null(got$error)) conditionMessage(got$error) else soum_to_json(got$value))
}
everyone <- soum_from_json(paste(readLines(file.path(bindings, "calls.json"), encoding = "UTF-8"), collapse = "\n"))
for (f in manifest$functions) if (f$kind != "formula") {
    if (!expect(f$name %in% names(everyone), f$name, " is called")) next
    given <- everyone[[f$name]]
    got <- caught(do.call(r_name(f), unname(given[vapply(f$parameters, function(p) p$name, "")])))
    expect(!is.null(got$value), f$name, " answers ", if (!is.null(got$error)) conditionMessage(got$error))
}
done("parity")
