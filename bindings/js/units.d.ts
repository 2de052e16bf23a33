import type { Quantity } from "./constants.js";

export * from "./constants.js";

/** A temperature from degrees Fahrenheit. */
export function fahrenheit(degrees: number): number;

/** A temperature from degrees Celsius, its base unit. */
export function celsius(degrees: number): number;

/** Reads text as a quantity: parse("Area", "3.5 ac") gives square metres. */
export function parse(quantity: Quantity, text: string): number;
export function parse(quantity: "Date" | "Money" | "FeedPrice", text: string): string;

/** Prints a quantity for people of a system; without one all digits in the base unit. */
export function show(quantity: Quantity | "Date" | "Money" | "FeedPrice", value: number | string, system?: "metric" | "US"): string;
