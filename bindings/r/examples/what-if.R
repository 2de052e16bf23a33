# What if it rains less, and what if there were more ewes?
#
#   Rscript what-if.R [picture.png]
#
# An invented farm: eight acres of orchardgrass and clover of medium yield, ewes
# of 150 lb on grass for 200 days from mid April. Of what grows, 65 % end in the
# animals, as print has it for six to eight paddocks. For every number of ewes
# and every rain: what hay they want. It adds up the season and does not ask when
# the grass grows; farm_plan does.
library(soum)

picture <- c(commandArgs(trailingOnly = TRUE), "what-if.png")[1]

study <- expand.grid(ewes = seq(10, 40, by = 5), rain = seq(50, 100, by = 10)) # rain in % of normal
study <- within(study, {
    grown <- forage_yield_of("orchardgrass-legume", "medium") * rainfall_forage_share(rain * u$percent)
    eaten <- forage_usable(grown, 8 * u$acre, 65 * u$percent)
    need <- herd_feed(herd_demand(ewes, "150 lb", "3 %", "100 %"), 200 * u$day)
    hay <- pmax(0, need - eaten) / u$short_ton
})

table <- xtabs(hay ~ ewes + rain, study)
cat("Hay wanted in the season, short tons of dry matter: ewes by rain in % of normal\n")
print(round(table, 1))

colours <- hcl.colors(ncol(table) + 2, "Viridis")[seq_len(ncol(table))] # without the palest
png(picture, width = 1200, height = 800, res = 150)
par(mar = c(4.5, 4.5, 3.5, 1), las = 1)
matplot(as.numeric(rownames(table)), table, type = "b", pch = seq_len(ncol(table)), lty = 1, lwd = 2, col = colours,
        xlab = "Ewes of 150 lb on 8 acres", ylab = "Hay wanted, short tons of dry matter",
        main = "Hay for 200 days, by head and rain", bty = "l", panel.first = grid(col = "grey85", lty = 1))
legend("topleft", legend = paste(colnames(table), "%"), title = "Rain, of normal",
       pch = seq_len(ncol(table)), lty = 1, lwd = 2, col = colours, bg = "white", box.col = "white", inset = 0.01)
invisible(dev.off())

enough <- function(rain) max(study$ewes[study$rain == rain & study$hay == 0])
for (rain in c(100, 70))
    cat("With ", rain, " % of the rain the grass feeds ", enough(rain), " ewes without hay, of the numbers tried.\n", sep = "")
cat("Planning figures: grass differs from the average by tens of per cent, so walk the ground.\n")
cat("The picture is ", picture, ".\n", sep = "")
