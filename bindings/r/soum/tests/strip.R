# One question through the installed package, and each way that it can go wrong.
library(soum)

# Ten ewes of 150 lb, in milk, eat 4.5 % of their weight a day. The grass stands
# 8 in high at 250 lb an acre and inch; 4 in are to be left; the lane is 100 ft
# wide. 67.5 lb over 1,000 lb/ac times 80 % are 0.084375 ac or 36.75 ft.
demand <- herd_demand(10, 150 * u$lb, 4.5 * u$percent, 100 * u$percent)
available <- forage_available(8 * u$inch, "4 in", "250 lb/ac/in")
area <- grazing_stay_area(demand, 1 * u$day, available, forage_usable_share(1 * u$day))
stopifnot(
    all.equal(demand / u$lb_per_day, 67.5, tolerance = 1e-12),
    all.equal(available / u$lb_per_acre, 1000, tolerance = 1e-12),
    all.equal(area / u$acre, 0.084375, tolerance = 1e-12),
    all.equal(grazing_strip_length(area, 100 * u$foot) / u$foot, 0.084375 * 43560 / 100, tolerance = 1e-12))

class_of <- function(code) class(tryCatch(code, condition = identity))[1]
stopifnot(
    class_of(forage_available(1, 2, 1)) == "soum_domain_error",
    class_of(forage_available("8 lb", 0, 1)) == "soum_document_error",
    class_of(forage_available(c(1, 3), 2, 1)) == "soum_domain_warning",
    class_of(forage_usable_share(9 * u$day)) == "soum_range_warning",
    class_of(farm_plan(list(version = 1))) == "soum_document_error")
