# Formulas: many rows at once.

eval_formula <- function(name, arguments) {
    f <- functions[[name]]
    for (k in seq_along(arguments)) {
        x <- arguments[[k]]
        if (!is.double(x) || is.object(x) || f$word[k]) arguments[[k]] <- column(x, f$types[k], names(arguments)[k])
    }
    each <- lengths(arguments, use.names = FALSE)
    n <- 1L
    columns <- arguments
    if (any(each != 1L)) {
        n <- common_length(arguments)
        if (n == 0L) return(numeric(0))
        columns[each != 1L] <- lapply(arguments[each != 1L], rep_len, n)
    }
    answer <- .C(door()$eval, f$index, as.double(unlist(columns, use.names = FALSE)), as.integer(each != 1L), n,
                 value = double(n), status = integer(n), NAOK = TRUE)
    value <- answer$value
    if (any(answer$status != 0L)) value <- settle(f, columns, value, answer$status)
    shaped_as(value, arguments, n)
}

# R's rule of recycling, without remainders.
common_length <- function(arguments) {
    each <- lengths(arguments)
    if (length(each) == 0) return(1L)
    if (any(each == 0)) return(0L)
    n <- max(each)
    if (any(n %% each != 0)) {
        odd <- which(n %% each != 0)[1]
        longest <- which.max(each)
        refuse(names(arguments)[odd], paste0("has ", each[odd], " values where ", names(arguments)[longest], " has ", n),
               "one value, or a number of values that goes evenly into the longest")
    }
    as.integer(n)
}

# Names, rows and columns are those of the first argument that is as long.
shaped_as <- function(value, arguments, n) {
    for (a in arguments) {
        if (is.null(attributes(a)) || length(a) != n) next
        if (!is.null(dim(a))) {
            dim(value) <- dim(a)
            dimnames(value) <- dimnames(a)
            return(value)
        }
        if (!is.null(names(a))) {
            names(value) <- names(a)
            return(value)
        }
    }
    value
}

# One argument as numbers: text is read with its unit, words become the numbers
# of an enumeration.
column <- function(x, type, name) {
    is_word <- startsWith(type, "word:")
    if (is.factor(x)) x <- as.character(x)
    if (is_word) {
        known <- words[[substring(type, 6)]]
        place <- match(x, known)
        wrong <- which(is.na(place) & !is.na(x))
        if (length(wrong) > 0 || !(is.character(x) || all(is.na(x))))
            refuse(name, "is no word that is known", paste(known, collapse = ", "), shown(if (length(wrong)) x[wrong[1]] else x))
        return(keep_shape(as.double(place), x))
    }
    if (inherits(x, "difftime") && type == "quantity:Days") return(as.double(x, units = "days"))
    if (inherits(x, c("Date", "POSIXt", "difftime", "data.frame")) || is.list(x))
        refuse(name, paste("is a", class(x)[1]), "numbers in base units")
    if (is.character(x)) {
        if (type == "number") refuse(name, "is text", "plain numbers", shown(x[1]))
        quantity <- sub("^quantity:", "", type)
        each <- unique(x[!is.na(x)])
        values <- vapply(each, parse_text, 0, quantity = quantity, argument = name, USE.NAMES = FALSE)
        return(keep_shape(as.double(values[match(x, each)]), x))
    }
    if (!is.numeric(x) && !all(is.na(x)))
        refuse(name, paste("is", typeof(x)), if (type == "number") "plain numbers" else "numbers in base units, or text with a unit")
    keep_shape(as.double(x), x)
}

keep_shape <- function(value, x) {
    dim(value) <- dim(x)
    if (is.null(dim(x))) names(value) <- names(x) else dimnames(value) <- dimnames(x)
    value
}

shown <- function(x) {
    text <- paste(format(x[seq_len(min(3, length(x)))], trim = TRUE), collapse = ", ")
    if (length(x) > 3) paste0(text, ", ...") else text
}

# What is impossible or out of range: an error where there is one row, else one
# warning of each kind that counts the rows and tells of the first.
settle <- function(f, columns, value, status) {
    n <- length(value)
    impossible <- which(status < 0L)
    if (length(impossible) > 0) {
        report <- row_report(f, columns, impossible[1], status[impossible[1]])
        if (n == 1 || report$kind != "domain") raise_report(report, f)
        missing <- Reduce(`|`, lapply(columns, function(x) is.na(x) & !is.nan(x))) # a gap stays a gap
        value[rep_len(missing, n) & status < 0L] <- NA
        warn_report(report, f, impossible, n)
    }
    outside <- which(status > 0L)
    if (length(outside) > 0)
        warn_report(row_report(f, columns, outside[1], status[outside[1]]), f, outside, n)
    value
}

# The library's own words on one row.
row_report <- function(f, columns, row, status) {
    broken <- list(kind = "broken", message = paste0("a fault of the library in ", f$name, " (status ", status, ")"))
    if (status <= -900L) return(broken)
    one <- lapply(seq_along(columns), function(k) {
        v <- if (length(columns[[k]]) == 1) columns[[k]][[1]] else columns[[k]][[row]]
        if (!startsWith(f$types[k], "word:")) return(number_json(v))
        word <- words[[substring(f$types[k], 6)]][v]
        if (is.na(word)) "0" else quoted_json(word)
    })
    answer <- soum_from_json(ask(f$name, object_json(f$keys, one))$answer)
    if (!is.null(answer$error)) answer$error else or(answer$warning, broken)
}
