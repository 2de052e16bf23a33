# The compiled library: found and loaded at the first call, never unloaded.

state <- new.env(parent = emptyenv())
state$pid <- NULL   # of the process that loaded it
state$room <- list() # bytes that the answers of a function took last

library_path <- function() {
    arch <- if (nzchar(.Platform$r_arch)) .Platform$r_arch
    name <- paste0("soum", .Platform$dynlib.ext)
    system.file(paste(c("libs", arch, name), collapse = "/"), package = "soum")
}

# The library of this process. What runs the Go code does not survive fork():
# a forked child loads a copy of its own at its first call.
door <- function() {
    if (!identical(state$pid, Sys.getpid())) load_library()
    state
}

load_library <- function(path = library_path(), copy = !is.null(state$pid)) {
    if (!nzchar(path) || !file.exists(path))
        raise("soum_library_error", "the library of the package soum is missing: install the package anew")
    if (copy) {
        folder <- tempfile("soum")
        dir.create(folder, mode = "0700")
        on.exit(unlink(folder, recursive = TRUE)) # what is loaded stays loaded
        if (!file.copy(path, folder))
            raise("soum_library_error", "a forked process found no room for a copy of the library in ", tempdir())
        path <- file.path(folder, basename(path))
    }
    loaded <- tryCatch(dyn.load(path), error = function(e)
        raise("soum_library_error", "the library of the package soum cannot be loaded: ", conditionMessage(e)))
    abi <- getNativeSymbolInfo("soum_abi", loaded)
    found <- .C(abi, integer(2))[[1]]
    if (!identical(as.numeric(found), made_for))
        raise("soum_library_error", "the library is of another build (interface ", found[1], ", manifest ", found[2],
              ") than the package's R code (interface ", made_for[1], ", manifest ", made_for[2],
              "): install the package anew")
    state$eval <- getNativeSymbolInfo("soum_eval", loaded)
    state$call <- getNativeSymbolInfo("soum_call", loaded)
    state$path <- loaded[["path"]]
    state$pid <- Sys.getpid()
    invisible(state)
}

# The package's version, and the library that it calls.
soum_library <- function() {
    list(version = getNamespaceVersion("soum")[["version"]], interface = made_for[1], manifest = made_for[2],
         path = door()$path, functions = length(functions))
}

# An answer of the library: list(status =, answer =). The arguments are JSON.
ask <- function(name, json) {
    entries <- door()
    request <- charToRaw(enc2utf8(json))
    room <- as.integer(max(16384, state$room[[name]]))
    repeat {
        reply <- .C(entries$call, c(charToRaw(name), as.raw(0)), request, length(request),
                    answer = raw(room), length = room, status = 0L)
        if (reply$length <= room) break
        room <- reply$length
        state$room[[name]] <- room + room %/% 8L
    }
    text <- rawToChar(reply$answer[seq_len(reply$length)])
    Encoding(text) <- "UTF-8"
    list(status = reply$status, answer = text)
}
