# What calls look up, made ready once, when the package is built.

functions <- Map(function(f, name) {
    f$snake <- name
    f$word <- startsWith(as.character(f$types), "word:")
    f
}, functions, names(functions))
