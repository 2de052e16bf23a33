# Text in and out of quantities, and a formula's work.

parse_text <- function(text, quantity, argument = "text") {
    answer <- soum_from_json(ask("units.parse", object_json(c("quantity", "text"), quoted_json(c(quantity, text))))$answer)
    if (!is.null(answer$error)) {
        report <- answer$error
        if (or(report$path) == "quantity") raise_report(report)
        refuse(paste0(argument, ":"), report$message, path = argument)
    }
    value <- answer[["value"]]
    if (is.character(value) && value %in% c("+Inf", "-Inf", "NaN")) as.numeric(value) else value
}

units_parse <- function(quantity, text) {
    quantity <- one_text(quantity, "quantity")
    if (is.factor(text)) text <- as.character(text)
    if (!is.character(text)) refuse("text", "is no text", "a number with its unit, such as \"8 in\"")
    each <- unique(text[!is.na(text)])
    values <- lapply(each, parse_text, quantity = quantity)
    if (length(text) == 0) return(numeric())
    if (length(each) == 0) return(keep_shape(rep(NA_real_, length(text)), text))
    values <- unlist(values)[match(text, each)]
    if (is.numeric(values)) keep_shape(values, text) else values
}

units_show <- function(quantity, value, system = NULL) {
    quantity <- one_text(quantity, "quantity")
    given <- c("quantity", "value", if (!is.null(system)) "system")
    if (!is.null(system)) system <- one_text(system, "system")
    vapply(value, function(v) {
        answer <- soum_from_json(ask("units.show", object_json(given, c(quoted_json(quantity), typed_json(v, "any", "value"), if (!is.null(system)) quoted_json(system))))$answer)
        if (!is.null(answer$error)) raise_report(answer$error)
        answer$value
    }, "")
}

one_text <- function(x, name) {
    if (!is.character(x) || length(x) != 1 || is.na(x)) refuse(name, "is not one text", "text")
    x
}

show_work <- function(name, arguments, system = "metric") {
    name <- one_text(name, "name")
    known <- vapply(functions, function(f) f$name, "")
    f <- if (name %in% names(functions)) functions[[name]] else if (name %in% known) functions[[names(known)[match(name, known)]]]
    if (is.null(f) || f$kind != "formula")
        refuse("name", "is no formula", "the name of a formula, such as \"forage_available\"", quoted_json(name))
    if (!is.list(arguments) && !is.null(names(arguments))) arguments <- as.list(arguments)
    unknown <- setdiff(names(arguments), names(f$keys))
    if (!is.list(arguments) || is.null(names(arguments)) && length(f$keys) > 0 || length(unknown) > 0)
        refuse("arguments", "are not those of the formula", paste("a list with", paste(names(f$keys), collapse = ", ")))
    given <- lapply(seq_along(arguments), function(k)
        typed_json(arguments[[k]], f$types[match(names(arguments)[k], names(f$keys))], names(arguments)[k]))
    json <- object_json(c("function", "system", "arguments"),
                        list(quoted_json(f$name), quoted_json(one_text(system, "system")), object_json(f$keys[names(arguments)], given)))
    answer <- soum_from_json(ask("formula.show", json)$answer)
    if (!is.null(answer$error)) raise_report(answer$error, f)
    structure(answer$value, class = "soum_step")
}
