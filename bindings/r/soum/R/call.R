# Look-ups and structured work: by name, JSON in and out.

scalar_kinds <- c("quantity", "number", "whole", "word", "text", "truth", "date")

kind_of <- function(type) sub(":.*", "", type)

# The type within a list, a map or a span; the name of a struct.
within_type <- function(type) sub("^[^:]*:", "", type)

call_function <- function(name, arguments) {
    f <- functions[[name]]
    vectors <- all(kind_of(f$types) %in% scalar_kinds)
    if (!vectors || all(lengths(arguments) == 1) || length(arguments) == 0) {
        given <- lapply(seq_along(arguments), function(k) typed_json(arguments[[k]], f$types[k], names(arguments)[k]))
        return(result(f, soum_from_json(ask(f$name, object_json(f$keys, given))$answer)))
    }
    arguments <- lapply(arguments, function(x) if (is.factor(x)) as.character(x) else x)
    n <- common_length(arguments)
    rows <- lapply(seq_len(n), function(i) {
        given <- lapply(seq_along(arguments), function(k) {
            x <- arguments[[k]]
            typed_json(x[[(i - 1L) %% length(x) + 1L]], f$types[k], names(arguments)[k])
        })
        soum_from_json(ask(f$name, object_json(f$keys, given))$answer)
    })
    kinds <- vapply(rows, function(row) or(row$error$kind), "")
    if (any(!kinds %in% c("", "domain"))) raise_report(rows[[which(!kinds %in% c("", "domain"))[1]]]$error, f)
    if (any(kinds == "domain")) warn_report(rows[[which(kinds == "domain")[1]]]$error, f, which(kinds == "domain"), n)
    warned <- which(!vapply(rows, function(row) is.null(row$warning), NA))
    if (length(warned) > 0) warn_report(rows[[warned[1]]]$warning, f, warned, n)
    single <- length(f$results) == 1 && kind_of(f$results) %in% scalar_kinds
    text <- single && kind_of(f$results) %in% c("word", "text", "date")
    values <- lapply(seq_len(n), function(i) {
        if (kinds[i] == "domain") return(if (!single) NULL else if (text) NA_character_ else NaN)
        results_of(f, rows[[i]]["value"][[1]])
    })
    if (!single) return(values)
    if (text) vapply(values, as.character, "") else vapply(values, as.double, 0)
}

# The value of an answer, or its error raised.
result <- function(f, answer, call = asked()) {
    if (!is.null(answer$error)) raise_report(answer$error, f, call)
    if (!is.null(answer$warning)) warn_report(answer$warning, f, call = call)
    results_of(f, answer[["value"]])
}

results_of <- function(f, value) {
    if (length(f$results) == 1) return(shaped(value, f$results))
    if (all(kind_of(f$results) %in% c("quantity", "number"))) return(as.double(value))
    Map(shaped, value, f$results)
}

# A value as R would have it: a list of structs is a data frame, a date a Date.
shaped <- function(value, type) {
    if (is.null(value)) return(NULL)
    kind <- kind_of(type)
    of <- within_type(type)
    switch(kind,
        date = if (is.character(value)) as.Date(value, optional = TRUE) else value,
        list = if (kind_of(of) == "struct") as_frame(value, within_type(of)) else bare(lapply(value, shaped, of), value),
        map = if (kind_of(of) == "any") value else bare(lapply(value, shaped, of), value),
        struct = {
            if (!is.list(value)) return(value)
            fields <- shapes[[of]]
            for (key in intersect(names(value), names(fields)))
                if (!is.null(value[[key]])) value[[key]] <- shaped(value[[key]], fields[[key]])
            if (of == "units.Step") structure(value, class = "soum_step")
            else if (of == "farm.Plan") structure(value, class = "soum_plan")
            else value
        },
        value)
}

# A list of scalars as a vector.
bare <- function(items, value) {
    if (length(items) == 0) return(if (is.list(value)) list() else value)
    if (all(lengths(items) == 1) && !any(vapply(items, is.list, NA))) do.call(c, lapply(items, unclass_I)) else items
}

unclass_I <- function(x) if (inherits(x, "AsIs")) unclass(x) else x

# A list of structs as a data frame; what is no single value is a list column,
# and a field that no row has is left out.
as_frame <- function(rows, name) {
    fields <- shapes[[name]]
    if (is.null(fields)) return(lapply(rows, shaped, paste0("struct:", name)))
    kinds <- kind_of(fields)
    columns <- lapply(seq_along(fields), function(k) {
        cells <- lapply(rows, `[[`, names(fields)[k])
        if (!kinds[k] %in% scalar_kinds) return(I(lapply(cells, shaped, fields[[k]])))
        text <- kinds[k] %in% c("text", "word", "date")
        cells[vapply(cells, is.null, NA)] <- list(NA)
        values <- if (length(cells)) unlist(cells) else if (text) character() else if (kinds[k] == "truth") logical() else numeric()
        if (kinds[k] == "date") as.Date(as.character(values)) else values
    })
    names(columns) <- names(fields)
    kept <- vapply(columns, function(x) if (is.list(x)) length(x) == 0 || any(lengths(x) > 0) else length(x) == 0 || !all(is.na(x)), NA)
    structure(columns[kept], class = c(if (name == "farm.Explanation") "soum_explanations", "data.frame"), row.names = seq_along(rows))
}

# Any function of the library by its Go name, as JSON would have it.
soum_call <- function(name, arguments = list()) {
    if (!is.character(name) || length(name) != 1 || is.na(name)) refuse("name", "is no name of a function", "text such as \"forage.Available\"")
    known <- vapply(functions, function(f) f$name, "")
    f <- if (name %in% known) functions[[names(known)[match(name, known)]]]
    if (length(arguments) > 0 && is.null(names(arguments))) refuse("arguments", "is a list without names", "a named list")
    given <- lapply(seq_along(arguments), function(k) {
        key <- names(arguments)[k]
        type <- if (key %in% f$keys) f$types[match(key, f$keys)] else "any"
        typed_json(arguments[[k]], type, key)
    })
    answer <- soum_from_json(ask(name, object_json(names(arguments), given))$answer)
    if (!is.null(f)) return(result(f, answer))
    if (!is.null(answer$error)) raise_report(answer$error)
    answer[["value"]]
}
