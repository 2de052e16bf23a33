# Errors and warnings as conditions with classes.

condition <- function(class, message, call, more = list())
    structure(class = c(class, "condition"), c(list(message = message, call = call), more))

# The call of the exported function in which this is evaluated.
asked <- function() {
    exported <- getNamespaceExports("soum")
    for (i in seq_len(sys.nframe())) {
        call <- sys.call(i)
        head <- call[[1]]
        if (is.call(head) && identical(head[[1]], quote(`::`))) head <- head[[3]]
        if (is.symbol(head) && as.character(head) %in% exported && identical(environment(sys.function(i)), topenv()))
            return(call)
    }
    NULL
}

raise <- function(class, ..., call = asked())
    stop(condition(c(class, "soum_error", "error"), paste0(...), call))

# A document or an argument is wrong: where, what, and what would be right.
refuse <- function(what, problem, allowed = "", value = NULL, path = what) {
    message <- paste0(what, if (!is.null(value)) paste0(" (", value, ")"), " ", problem)
    if (nzchar(allowed)) message <- paste0(message, "; allowed: ", allowed)
    stop(condition(c("soum_document_error", "soum_error", "error"), message, asked(),
                   list(path = path, problem = problem, allowed = allowed, value = value)))
}

# The library's report, in R's names.
spoken <- function(report, f) {
    if (is.null(f)) return(report)
    snake <- names(f$keys)
    for (k in which(f$keys != snake)) {
        report$message <- gsub(paste0("\\b", f$keys[[k]], "\\b"), snake[k], report$message)
        for (field in c("argument", "path")) if (identical(report[[field]], f$keys[[k]])) report[[field]] <- snake[k]
    }
    report$message <- sub(f$name, f$snake, report$message, fixed = TRUE)
    report
}

limits_of <- function(report) {
    number <- function(v) if (is.null(v)) NA_real_ else if (is.character(v) && !(v %in% c("NaN", "+Inf", "-Inf"))) v else as.numeric(v)
    list(`function` = report$"function", argument = report$argument, value = number(report$value),
         low = number(report$low), high = number(report$high), gap = isTRUE(report$gap), unit = report$unit, source = report$source)
}

raise_report <- function(report, f = NULL, call = asked()) {
    report <- spoken(report, f)
    class <- switch(report$kind, domain = "soum_domain_error", document = "soum_document_error",
                    name = "soum_unknown_function_error", "soum_library_error")
    more <- switch(report$kind, domain = limits_of(report),
                   document = list(path = or(report$path), problem = or(report$problem, report$message),
                                   allowed = or(report$allowed), value = report$value), list())
    stop(condition(c(class, "soum_error", "error"), report$message, call, more))
}

warn_report <- function(report, f = NULL, rows = 1L, of = 1L, call = asked()) {
    report <- spoken(report, f)
    impossible <- report$kind == "domain"
    message <- report$message
    if (of > 1)
        message <- paste0(format(length(rows), big.mark = ","), " of ", format(of, big.mark = ","), " rows ",
                          if (impossible) "have no value" else "lie outside what the source covers",
                          "; the first is row ", rows[1], ": ", message)
    class <- if (impossible) "soum_domain_warning" else "soum_range_warning"
    warning(condition(c(class, "soum_warning", "warning"), message, call, c(list(rows = rows), limits_of(report))))
}

or <- function(text, other = "") if (is.null(text)) other else text
