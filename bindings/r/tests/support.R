# What the tests share. Needs the package installed, and BINDINGS in the
# environment: the folder of api.json, and in SOUM_TEST_CHECKS the file of the check lines.
library(soum)

bindings <- Sys.getenv("BINDINGS")
manifest <- soum_from_json(readLines(file.path(bindings, "api.json"), encoding = "UTF-8"))
# The check lines, each with the table and source that a line before them names.
lines <- lapply(readLines(Sys.getenv("SOUM_TEST_CHECKS"), encoding = "UTF-8"), soum_from_json)
heads <- vapply(lines, function(line) !is.null(line$table), NA)
checks <- Map(c, lines[heads][cumsum(heads)[!heads]], lines[!heads])
farm_file <- file.path(bindings, "..", "examples", "season", "data", "farm.json")

r_name <- function(f) paste0(f$package, "_", f$snake)
parameters_of <- function(f) vapply(f$parameters, function(p) p$snake, "")

# Keeps count; what fails is printed at once.
passed <- 0L
failed <- 0L
expect <- function(holds, ...) {
    if (isTRUE(holds)) passed <<- passed + 1L
    else {
        failed <<- failed + 1L
        if (failed <= 40) cat("FAILED:", paste0(...), "\n")
    }
    invisible(isTRUE(holds))
}

# The value of an expression, with the error or the warnings that came.
caught <- function(code) {
    warned <- list()
    value <- tryCatch(
        withCallingHandlers(code, warning = function(w) {
            warned[[length(warned) + 1]] <<- w
            invokeRestart("muffleWarning")
        }), error = identity)
    list(value = if (!inherits(value, "error")) value, error = if (inherits(value, "error")) value, warnings = warned)
}

fails <- function(code, class, holds = "", path = NULL) {
    text <- paste(deparse(substitute(code)), collapse = " ")
    e <- caught(code)$error
    expect(inherits(e, class) && inherits(e, "soum_error"), text, " gives ", class(e)[1], ", not ", class)
    expect(grepl(holds, conditionMessage(e), fixed = TRUE), text, " says: ", conditionMessage(e))
    if (!is.null(path)) expect(identical(e$path, path), text, " has the path ", e$path)
    invisible(e)
}

close_to <- function(a, b, relative = 1e-12)
    length(a) == length(b) && all(abs(a - b) <= relative * pmax(abs(a), abs(b)))

# A small farm: one lane, one group, three weeks.
small_farm <- function() list(
    version = 1, units = "US", today = "2001-05-01",
    season = list(from = "2001-05-01", to = "2001-05-21"),
    land = list(list(id = "lane", width = "100 ft", length = "600 ft", pasture = "mixed-pasture",
                     condition = "good", productivity = "medium", height = "8 in")),
    groups = list(list(id = "ewes", class = "ewe", head = 6, stage = "lactating")),
    rotations = list(list(land = list("lane"), groups = list(list(group = "ewes")), shortest_rest = "25 days")),
    rain = list(year = "36 in"))

done <- function(what) {
    cat(what, ": ", passed, " checks passed, ", failed, " failed\n", sep = "")
    if (failed > 0) quit(status = 1)
    passed <<- 0L
}
