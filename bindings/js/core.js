// The way into the library: one instance of soum.wasm, its functions by number
// and by name, and what its statuses mean. The wrappers beside this file are
// made from the library's declarations and call nothing else.

import { DocumentError, DomainError, DomainWarning, RangeWarning, refuse } from "./errors.js";
import { abi, bases, manifest, words } from "./manifest.js";
import { wasi } from "./wasi.js";

const good = 0;
const domain = "domain";
const range = "range";

// Arrays go in pieces: the library's memory grows with the piece, and never
// shrinks.
const piece = 4096;

const encoder = new TextEncoder();
const decoder = new TextDecoder();

let library; // what soum.wasm exports

/** What soum.wasm imports. */
export const imports = { wasi_snapshot_preview1: wasi(() => library.memory, stop) };

/** Takes an instance of soum.wasm into use; one of another build is refused. */
export function start(instance) {
  const made = instance.exports;
  if (typeof made.soum_abi !== "function" || typeof made.soum_manifest !== "function") {
    throw new Error("soum.wasm is no build of soum: build it with bindings/js/build, or install the package anew");
  }
  library = made;
  made._initialize?.();
  if (made.soum_abi() !== abi || made.soum_manifest() !== manifest) {
    library = undefined;
    throw new Error(
      `soum.wasm is of another build: it has interface ${made.soum_abi()} and manifest ${made.soum_manifest()}, ` +
        `this package was made for interface ${abi} and manifest ${manifest}. Build it with bindings/js/build, or install the package anew`,
    );
  }
}

/** How much memory the library holds, in bytes. */
export function memorySize() {
  return library.memory.buffer.byteLength;
}

function stop(code, words) {
  const why = new Error(`soum has stopped (${code}) and gives no more answers: load it anew. ${words}`.trim());
  library = new Proxy({}, { get() { throw why; } }); // prettier-ignore
  throw why;
}

// inside runs calls into the library; after a fault that it could not catch
// itself its state is unknown.
function inside(calls) {
  try {
    return calls();
  } catch (fault) {
    if (fault instanceof WebAssembly.RuntimeError) {
      stop(fault.message, "");
    }
    throw fault;
  }
}

// ---- functions by number

/**
 * Describes a formula: its number, its name, and for each argument its name and
 * what it is: a quantity, "number", or an enumeration such as "forage.Condition".
 */
export function formula(index, name, parameters) {
  const names = Object.keys(parameters);
  const kinds = Object.values(parameters);
  const numbers = kinds.map((kind) => (words[kind] ? new Map(words[kind].map((word, i) => [word, i + 1])) : null));
  return { index, name, names, kinds, words: numbers, wordless: numbers.every((n) => n === null), count: names.length };
}

/**
 * Computes a formula: numbers go straight in; what is text is read; where an
 * argument is a list, so is the answer.
 */
export function evaluate(f, given, a, b, c, d, e, g, h, i) {
  const n = f.count;
  if (
    typeof a === "number" &&
    (n < 2 || typeof b === "number") &&
    (n < 3 || typeof c === "number") &&
    (n < 4 || typeof d === "number") &&
    (n < 5 || typeof e === "number") &&
    (n < 6 || typeof g === "number") &&
    (n < 7 || typeof h === "number") &&
    (n < 8 || typeof i === "number") &&
    f.wordless
  ) {
    let keys = 0;
    for (const _ in given) {
      keys++;
    }
    if (keys === n) {
      const value = library.soum_eval1(f.index, a, n < 2 ? 0 : b, n < 3 ? 0 : c, n < 4 ? 0 : d, n < 5 ? 0 : e, n < 6 ? 0 : g, n < 7 ? 0 : h, n < 8 ? 0 : i);
      const status = library.soum_last();
      if (status === good || known(f, status)) {
        return value;
      }
    }
  }
  return carefully(f, given, [a, b, c, d, e, g, h, i].slice(0, n));
}

// carefully computes what is not numbers alone, and says what is wrong.
function carefully(f, given, values) {
  checkNames(f, given);
  if (values.some(isList)) {
    return rows(f, values);
  }
  const numbers = values.map((value, k) => scalar(f, k, value));
  if (numbers.every((number) => typeof number === "number")) {
    const value = library.soum_eval1(f.index, ...numbers, ...new Array(8 - numbers.length).fill(0));
    const status = library.soum_last();
    if (status === good || known(f, status)) {
      return value;
    }
  }
  return call(f.name, textable(f, values)) ?? NaN;
}

// scalar gives an argument as a number where no text need be read: the library
// reads that, and says what is wrong with it.
function scalar(f, k, value) {
  if (f.words[k]) {
    return typeof value === "number" ? refuse(f.names[k], "is no word", oneOf(f, k), value) : f.words[k].get(value);
  }
  if (f.kinds[k] === "number" && typeof value === "string") {
    refuse(f.names[k], "is no number", "a number", value);
  }
  return value;
}

function oneOf(f, k) {
  return `one of ${words[f.kinds[k]].join(", ")}`;
}

function checkNames(f, given) {
  const allowed = `the arguments of ${f.name} are ${f.names.join(", ")}`;
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    refuse("the arguments", "are given as one object", `${f.name} takes {${f.names.join(", ")}}`);
  }
  for (const name in given) {
    if (!f.names.includes(name)) {
      refuse(name, `is no argument of ${f.name}`, allowed);
    }
  }
  for (const name of f.names) {
    if (given[name] === undefined) {
      refuse(name, "is missing", allowed);
    }
  }
}

// textable gives the arguments as JSON can hold them: infinity as text.
function textable(f, values) {
  const out = {};
  f.names.forEach((name, k) => {
    out[name] = finite(values[k], f.kinds[k]);
  });
  return out;
}

function finite(value, kind) {
  if (value === Infinity || value === -Infinity) {
    return `${value < 0 ? "-" : ""}Inf${bases[kind] ? ` ${bases[kind]}` : ""}`;
  }
  return value;
}

// ---- lists

function isList(value) {
  return Array.isArray(value) || (ArrayBuffer.isView(value) && !(value instanceof DataView));
}

// rows computes a formula for lists, a piece at a time.
function rows(f, values) {
  const n = commonLength(f, values);
  const columns = values.map((value, k) => column(f, k, value));
  const out = new Float64Array(n);
  const bad = { [domain]: null, [range]: null };
  for (let from = 0; from < n; from += piece) {
    const size = Math.min(piece, n - from);
    const status = inside(() => rowsPiece(f, columns, out, from, size));
    for (let i = 0; i < size; i++) {
      if (status[i] !== good) {
        const kind = status[i] < 0 ? domain : range;
        bad[kind] ??= { row: from + i, rows: 0 };
        bad[kind].rows++;
      }
    }
  }
  warnOfRows(f, columns, bad[domain], n, "impossible and give NaN", DomainWarning);
  warnOfRows(f, columns, bad[range], n, "outside what the source covers", RangeWarning);
  return out;
}

function commonLength(f, values) {
  let first = -1;
  values.forEach((value, k) => {
    if (!isList(value)) {
      return;
    }
    if (first < 0) {
      first = k;
    } else if (value.length !== values[first].length) {
      const wanted = `${f.names[first]} has ${values[first].length}: give lists of one length, or one value for all rows`;
      refuse(f.names[k], `has ${value.length} values`, wanted);
    }
  });
  return values[first].length;
}

// column gives an argument as numbers: one for all rows, or one for each.
function column(f, k, value) {
  if (!isList(value)) {
    return number(f, k, value, f.names[k]);
  }
  if (value instanceof Float64Array && !f.words[k]) {
    return value;
  }
  const numbers = new Float64Array(value.length);
  const read = new Map(); // a text is read once
  for (let i = 0; i < numbers.length; i++) {
    const item = value[i];
    if (typeof item === "number" && !f.words[k]) {
      numbers[i] = item;
    } else if (typeof item === "string" && read.has(item)) {
      numbers[i] = read.get(item);
    } else {
      numbers[i] = number(f, k, item, `${f.names[k]}[${i}]`);
      if (typeof item === "string") {
        read.set(item, numbers[i]);
      }
    }
  }
  return numbers;
}

// number reads one value of a list; a gap is not a number, and so impossible.
function number(f, k, value, path) {
  const kind = f.kinds[k];
  if (f.words[k]) {
    return f.words[k].get(value) ?? refuse(path, "is no such word", oneOf(f, k), value);
  }
  if (typeof value === "number") {
    return value;
  }
  if (value === null || value === undefined) {
    return NaN;
  }
  if (typeof value !== "string" || kind === "number") {
    refuse(path, "is no number", kind === "number" ? "a number" : "a number in base units, or text with a unit", value);
  }
  try {
    return numberOf(call("units.parse", { quantity: kind, text: value }));
  } catch (wrong) {
    if (wrong instanceof DocumentError) {
      refuse(path, `is refused: ${wrong.message}`, "text with a unit", value);
    }
    throw wrong;
  }
}

// rowsPiece lays a piece of the columns out in the library's memory, the
// answers behind them, then a stride for each column and a status for each row.
function rowsPiece(f, columns, out, from, size) {
  const count = columns.length;
  const resultAt = count * size;
  const tailAt = resultAt + size;
  const at = library.soum_buffer(8 * (tailAt + ((count + size + 1) >> 1) + 2));
  let numbers = new Float64Array(library.memory.buffer, at, tailAt);
  let tail = new Int32Array(library.memory.buffer, at + 8 * tailAt, count + size);
  let next = 0;
  columns.forEach((column, k) => {
    if (typeof column === "number") {
      tail[k] = 0;
      numbers[next++] = column;
    } else {
      tail[k] = 1;
      numbers.set(column.subarray(from, from + size), next);
      next += size;
    }
  });
  if (library.soum_eval(f.index, size) !== 0) {
    throw new Error(`soum: no room for ${size} rows of ${f.name}`);
  }
  // An impossible row takes memory for its error, and then memory may move.
  numbers = new Float64Array(library.memory.buffer, at, tailAt);
  tail = new Int32Array(library.memory.buffer, at + 8 * tailAt, count + size);
  out.set(numbers.subarray(resultAt, tailAt), from);
  return tail.slice(count);
}

// warnOfRows gives one warning for all bad rows of a kind, however many.
function warnOfRows(f, columns, bad, n, what, Warning) {
  if (bad === null) {
    return;
  }
  const first = columns.map((column) => (typeof column === "number" ? column : column[bad.row]));
  const found = reportOf(f.name, textable(f, first));
  const message = `${f.name}: ${bad.rows} of ${n} rows are ${what}; the first is [${bad.row}]: ${found.message}`;
  warn(new Warning(message, { ...details(found), ...bad }));
}

function reportOf(name, given) {
  const answer = ask(name, given);
  return answer.error ?? answer.warning ?? { message: "" };
}

// ---- functions by name

/**
 * Calls a function by name, such as "farm.Plan", with an object of its
 * arguments.
 */
export function call(name, given = {}) {
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    refuse("the arguments", "are given as one object", `${name} takes its arguments by name`);
  }
  const { value, warning, error } = ask(name, given);
  if (error) {
    throw thrown(error);
  }
  if (warning) {
    warn(new RangeWarning(warning.message, details(warning)));
  }
  return value;
}

// ask puts a question to the library and reads its answer.
function ask(name, given) {
  const nameBytes = encoder.encode(name);
  const textBytes = encoder.encode(written(given));
  return JSON.parse(
    inside(() => {
      const at = library.soum_buffer(nameBytes.length + textBytes.length);
      const scratch = new Uint8Array(library.memory.buffer, at, nameBytes.length + textBytes.length);
      scratch.set(nameBytes);
      scratch.set(textBytes, nameBytes.length);
      const size = library.soum_call(nameBytes.length, textBytes.length);
      return decoder.decode(new Uint8Array(library.memory.buffer, library.soum_answer(), size));
    }),
  );
}

function written(given) {
  try {
    return JSON.stringify(given, plain);
  } catch (fault) {
    if (fault instanceof RangeError) {
      refuse("the arguments", "are nested too deep", "at most 64 objects and lists inside one another");
    }
    throw fault;
  }
}

// plain gives a value as JSON can hold it: a gap for what is not a number.
function plain(key, value) {
  if (value === Infinity || value === -Infinity) {
    refuse(key, "is no finite number", "a number", value);
  }
  return ArrayBuffer.isView(value) && !(value instanceof DataView) ? Array.from(value) : value;
}

function thrown(error) {
  switch (error.kind) {
    case "domain":
      return new DomainError(error.message, details(error));
    case "document":
      return new DocumentError(error.message, error);
    case "name":
      return new ReferenceError(`soum: ${error.message}`);
  }
  return new Error(`soum: ${error.message}`);
}

function details(report) {
  return {
    function: report.function,
    argument: report.argument,
    index: report.index ?? 0,
    value: numberOf(report.value),
    low: numberOf(report.low),
    high: numberOf(report.high),
    gap: report.gap ?? false,
    unit: report.unit ?? "",
    source: report.source ?? "",
  };
}

/** A number of an answer: a gap is NaN, infinity is text. */
export function numberOf(value) {
  if (typeof value === "string") {
    return Number(value.replace("Inf", "Infinity"));
  }
  return value ?? NaN;
}

/** A list of numbers of an answer, gaps as NaN. */
export function numbersOf(list) {
  return Float64Array.from(list ?? [], numberOf);
}

// ---- warnings

const told = new Set();
let handler = null;

/**
 * Sets what is done with a warning: it is called with a RangeWarning for each.
 * Without one, or with null, console.warn tells each once for a function and an
 * argument. The handler that was set before is given back.
 */
export function onRangeWarning(next) {
  if (next !== null && typeof next !== "function") {
    throw new TypeError("onRangeWarning takes a function, or null for console.warn");
  }
  const before = handler;
  handler = next;
  return before;
}

function warn(warning) {
  if (handler) {
    handler(warning);
    return;
  }
  const key = `${warning.name} ${warning.function} ${warning.index}`;
  if (!told.has(key)) {
    told.add(key);
    console.warn(`${warning.name}: ${warning.message}`);
  }
}

// known tells whether a range warning of one row has been told already, so that
// its text need not be made.
function known(f, status) {
  return status > good && handler === null && told.has(`RangeWarning ${f.name} ${status}`);
}

/**
 * Shows a formula's work: its step with the numbers put in, as data and in one
 * line as text, in the units of a system, "metric" or "US".
 */
export function showWork(name, given, system = "metric") {
  const capital = String(name).replace(/\.(.)/, (_, letter) => `.${letter.toUpperCase()}`);
  return call("formula.show", { function: capital, arguments: given, system });
}
