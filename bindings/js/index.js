// The package for browsers: soum.wasm is fetched from beside this file.
import { imports, start } from "./core.js";

const url = new URL("./soum.wasm", import.meta.url);
const response = await fetch(url);
if (!response.ok) {
  throw new Error(`soum: ${url} could not be fetched: ${response.status} ${response.statusText}`);
}
// Compiling while it arrives needs a server that names the type.
const typed = /^application\/wasm\b/i.test(response.headers.get("content-type") ?? "");
const { instance } = typed
  ? await WebAssembly.instantiateStreaming(response, imports)
  : await WebAssembly.instantiate(await response.arrayBuffer(), imports);
start(instance);

export * from "./library.js";
