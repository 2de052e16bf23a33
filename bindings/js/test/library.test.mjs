// The installed package against the manifest and the check values of the
// library. SOUM_DATA names the folder that holds api.json, checks.jsonl,
// calls.json and farm.json.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import * as soum from "soum";

const data = process.env.SOUM_DATA;
const read = (name) => readFileSync(join(data, name), "utf8");
const api = JSON.parse(read("api.json"));
const checks = [];
let table; // what a line before those of a table says of them all
for (const line of read("checks.jsonl").trim().split("\n").map((text) => JSON.parse(text))) {
  if (line.table) {
    table = line;
  } else {
    checks.push({ ...table, ...line });
  }
}
const calls = JSON.parse(read("calls.json")); // one of every look-up and work
const farm = JSON.parse(read("farm.json"));

soum.onRangeWarning(() => {});

const wrapper = (f) => soum[f.package][f.camel];

// spoken writes the functions and errors that a text names as this package does.
function spoken(of, text) {
  const errors = {
    "*units.DomainError": "DomainError", "*units.RangeError": "RangeWarning", "*units.ParseError": "DocumentError",
    "*document error": "DocumentError", "*document.Error": "DocumentError",
    "a domain error": "a DomainError", "a range error": "a RangeWarning",
    ManureUnknown: 'the word "unknown"', WaterUnknown: 'the word "unknown"',
  }; // prettier-ignore
  for (const [go, here] of Object.entries(errors)) {
    text = text.replaceAll(go, here);
  }
  return text.replace(/(?:\b(\w+)\.)?\b([A-Z]\w*)\b/g, (word, name, short) => {
    const found = api.functions.find((f) => f.name === `${name ?? of.package}.${short}`);
    return found && (name || /_/.test(found.snake)) ? word.replace(short, found.camel) : word;
  });
}

// warned runs a call and gives the warnings it raised.
function warned(calls) {
  const all = [];
  const before = soum.onRangeWarning((warning) => all.push(warning));
  try {
    calls();
  } finally {
    soum.onRangeWarning(before);
  }
  return all;
}

test("every function is there, and declared with its types", () => {
  const types = {};
  for (const f of api.functions) {
    assert.equal(typeof wrapper(f), "function", f.name);
    types[f.package] ??= readFileSync(new URL(import.meta.resolve("soum")).pathname.replace(/[^/]+$/, `${f.package}.d.ts`), "utf8");
    assert.match(types[f.package], new RegExp(`export function ${f.camel}\\(`), f.name);
    for (const section of f.sections) {
      assert.ok(types[f.package].includes(spoken(f, section.text).slice(0, 40).replaceAll("*/", "* /")), `${f.name}: ${section.head}`);
    }
    assert.doesNotMatch(types[f.package], /\*units\./, "no error has Go's name");
  }
  assert.match(types.farm, /documents\.FarmPlan/);
});

test("every look-up and every work answers", () => {
  for (const f of api.functions.filter((f) => f.kind !== "formula")) {
    assert.notEqual(wrapper(f)(calls[f.name]), undefined, f.name);
  }
});

test("all check values, as printed and to the last digits", () => {
  const byName = new Map(api.functions.map((f) => [f.name, f]));
  let compared = 0;
  for (const check of checks) {
    const f = byName.get(check.function);
    const run = f ? wrapper(f) : (given) => soum.call(check.function, given);
    if (check.error.startsWith("domain")) {
      assert.throws(() => run(numbers(check.arguments)), soum.DomainError, JSON.stringify(check));
      continue;
    }
    let value;
    const warnings = warned(() => (value = run(numbers(check.arguments))));
    assert.equal(warnings.length, check.error.startsWith("range") ? 1 : 0, JSON.stringify(check));
    if (typeof value !== "number") {
      assert.equal(String(value), String(check.value));
      continue;
    }
    if (check.value !== null && typeof check.value === "number") {
      assert.ok(Math.abs(value - check.value) <= check.tolerance, `${value}: ${JSON.stringify(check)}`);
    }
    if (typeof check.exact === "number") {
      assert.ok(Math.abs(value - check.exact) <= 1e-12 * Math.abs(check.exact), `${value}: ${JSON.stringify(check)}`);
    }
    compared++;
  }
  assert.ok(compared > 500, `${compared}`);
});

// numbers turns what JSON has no number for.
function numbers(given) {
  return Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, value === null ? NaN : /^[-+]?Inf(inity)?$/.test(value) ? Number(String(value).replace(/Inf(inity)?/, "Infinity")) : value]),
  );
}

test("an impossible argument is an error, one outside the source a warning", () => {
  assert.throws(
    () => soum.forage.available({ height: 0.1, residual: 0.2, density: 1 }),
    (wrong) => wrong instanceof soum.DomainError && wrong.argument === "residual" && /height/.test(wrong.message),
  );
  let value;
  const [warning] = warned(() => (value = soum.forage.usableShare({ stay: 9 })));
  assert.ok(warning instanceof soum.RangeWarning && warning.argument === "stay");
  assert.ok(value > 0.5 && value < 0.7); // 60 % is printed for seven days
  assert.throws(() => soum.forage.available({ height: "8 lb", residual: 0, density: 1 }), soum.DocumentError);
  assert.throws(() => soum.forage.available({ height: 0.1, residual: 0 }), /density/);
  assert.throws(() => soum.forage.available({ height: 0.1, residual: 0, density: 1, colour: 2 }), /colour/);
  assert.throws(() => soum.forage.available(), soum.DocumentError);
  assert.throws(() => soum.forage.available(3), soum.DocumentError);
  assert.throws(() => soum.call("forage.Nothing"), ReferenceError);
  assert.throws(
    () => soum.farm.plan({ document: { ...farm, today: "2001-02-30" } }),
    (wrong) => wrong instanceof soum.DocumentError && wrong.path === "today",
  );
});

test("a gap inside of what a source covers says so", () => {
  for (const rain of ["27 in", ["27 in"]]) { // 25 and 30 in are printed, nothing between
    const [warning] = warned(() => soum.rainfall.passes({ rain }));
    assert.ok(warning instanceof soum.RangeWarning);
    assert.deepEqual([warning.low, warning.high, warning.gap, warning.unit], [25, 30, true, "in"]);
  }
  const [warning] = warned(() => soum.forage.usableShare({ stay: 9 }));
  assert.equal(warning.gap, false);
});

test("lists in, lists out, and one warning for all bad rows", () => {
  const heights = Float64Array.from({ length: 10000 }, (_, i) => 0.1 + i * 1e-5);
  const out = soum.forage.available({ height: heights, residual: "4 in", density: "250 lb/ac/in" });
  assert.ok(out instanceof Float64Array && out.length === 10000);
  const one = soum.forage.available({ height: heights[7000], residual: "4 in", density: "250 lb/ac/in" });
  assert.ok(Math.abs(out[7000] - one) <= 1e-12 * one);
  let mixed;
  const warnings = warned(() => (mixed = soum.forage.available({ height: ["8 in", 0.05, null, 0.3], residual: 0.1, density: 1 })));
  assert.equal(warnings.length, 1);
  assert.ok(warnings[0] instanceof soum.DomainWarning && warnings[0].rows === 2 && warnings[0].row === 1);
  assert.deepEqual([...mixed].map(Number.isNaN), [false, true, true, false]);
  assert.equal(soum.forage.available({ height: [], residual: 0.1, density: 1 }).length, 0);
  assert.throws(() => soum.forage.available({ height: [1, 2], residual: [1], density: 1 }), soum.DocumentError);
  for (const value of [NaN, Infinity, -Infinity]) {
    assert.throws(() => soum.forage.standing({ height: value, density: 1 }), soum.DomainError);
  }
});

test("units: text both ways, and the design's example", () => {
  const u = soum.units;
  const y = soum.forage.available({ height: 8 * u.inch, residual: 3 * u.inch, density: 250 * u.lbPerAcreInch });
  assert.ok(Math.abs(y / u.lbPerAcre - 1250) < 1e-9);
  assert.equal(u.parse("Area", "1 ac"), 4046.8564224);
  assert.equal(u.show("Area", 4046.8564224, "US"), "1 ac");
  assert.equal(u.parse("Area", u.show("Area", 12345.678)), 12345.678);
  assert.ok(Number.isNaN(u.parse("Area", u.show("Area", NaN))));
  assert.equal(u.parse("Area", u.show("Area", 1) && "Inf m2"), Infinity);
  assert.ok(Math.abs(u.fahrenheit(212) - 100) < 1e-12);
  assert.equal(
    soum.showWork("forage.available", { height: "8 in", residual: "3 in", density: "250 lb/ac/in" }, "US").text,
    "available = (height − residual) × density = (8 in − 3 in) × 250 lb/ac/in = 1,250 lb/ac",
  );
});

test("every formula is among the check values or called here", () => {
  const checked = new Set(checks.map((check) => check.function));
  for (const f of api.functions.filter((f) => f.kind === "formula" && !checked.has(f.name))) {
    const given = Object.fromEntries(f.parameters.map((p) => [p.name, p.type.kind === "word" ? api.enums.find((e) => e.name === p.type.name).words.at(-1) : 1]));
    assert.ok(Number.isFinite(wrapper(f)(given)), f.name);
  }
});

test("words are text, never their numbers, and plain numbers are no text", () => {
  const water = (given) => soum.herd.water({ head: 1, weight: 100, rule: "cattle", season: "summer", place: 1, ...given });
  assert.ok(water({}) > 0);
  assert.equal(water({ rule: ["cattle", "horse"] })[0], water({}));
  assert.throws(() => water({ rule: 2 }), soum.DocumentError);
  assert.throws(() => water({ rule: [2] }), soum.DocumentError);
  assert.throws(() => water({ rule: "cow" }), /horse/); // the words that would be right
  assert.throws(() => water({ head: "1" }), soum.DocumentError);
  assert.throws(() => water({ head: ["1"] }), soum.DocumentError);
});

test("without a handler a warning is told once", (t) => {
  const told = t.mock.method(console, "warn", () => {});
  const before = soum.onRangeWarning(null);
  try {
    for (let i = 0; i < 3; i++) {
      assert.ok(soum.rainfall.rotationDays({ leaf: 10, leaves: 4 }) > 0);
    }
    soum.rainfall.rotationDays({ leaf: 10, leaves: [4, 2.5, 5] });
  } finally {
    soum.onRangeWarning(before);
  }
  assert.equal(told.mock.callCount(), 1);
  assert.match(told.mock.calls[0].arguments[0], /leaves is 4, outside what DAIRYNZ-LEAF covers/);
  const [warning] = warned(() => soum.rainfall.rotationDays({ leaf: 10, leaves: [2.5, 4, 3, 5] }));
  assert.ok(warning instanceof soum.RangeWarning && !(warning instanceof soum.DomainWarning));
  assert.deepEqual([warning.rows, warning.row, warning.value], [2, 1, 4]);
});

test("a farm is planned and explained", () => {
  const plan = soum.farm.plan({ document: farm });
  assert.ok(plan.moves.length > 50);
  assert.match(plan.verdict.english, /From 2001-04-20 to 2001-10-31/);
  assert.ok(Math.abs(plan.balance_kg) < 1e-6);
  const work = soum.farm.explain({ document: farm, date: plan.moves[0].date });
  assert.ok(work[0].steps.at(-1).text.startsWith("strip length = area ÷ width"));
  const short = { ...farm, season: { from: farm.today, to: farm.today }, cuts: [], rotations: [{ ...farm.rotations[0], groups: [{ group: "goats" }] }] };
  assert.deepEqual(soum.farm.plan({ document: short }).surplus, []); // nothing outgrows on the first day
});

test("10,000 bad documents leave memory flat, and nesting is refused", () => {
  const text = JSON.stringify(farm);
  let seed = 1;
  const random = (n) => (seed = (seed * 48271) % 2147483647) % n;
  const spoil = () => {
    let bad = text;
    for (let i = 0; i < 3; i++) {
      const at = random(bad.length);
      bad = bad.slice(0, at) + String.fromCharCode(32 + random(90)) + bad.slice(at + 1);
    }
    return bad;
  };
  const round = (times) => {
    for (let i = 0; i < times; i++) {
      try {
        soum.farm.landFor({ document: { ...JSON.parse(spoil()), version: 2 } });
      } catch (wrong) {
        assert.ok(wrong instanceof SyntaxError || wrong instanceof soum.DocumentError || wrong instanceof soum.DomainError, String(wrong));
      }
      try {
        soum.farm.plan({ document: spoil() });
      } catch (wrong) {
        assert.ok(wrong instanceof soum.DocumentError, String(wrong));
      }
    }
  };
  round(1000);
  const before = soum.memorySize();
  round(5000);
  assert.ok(soum.memorySize() <= before + 4 * 2 ** 20, `${before} to ${soum.memorySize()} bytes`);
  let deep = 1;
  for (let i = 0; i < 5000; i++) {
    deep = { farm: [deep] };
  }
  assert.throws(() => soum.call("farm.Plan", { document: deep }), /nested/);
});
