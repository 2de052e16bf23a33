// Rows of two formulas beside plain JavaScript, a single call, and the start.
//
//	node rows.mjs PACKAGE/node.js
import { execFileSync } from "node:child_process";
import { pathToFileURL } from "node:url";

const url = pathToFileURL(process.argv[2]).href;
const rows = 1_000_000;
const rounds = 9;

function best(what, per) {
  let shortest = Infinity;
  for (let i = 0; i < rounds; i++) {
    const begin = process.hrtime.bigint();
    what();
    shortest = Math.min(shortest, Number(process.hrtime.bigint() - begin));
  }
  return shortest / per;
}

const tell = (name, figure) => console.log(`${name}: ${figure.toFixed(4)}`);

const first = `const begin = process.hrtime.bigint();
const { forage } = await import(${JSON.stringify(url)});
forage.standing({ height: 0.2, density: 0.11 });
console.log(Number(process.hrtime.bigint() - begin));`;
let start = Infinity;
for (let i = 0; i < rounds; i++) {
  start = Math.min(start, Number(execFileSync(process.execPath, ["--no-warnings", "--input-type=module", "-e", first])));
}
tell("Node start", start);

const { forage } = await import(url);
const column = (first) => Float64Array.from({ length: rows }, (_, i) => first * (1 + (i % 1000) * 1e-4));

const height = column(0.2);
const density = column(0.11);
tell("JavaScript product", best(() => {
  const out = new Float64Array(rows);
  for (let i = 0; i < rows; i++) {
    out[i] = height[i] * density[i];
  }
  return out;
}, rows));
tell("Node product", best(() => forage.standing({ height, density }), rows));

const [begin, ceiling, peak, days] = [column(0.2), column(0.4), column(0.005), column(20)];
tell("JavaScript logistic", best(() => {
  const out = new Float64Array(rows);
  for (let i = 0; i < rows; i++) {
    out[i] = ceiling[i] / (1 + (ceiling[i] / begin[i] - 1) * Math.exp((-4 * peak[i] * days[i]) / ceiling[i]));
  }
  return out;
}, rows));
tell("Node logistic", best(() => forage.regrown({ start: begin, ceiling, peak, days }), rows));

const calls = 200_000;
let sum = 0;
tell("Node call", best(() => {
  for (let i = 0; i < calls; i++) {
    sum += forage.standing({ height: 0.2 + i * 1e-9, density: 0.11 });
  }
}, calls));
if (!(sum > 0)) {
  throw new Error("the calls gave nothing");
}
