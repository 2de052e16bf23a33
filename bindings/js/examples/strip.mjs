// Ten ewes of 150 lb, in milk, eat 4.5 % of their weight a day, all from
// pasture. The grass stands 8 in high at 250 lb an acre and inch; 4 in are to be
// left. The lane is 100 ft wide. How long is tomorrow's strip?
import { forage, grazing, herd, units as u } from "soum";

const demand = herd.demand({ head: 10, weight: 150 * u.lb, intake: 4.5 * u.percent, pasture: 100 * u.percent });
const available = forage.available({ height: "8 in", residual: "4 in", density: "250 lb/ac/in" });
const use = forage.usableShare({ stay: 1 * u.day });
const area = grazing.stayArea({ demand, days: 1 * u.day, available, use });
const length = grazing.stripLength({ area, width: 100 * u.foot });

console.log(
  `They want ${u.show("Demand", demand, "US")}; ${u.show("Yield", available, "US")} stand above what is left, ` +
    `of which ${u.show("Fraction", use, "US")} are eaten in a day.`,
);
console.log(`That is ${u.show("Area", area, "US")}: a strip of ${u.show("Length", length, "US")}.`);
