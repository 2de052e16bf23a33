/** A number in base units, or text with its unit: `0.2`, `"8 in"`. */
export type Scalar = number | string;

/** One value for each row. `null` is a gap and gives NaN. */
export type Column =
  | ReadonlyArray<number | string | null>
  | Float64Array
  | Float32Array
  | Int32Array
  | Uint32Array
  | Int16Array
  | Uint16Array
  | Int8Array
  | Uint8Array;

/** One value for all rows, or one for each. */
export type Values = Scalar | Column;

/** A word of an enumeration for all rows, or one for each. */
export type Words<Word extends string> = Word | ReadonlyArray<Word>;

/** What a `DomainError` and a `RangeWarning` tell. */
export interface Details {
  /** The function, as in `"forage.Available"`. */
  readonly function: string;
  /** The argument's name, or `"result"`. */
  readonly argument: string;
  /** The argument's place, from 1; 0 for the result. */
  readonly index: number;
  /** What was given, in `unit`. */
  readonly value: number;
  /** The least that is allowed, in `unit`. */
  readonly low: number;
  /** The most that is allowed, in `unit`. */
  readonly high: number;
  /** The source covers what is up to `low` and from `high` on, and nothing between. */
  readonly gap: boolean;
  /** The unit that the source takes; `""` for a plain number. */
  readonly unit: string;
  /** The keys of the sources. */
  readonly source: string;
}

export interface DomainError extends Details {}
/** An argument is impossible: a negative area, a share above one, no number. */
export class DomainError extends Error {}

export interface RangeWarning extends Details {}
/** An argument lies outside what the source covers. The value is still given. */
export class RangeWarning extends Error {
  /** For lists: how many rows it concerns. */
  readonly rows?: number;
  /** For lists: the first of these rows, from 0. */
  readonly row?: number;
}

/** Rows of lists are impossible and give NaN. */
export class DomainWarning extends RangeWarning {}

/** An argument or a document is wrong: `path` says where. */
export class DocumentError extends Error {
  readonly path: string;
  readonly value: unknown;
  readonly problem: string;
  readonly allowed: string;
}

/**
 * Sets what is done with a warning. Without a handler, or with `null`,
 * `console.warn` tells each once for a function and an argument.
 *
 * @returns the handler that was set before
 */
export function onRangeWarning(handler: ((warning: RangeWarning) => void) | null): ((warning: RangeWarning) => void) | null;

/**
 * Calls a function by name, such as `"farm.Plan"`. The wrappers
 * `herd`, `forage`, `rainfall` and `grazing` are easier to read.
 *
 * @throws {ReferenceError} where there is no function of the name
 */
export function call(name: string, given?: object): unknown;

/** A formula with its numbers put in. */
export interface Step {
  /** As in `"forage.Available"`. */
  function: string;
  /** The name of what is computed. */
  result: string;
  /** The formula in names, or what it looks up. */
  symbols: string;
  /** The same with the numbers put in. */
  numbers: string;
  /** What turns the units of the numbers into those of the answer; `""` where they cancel. */
  factor: string;
  /** In the reader's units. */
  answer: string;
  /** In base units. */
  value: number;
  /** The keys of the sources. */
  source: string;
  /** The step in one line. */
  text: string;
}

/**
 * Shows a formula's work: its step with the numbers put in, as data, and in one
 * line as `text`.
 *
 * @param name of a formula, such as `"forage.available"`
 * @param given the formula's arguments
 * @param system whose units the reader takes; metric if left out
 */
export function showWork(name: string, given: object, system?: "metric" | "US"): Step;

/** How much memory the library holds, in bytes. */
export function memorySize(): number;
