# Fork, bad documents, depth, memory.

# A child of fork() answers, before and after the parent has called, and its own
# children do. Each must answer within a minute.
answers <- function(jobs) {
    pids <- vapply(jobs, function(job) job$pid, 0L)
    out <- list()
    while (length(left <- which(!pids %in% names(out))) > 0) {
        more <- parallel::mccollect(jobs[left], wait = FALSE, timeout = 60)
        if (is.null(more)) break
        out[names(more)] <- more
    }
    unname(out)
}
strip <- function() forage_available("8 in", "3 in", "250 lb/ac/in") / u$lb_per_acre
if (is.null(soum:::state$pid)) {
    jobs <- lapply(1:2, function(i) parallel::mcparallel(strip()))
    out <- answers(jobs)
    expect(length(out) == 2 && all(abs(unlist(out) - 1250) < 1e-9), "children of a parent that has not called")
    expect(is.null(soum:::state$pid), "the library is loaded at the first call")
}
plan <- farm_plan(small_farm())
jobs <- lapply(1:8, function(i) parallel::mcparallel({
    mine <- identical(farm_plan(small_farm()), plan)
    inner <- parallel::mcparallel(strip())
    list(mine, answers(list(inner)), soum_library()$path, soum:::state$pid == Sys.getpid(), strip())
}))
out <- answers(jobs)
expect(length(out) == 8, "eight children answer")
for (one in out) expect(isTRUE(one[[1]]) && close_to(unlist(one[[2]]), 1250) && isTRUE(one[[4]]) && close_to(one[[5]], 1250), "a child and its child")
expect(length(unique(c(soum_library()$path, vapply(out, function(one) one[[3]], "")))) == 9, "each has a library of its own")
expect(!any(file.exists(vapply(out, function(one) one[[3]], ""))), "whose copy is gone")
lapplied <- parallel::mclapply(1:6, function(i) forage_standing(i, 2), mc.cores = 2)
expect(close_to(unlist(lapplied), 2 * (1:6)), "mclapply")
expect(close_to(strip(), 1250), "the parent goes on")

# Nested deeper than anything is refused, as text and as lists.
deep <- paste0(strrep("{\"document\":", 10000), "1", strrep("}", 10000))
fails(farm_plan(deep), "soum_document_error", "nested")
fails(soum_from_json(deep), "soum_document_error", "nested")
fails(soum_from_json(strrep("[", 10000)), "soum_document_error", "nested")
list_deep <- list()
for (i in 1:10000) list_deep <- list(farm = list_deep)
fails(farm_plan(list_deep), "soum_document_error", "nested")
fails(soum_to_json(list_deep), "soum_document_error", "nested")

# Ten thousand bad documents, and ten thousand more: by then memory has found
# its size.
memory <- function() {
    gc()
    if (file.exists("/proc/self/status")) as.numeric(gsub("[^0-9]", "", grep("VmRSS", readLines("/proc/self/status"), value = TRUE))) / 1024 else NA
}
for (i in 1:3) memory() # R compiles what is called again
set.seed(7)
text <- soum_to_json(list(farm = small_farm()))
bytes <- utf8ToInt(text)
spoiled <- function(i) {
    at <- sample(length(bytes) - 1L, 1)
    switch(i %% 4 + 1,
        substr(text, 1, at),                                                          # cut short
        paste0(substr(text, 1, at), sample(c("{", "]", "\"", ":", "\\", "\u00e9", "[["), 1), substring(text, at + 1)),  # a byte too many
        sub("\"[^\"]*\":", paste0("\"k", at, "\":"), text),                           # an unknown key
        intToUtf8(sample(32:126, 200, replace = TRUE)))                               # noise
}
statuses <- integer()
for (round in 1:2) {
    for (i in 1:10000) statuses[i] <- soum:::ask("farm.Plan", spoiled(i))$status
    if (round == 1) before <- memory()
}
after <- memory()
expect(length(statuses) == 10000 && mean(statuses == -2L) > 0.98 && all(statuses %in% c(-2L, -1L, 0L, 1L)), "bad documents are refused: ", paste(names(table(statuses)), table(statuses), collapse = ", "))
cat("bad documents: ", sum(statuses < 0), " of 10,000 refused; memory ", round(before, 1), " MB after 10,000, ", round(after, 1), " MB after 20,000\n", sep = "")
expect(is.na(before) || after - before < 10, "memory stays: ", before, " to ", after, " MB")
for (i in 1:200) expect(inherits(caught(farm_plan(substr(text, 9, 9 + i)))$error, "soum_document_error"), "a farm cut short after ", i)
done("robust")
