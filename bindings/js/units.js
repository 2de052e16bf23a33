// Units: the constants, made when the package is built, and the ways between
// numbers and text.
import { call, numberOf } from "./core.js";

export * from "./constants.js";

/** A temperature from degrees Fahrenheit. */
export const fahrenheit = (degrees) => (degrees - 32) / 1.8;

/** A temperature from degrees Celsius, its base unit. */
export const celsius = (degrees) => degrees;

/**
 * Reads text as a quantity: parse("Area", "3.5 ac") gives square metres. Dates
 * and money stay text.
 */
export function parse(quantity, text) {
  const value = call("units.parse", { quantity, text });
  return ["Date", "Money", "FeedPrice"].includes(quantity) ? value : numberOf(value);
}

/**
 * Prints a quantity for people of a system, "metric" or "US"; without one all
 * digits in the base unit, so that parse reads it back.
 */
export function show(quantity, value, system = "") {
  return call("units.show", { quantity, value: Number.isNaN(value) ? null : value, system });
}
