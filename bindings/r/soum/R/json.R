# JSON, both ways, without other packages.

deepest <- 64L

number_json <- function(x) {
    text <- sprintf("%.15g", x)
    plain <- which(is.finite(x))
    plain <- plain[as.numeric(text[plain]) != x[plain]]
    text[plain] <- sprintf("%.17g", x[plain])
    text[is.na(x)] <- "null"
    text[x %in% Inf] <- "\"+Inf\""
    text[x %in% -Inf] <- "\"-Inf\""
    text
}

quoted_json <- function(x) {
    text <- enc2utf8(as.character(x))
    special <- grep("[\"\\\\[:cntrl:]]", text)
    if (length(special) > 0) {
        some <- gsub("\"", "\\\"", gsub("\\", "\\\\", text[special], fixed = TRUE), fixed = TRUE)
        for (code in c(1:31, 127L))
            some <- gsub(intToUtf8(code), sprintf("\\u%04x", code), some, fixed = TRUE)
        text[special] <- some
    }
    text <- paste0("\"", text, "\"")
    text[is.na(x)] <- "null"
    text
}

object_json <- function(keys, values) {
    if (length(values) == 0) return("{}")
    paste0("{", paste0(quoted_json(keys), ":", unlist(values), collapse = ","), "}")
}

array_json <- function(values) paste0("[", paste(unlist(values), collapse = ","), "]")

# The values of a vector, each as JSON.
atoms_json <- function(x, path) {
    if (inherits(x, c("Date", "POSIXt"))) return(quoted_json(format(x, "%Y-%m-%d")))
    if (is.factor(x) || is.character(x)) return(quoted_json(x))
    if (is.logical(x)) return(ifelse(is.na(x), "null", ifelse(x, "true", "false")))
    if (is.numeric(x)) return(number_json(unclass(x)))
    refuse(path, paste("is", class(x)[1]), "numbers, text, TRUE or FALSE, dates, lists, data frames")
}

# Writes x as JSON of a type: where the type is a list, one value is a list of
# one; where it is a document, empty cells of data frames are keys left out.
typed_json <- function(x, type = "any", path = "", depth = 1L, in_farm = FALSE) {
    if (depth > deepest) refuse(path, paste("is nested more than", deepest, "deep"), "a flatter document")
    kind <- kind_of(type)
    of <- within_type(type)
    if (is.null(x)) return("null")
    if (kind == "struct" && of %in% c("farm.Farm", "fit.Question", "study.Study")) {
        if (is.character(x)) return(document_text(x, path))
        in_farm <- TRUE
    }
    below <- function(item, type, step) typed_json(item, type, paste0(path, step), depth + 1L, in_farm)
    dots <- if (nzchar(path)) "." else ""
    if (is.data.frame(x) && (kind == "list" || kind == "any")) {
        type <- if (kind == "list") of else "any"
        return(array_json(lapply(seq_len(nrow(x)), function(i) below(row_of(x, i, in_farm), type, paste0("[", i - 1L, "]")))))
    }
    if (is.data.frame(x)) {
        if (kind != "struct" || nrow(x) != 1) refuse(path, paste("is a data frame of", nrow(x), "rows"), if (kind == "struct") "one row, or a list" else kind)
        x <- row_of(x, 1L, in_farm)
    }
    if (is.list(x) && !is.object(x) || inherits(x, "AsIs") && is.list(x)) {
        if (kind %in% scalar_kinds) refuse(path, "is a list", paste("one", kind))
        keys <- names(x)
        if (is.null(keys) || kind == "list") {
            item <- if (kind == "list") of else "any"
            return(array_json(lapply(seq_along(x), function(i) below(x[[i]], item, paste0("[", i - 1L, "]")))))
        }
        if (any(is.na(keys) | !nzchar(keys))) refuse(path, "has an item without a name", "a name for each item, or for none")
        fields <- if (kind == "struct") shapes[[of]]
        return(object_json(keys, lapply(seq_along(x), function(i) {
            key <- keys[i]
            field <- if (kind == "map") of else if (key %in% names(fields)) fields[[key]] else "any"
            below(x[[i]], field, paste0(dots, key))
        })))
    }
    if (is.list(x)) return(typed_json(unclass(x), type, path, depth, in_farm))
    if (is.function(x) || is.environment(x) || is.language(x)) refuse(path, paste("is", class(x)[1]), "numbers, text, TRUE or FALSE, dates, lists, data frames")
    values <- atoms_json(if (inherits(x, "AsIs")) unclass_I(x) else x, path)
    if (kind == "map") return(object_json(names(x), values))
    if (kind == "list") return(array_json(values))
    if (kind == "any" && (length(x) != 1 || inherits(x, "AsIs"))) return(array_json(values))
    if (length(values) != 1) refuse(path, paste("has", length(values), "values"), "one")
    values
}

# A row of a data frame as a list.
row_of <- function(x, i, drop) {
    row <- lapply(x, function(column) column[[i]])
    if (drop) row <- row[!vapply(row, function(cell) is.atomic(cell) && length(cell) == 1 && is.na(cell) || is.null(cell), NA)]
    row
}

# A farm given as text: JSON, or the path of a file that holds it.
document_text <- function(x, path) {
    text <- paste(enc2utf8(x), collapse = "\n")
    if (grepl("^\\s*[{\\[]", text) || grepl("\n", text, fixed = TRUE)) return(text)
    if (length(x) != 1 || is.na(x) || !file.exists(x) || dir.exists(x))
        refuse(path, "is neither JSON nor a file", "a list, JSON text, or the path of a file", quoted_json(x[1]))
    paste(readLines(x, warn = FALSE, encoding = "UTF-8"), collapse = "\n")
}

soum_to_json <- function(x) typed_json(x)

json_tokens <- "\"[^\"\\\\\\x00-\\x1f]*+(?:\\\\.[^\"\\\\\\x00-\\x1f]*+)*+\"|-?(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]+)?|true|false|null|[][{}:,]"

# Reads JSON text. Objects are named lists; arrays of numbers, of text, of TRUE
# and FALSE are vectors (of one: I(), so that it is written as an array again),
# null in them NA; other arrays are lists.
soum_from_json <- function(text) {
    text <- paste(enc2utf8(text), collapse = "\n")
    wrong <- function(problem) refuse("text", paste("is no JSON:", problem), "a JSON value")
    at <- gregexpr(json_tokens, text, perl = TRUE, useBytes = TRUE)[[1]]
    if (at[1] < 0) wrong("there is no value")
    bytes <- charToRaw(text)
    size <- attr(at, "match.length")
    end <- at + size
    gaps <- c(at, length(bytes) + 1L) - c(1L, end)
    for (g in which(gaps > 0)) {
        from <- if (g == 1) 1L else end[g - 1]
        between <- bytes[from:(from + gaps[g] - 1L)]
        if (!all(between %in% as.raw(c(9, 10, 13, 32)))) wrong(paste("at byte", from))
    }
    tokens <- substring_bytes(text, at, end - 1L)
    first <- substr(tokens, 1, 1)
    is_text <- first == "\""
    is_number <- grepl("[-0-9]", first)
    numbers <- rep(NA_real_, length(tokens))
    numbers[is_number] <- as.numeric(tokens[is_number])
    tokens[is_text] <- unquoted(tokens[is_text], wrong)
    count <- length(tokens)
    i <- 1L
    value <- function(depth) {
        if (depth > deepest) refuse("text", paste("is nested more than", deepest, "deep"), "a flatter document")
        if (i > count) wrong("it ends too soon")
        k <- i
        i <<- i + 1L
        if (is_number[k]) return(numbers[k])
        if (is_text[k]) return(tokens[k])
        switch(tokens[k], "true" = TRUE, "false" = FALSE, "null" = NULL,
               "[" = array(depth), "{" = object(depth), wrong(paste0("\"", tokens[k], "\" at token ", k)))
    }
    closes <- function(mark, k) {
        if (i > count) wrong("it ends too soon")
        !is_text[i] && tokens[i] == mark
    }
    array <- function(depth) {
        items <- list()
        if (closes("]")) {
            i <<- i + 1L
            return(items)
        }
        repeat {
            items[length(items) + 1L] <- list(value(depth + 1L))
            done <- closes("]")
            if (!done && !closes(",")) wrong(paste("an array at token", i))
            i <<- i + 1L
            if (done) return(simplified(items))
        }
    }
    object <- function(depth) {
        items <- list()
        keys <- character()
        if (closes("}")) {
            i <<- i + 1L
            return(structure(items, names = keys))
        }
        repeat {
            if (i > count || !is_text[i]) wrong(paste("a key is missing at token", i))
            keys[length(keys) + 1L] <- tokens[i]
            i <<- i + 1L
            if (!closes(":")) wrong(paste("a colon is missing at token", i))
            i <<- i + 1L
            items[length(items) + 1L] <- list(value(depth + 1L))
            done <- closes("}")
            if (!done && !closes(",")) wrong(paste("an object at token", i))
            i <<- i + 1L
            if (done) return(structure(items, names = keys))
        }
    }
    all <- value(1L)
    if (i <= count) wrong(paste("more follows at token", i))
    all
}

# An array of one kind as a vector.
simplified <- function(items) {
    nothing <- vapply(items, is.null, NA)
    single <- vapply(items, function(x) is.atomic(x) && length(x) == 1 && !is.object(x), NA)
    if (!all(nothing | single)) return(items)
    kinds <- unique(vapply(items[!nothing], typeof, ""))
    if (length(kinds) > 1) return(items)
    items[nothing] <- list(NA)
    items <- unlist(items)
    if (length(items) == 1) I(items) else items
}

# The pieces of a text between places counted in bytes.
substring_bytes <- function(text, from, to) {
    Encoding(text) <- "bytes"
    pieces <- substring(text, from, to)
    Encoding(pieces) <- "UTF-8"
    pieces
}

unquoted <- function(tokens, wrong) {
    tokens <- substr(tokens, 2, nchar(tokens) - 1L)
    for (k in grep("\\", tokens, fixed = TRUE)) tokens[k] <- unescaped(tokens[k], wrong)
    tokens
}

escapes <- c("\"" = "\"", "\\" = "\\", "/" = "/", b = "\b", f = "\f", n = "\n", r = "\r", t = "\t")

unescaped <- function(text, wrong) {
    marks <- gregexpr("\\\\(u[dD][89abAB]..\\\\u[dD][c-fC-F]..|u.{4}|.)", text, perl = TRUE)
    regmatches(text, marks)[[1]] <- vapply(regmatches(text, marks)[[1]], function(mark) {
        if (substr(mark, 2, 2) != "u") {
            plain <- escapes[substring(mark, 2)]
            if (is.na(plain)) wrong(paste("the escape", mark))
            return(plain[[1]])
        }
        if (!grepl("^(\\\\u[0-9A-Fa-f]{4})+$", mark)) wrong(paste("the escape", mark))
        codes <- strtoi(substring(strsplit(mark, "\\", fixed = TRUE)[[1]][-1], 2), 16L)
        if (any(codes == 0L)) wrong("text with a zero character, which R cannot hold")
        if (length(codes) == 2 && codes[1] %in% 0xD800:0xDBFF && codes[2] %in% 0xDC00:0xDFFF)
            codes <- 0x10000L + (codes[1] - 0xD800L) * 0x400L + codes[2] - 0xDC00L
        codes[codes %in% 0xD800:0xDFFF] <- 0xFFFDL # half of a pair
        intToUtf8(codes)
    }, "")
    text
}
