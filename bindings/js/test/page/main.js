import { forage, grazing, herd, units as u } from "soum";

const demand = herd.demand({ head: 10, weight: 150 * u.lb, intake: 4.5 * u.percent, pasture: 100 * u.percent });
const available = forage.available({ height: "8 in", residual: "4 in", density: "250 lb/ac/in" });
const use = forage.usableShare({ stay: 1 * u.day });
const area = grazing.stayArea({ demand, days: 1 * u.day, available, use });
const length = grazing.stripLength({ area, width: 100 * u.foot });

document.querySelector("#answer").textContent =
  `They want ${u.show("Demand", demand, "US")}; ${u.show("Yield", available, "US")} stand above what is left, ` +
  `of which ${u.show("Fraction", use, "US")} are eaten in a day.\n` +
  `That is ${u.show("Area", area, "US")}: a strip of ${u.show("Length", length, "US")}.`;
