# Libraries that are not this package's: of another build, and with a fault put
# in. Each in a process of its own.
path <- commandArgs(trailingOnly = TRUE)[2]
switch(commandArgs(trailingOnly = TRUE)[1],
    other = {
        e <- fails(soum:::load_library(path, copy = FALSE), "soum_library_error", "another build")
        expect(grepl("manifest 1)", conditionMessage(e), fixed = TRUE), "which build it is")
        expect(close_to(forage_standing(2, 3), 6), "the package's own goes on")
        fails(soum:::load_library("no such file", copy = FALSE), "soum_library_error", "missing")
    },
    fault = {
        soum:::load_library(path, copy = FALSE)
        expect(close_to(forage_standing(2, 3), 6), "good formulas answer")
        answer <- .C(soum:::state$eval, sum(vapply(manifest$functions, function(f) f$kind == "formula", NA)), 1, 0L, 3L,
                     value = double(3), status = integer(3), NAOK = TRUE)
        expect(all(is.nan(answer$value)) && all(answer$status == -998L), "a fault in a formula is a status")
        fails(soum_call("test.fault"), "soum_library_error", "a fault")
        answer <- .C(soum:::state$eval, 9999L, 1, 0L, 1L, value = 0, status = 0L, NAOK = TRUE)
        expect(answer$status == -999L && is.nan(answer$value), "a number without a formula")
        answer <- .C(soum:::state$eval, 0L, 1, 0L, 0L, value = double(0), status = integer(0), NAOK = TRUE)
        expect(length(answer$value) == 0, "no rows")
        expect(close_to(forage_standing(2, 3), 6), "and good formulas go on")
    })
done(paste("library", commandArgs(trailingOnly = TRUE)[1]))
