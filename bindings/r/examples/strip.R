# One question: how long a strip for tomorrow?
#
# Ten ewes of 150 lb, in milk, eat 4.5 % of their weight a day, all from
# pasture. The grass stands 8 in high at 250 lb an acre and inch; 4 in are to be
# left. The lane is 100 ft wide.
library(soum)

demand <- herd_demand(head = 10, weight = 150 * u$lb, intake = 4.5 * u$percent, pasture = 100 * u$percent)
available <- forage_available(height = 8 * u$inch, residual = "4 in", density = "250 lb/ac/in")
use <- forage_usable_share(1 * u$day)
area <- grazing_stay_area(demand, 1 * u$day, available, use)
length <- grazing_strip_length(area, width = "100 ft")

cat("They want ", units_show("Demand", demand, "US"), "; ", units_show("Yield", available, "US"),
    " stand above what is left, of which ", units_show("Fraction", use, "US"), " are eaten in a day.\n", sep = "")
cat("That is ", units_show("Area", area, "US"), ": a strip of ", units_show("Length", length, "US"), ".\n", sep = "")
