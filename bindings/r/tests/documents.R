# JSON, farms, plans.

same <- function(text) expect(identical(soum_to_json(soum_from_json(text)), text), "there and back: ", text, " gives ", soum_to_json(soum_from_json(text)))
for (text in c("1", "null", "true", "\"\"", "[]", "{}", "[1]", "[1,2]", "[[1],[2,3]]", "[\"a\"]", "[null]", "[1,null]", "[true,null]",
               "{\"a\":null}", "{\"a\":[]}", "{\"a\":{}}", "[{}]", "[1,\"a\"]", "{\"a\":[{\"b\":[1]},{\"b\":[]}]}",
               "\"\u00b0\u00d7\u2212\U0001F404\"", "\"\\\"\\\\/\"", "\"\\u000a\\u0009\\u0001\"", "0.10000000000000001", "{\"a b\":1}", "-1.5e-07", "1e+300"))
    if (text != "0.10000000000000001") same(text)
expect(identical(soum_from_json("\"\\u00e9\\ud83d\\udc04\\n\""), "\u00e9\U0001F404\n"), "escapes")
expect(identical(soum_from_json("\"\\ud800x\""), "\ufffdx"), "half of a pair")
expect(identical(soum_from_json(" [ 1 ,\n 2\t] "), c(1, 2)), "white space")
expect(identical(soum_from_json(c("{\"a\":", "1}")), list(a = 1)), "lines")
set.seed(1)
x <- c(runif(1000), 10^runif(1000, -300, 300), -exp(rnorm(1000, sd = 20)), .Machine$double.xmin, 5e-324, .Machine$double.xmax, 0.1, 1/3, 2^53, -0)
expect(identical(soum_from_json(soum_to_json(x)), x), "numbers keep all their digits")
expect(identical(soum_to_json(list(a = NA, b = NULL, c = NaN, d = c(1, NA))), "{\"a\":null,\"b\":null,\"c\":null,\"d\":[1,null]}"), "gaps")
expect(identical(soum_to_json(list(d = as.Date("2001-05-01"), f = factor("x"), i = 3L, l = TRUE, v = c(a = 1, b = 2))),
                 "{\"d\":\"2001-05-01\",\"f\":\"x\",\"i\":3,\"l\":true,\"v\":[1,2]}"), "kinds")
expect(identical(soum_to_json(data.frame(a = 1:2, b = c("x", NA))), "[{\"a\":1,\"b\":\"x\"},{\"a\":2,\"b\":null}]"), "a data frame is its rows")
expect(identical(soum_to_json(I(5)), "[5]") && identical(soum_to_json(list(5)), "[5]") && identical(soum_to_json(I("a")), "[\"a\"]"), "arrays of one")
latin <- "caf\xe9"
Encoding(latin) <- "latin1"
expect(identical(soum_to_json(latin), "\"caf\u00e9\""), "text of another encoding")
for (text in c("", "[", "{", "[1", "{\"a\"", "{\"a\":", "{\"a\":1", "[1,]", "{,}", "{1:2}", "01", "1.", ".5", "+1", "tru", "nul", "\"a", "\"\\x\"", "\"\\u12\"", "[1 2]",
               "1 2", "]", ",", "'a'", "{\"a\":1,}", "NaN", "\"\t\"", "// x", "\"\\u0000\""))
    fails(soum_from_json(text), "soum_document_error")
fails(soum_to_json(sum), "soum_document_error", "function")
fails(soum_to_json(list(a = list(b = globalenv()))), "soum_document_error", "environment", "a.b")
fails(soum_to_json(list(a = 1, 2)), "soum_document_error", "name")

# The example's farm, given in four ways.
text <- readLines(farm_file, encoding = "UTF-8")
plan <- farm_plan(farm_file)
expect(grepl("From 2001-04-20 to 2001-10-31", plan$verdict$english, fixed = TRUE), "a plan")
expect(identical(farm_plan(text), plan), "a farm as lines of text")
expect(identical(farm_plan(paste(text, collapse = "\n")), plan), "a farm as one text")
farm <- soum_from_json(text)
expect(identical(farm_plan(farm), plan), "a farm as a list")
keys <- unique(unlist(lapply(farm$land, names)))
framed <- farm
framed$land <- do.call(rbind, lapply(farm$land, function(l) as.data.frame(lapply(setNames(keys, keys), function(k) if (is.null(l[[k]])) NA else l[[k]]))))
framed$today <- as.Date(farm$today)
expect(identical(farm_plan(framed), plan), "land as a data frame, today as a Date")

expect(inherits(plan$moves$date, "Date") && is.character(plan$moves$land) && is.numeric(plan$moves$length_m) && is.data.frame(plan$moves$visits[[1]]), "moves are a data frame")
expect(all(c("english", "code") %in% names(plan$notes)) && is.data.frame(plan$days) && is.data.frame(plan$water), "so are the others")
day <- plan$moves$date[3]
work <- farm_explain(farm, day)
expect(inherits(work, "soum_explanations") && any(grepl("strip length = area", capture.output(print(work)))), "the work of a day, printed")
expect(any(grepl("moves", capture.output(print(plan)))), "a plan, printed")
expect(grepl("available = ", capture.output(print(show_work("forage_available", list(height = 2, residual = 1, density = 1))))), "a step, printed")

# One value stands for a list of one; rows of tables go into farms, farms back.
expect(identical(farm_plan(within(small_farm(), rotations[[1]]$land <- "lane")), farm_plan(small_farm())), "one value for a list of one")
expect(identical(farm_plan(within(small_farm(), land[[1]]$pasture <- forage_pasture_by_name("mixed-pasture")))$moves, farm_plan(small_farm())$moves) ||
       close_to(farm_plan(within(small_farm(), land[[1]]$pasture <- forage_pasture_by_name("mixed-pasture")))$moves$length_m, farm_plan(small_farm())$moves$length_m, 1e-6), "a row of a table in a farm")
rows <- herd_classes()
ewe <- rows[rows$name == "ewe", ]
expect(nrow(farm_plan(within(small_farm(), groups[[1]]$class <- ewe))$moves) == nrow(farm_plan(small_farm())$moves), "a row of a data frame in a farm")
first <- farm_first(list(today = "2001-05-01", units = "US", area_m2 = 8 * u$acre, pasture = "mixed-pasture", rain_m = "30 in",
                                 height_m = "8 in", stock = list(list(class = "ewe", head = 9))))
expect(nchar(farm_plan(first)$verdict$english) > 0, "a first farm is planned")

# What is wrong has its place.
wrong <- function(change, path) {
    farm <- small_farm()
    e <- caught(farm_plan(change(farm)))$error
    expect(inherits(e, "soum_document_error") && identical(e$path, path), "a path: ", path, ", not ", e$path, ": ", conditionMessage(e))
    expect(nzchar(e$problem) && nzchar(e$allowed), "what is wrong and right at ", path)
}
wrong(function(f) { f$land[[1]]$width <- "30 lb"; f }, "land[0].width")
wrong(function(f) { f$land[[1]]$width <- 30; f }, "land[0].width")
wrong(function(f) { f$groups[[1]]$head <- -1; f }, "groups[0].head")
wrong(function(f) { f$groups[[1]]$class <- "dragon"; f }, "groups[0].class")
wrong(function(f) { f$colour <- "green"; f }, "colour")
wrong(function(f) { f$today <- NULL; f }, "today")
wrong(function(f) { f$season$from <- c("2001-05-01", "2001-05-02"); f }, "document.season.from")
e <- fails(farm_plan(list(version = 1)), "soum_document_error", "today", "today")
fails(farm_plan("no such file.json"), "soum_document_error", "is neither JSON nor a file", "document")
fails(farm_plan("{\"version\": 1"), "soum_document_error")
fails(farm_plan(3), "soum_document_error")
fails(farm_plan(NULL), "soum_document_error")
fails(farm_explain(small_farm(), "1999-01-01"), "soum_document_error", "1999", "date")
fails(farm_carries(small_farm(), "cows"), "soum_document_error", "no group", "group")
fails(rainfall_month_normals(data.frame(year = 2001, month = 1, rain = NA)), "soum_document_error", "record[0].rain")
done("documents")
