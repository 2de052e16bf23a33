# Rscript run.R: all the tests. Rscript run.R KIND [LIBRARY]: those of a library.
here <- dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)))
files <- if (length(commandArgs(trailingOnly = TRUE)) > 0) "library.R" else c("robust.R", "parity.R", "errors.R", "documents.R")
for (file in c("support.R", files)) source(file.path(here, file), encoding = "UTF-8")
