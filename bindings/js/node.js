// The package for Node: soum.wasm is read from beside this file, at once.
import { readFileSync } from "node:fs";
import { imports, start } from "./core.js";

start(new WebAssembly.Instance(new WebAssembly.Module(readFileSync(new URL("./soum.wasm", import.meta.url))), imports));

export * from "./library.js";
