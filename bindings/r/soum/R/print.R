# How steps and plans are printed.

print.soum_step <- function(x, ...) {
    cat(x$text, "  [", x$source, "]\n", sep = "")
    invisible(x)
}

print.soum_explanations <- function(x, ...) {
    if (!all(c("about", "steps") %in% names(x))) return(NextMethod())
    for (k in seq_len(nrow(x))) {
        cat(x$about[k], "\n", sep = "")
        for (step in x$steps[[k]]) cat("  ", step$text, "\n", sep = "")
        if (nzchar(or(x$note[k]))) cat("  ", x$note[k], "\n", sep = "")
    }
    invisible(x)
}

print.soum_plan <- function(x, ...) {
    writeLines(strwrap(x$verdict$english))
    cat("\n", nrow(x$moves), " moves, ", nrow(x$notes), " notes, ", nrow(x$cautions), " cautions. A list of: ",
        paste(names(x), collapse = ", "), "\n", sep = "")
    invisible(x)
}
