# A library that this package was not made for, and one with a fault put in. Each in a
# process of its own.
switch(commandArgs(trailingOnly = TRUE)[1],
    other = {
        made_for <- soum:::made_for
        path <- soum_library()$path
        assignInNamespace("made_for", c(made_for[1], 1), "soum")
        e <- fails(soum:::load_library(path, copy = FALSE), "soum_library_error", "another build")
        assignInNamespace("made_for", made_for, "soum")
        expect(grepl(paste0("manifest ", made_for[2], ")"), conditionMessage(e), fixed = TRUE), "which build it is")
        expect(close_to(forage_standing(2, 3), 6), "the package's own goes on")
        fails(soum:::load_library("no such file", copy = FALSE), "soum_library_error", "missing")
    },
    fault = {
        soum:::load_library(commandArgs(trailingOnly = TRUE)[2], copy = FALSE)
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
