// Compiles where the types are right.
import { documents, farm, forage, onRangeWarning, units as u } from "soum";

const one: number = forage.available({ height: "8 in", residual: 3 * u.inch, density: 250 * u.lbPerAcreInch });
const many: number | Float64Array = forage.available({ height: [0.1, "8 in", null], residual: 0.05, density: 1 });
const density: number = forage.densityOf({ pasture: "mixed-pasture", condition: "good", end: "low" });
// @ts-expect-error a word that there is not
forage.densityOf({ pasture: "mixed-pasture", condition: "lush", end: "low" });
// @ts-expect-error an argument is missing
forage.available({ height: 1, residual: 0 });

const document: documents.Farm = {
  version: 1,
  today: "2001-05-01",
  season: { from: "2001-05-01", to: "2001-08-31" },
  land: [{ id: "lane", width: "20 m", length: "300 m", pasture: "mixed-pasture", height: "20 cm", "x-own": 1 }],
  groups: [{ id: "ewes", class: "ewe", head: 8 }],
  rotations: [{ land: ["lane"], groups: [{ group: "ewes" }], shortest_rest: "21 days" }],
};
const plan: documents.FarmPlan = farm.plan({ document });
const length: number = plan.moves[0]!.length_m;
onRangeWarning((warning) => console.log(warning.argument, warning.gap));
export { density, length, many, one };
