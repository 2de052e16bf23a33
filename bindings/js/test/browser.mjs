// Opens a page in a headless browser and reads its answer.
//
//   node browser.mjs FOLDER BROWSER PLAYWRIGHT [untyped]
//
// untyped: the server does not know what a .wasm file is, as some do not.
import assert from "node:assert/strict";
import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { pathToFileURL } from "node:url";

const [folder, browser, playwright, untyped] = process.argv.slice(2);
const types = { ".html": "text/html", ".js": "text/javascript", ...(untyped ? {} : { ".wasm": "application/wasm" }) };

const server = createServer((request, response) => {
  const path = normalize(decodeURIComponent(new URL(request.url, "http://x").pathname));
  const file = join(folder, path.endsWith("/") ? `${path}index.html` : path);
  if (!file.startsWith(folder) || !existsSync(file) || !statSync(file).isFile()) {
    response.writeHead(404).end();
    return;
  }
  response.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream" });
  createReadStream(file).pipe(response);
});
await new Promise((ready) => server.listen(0, "127.0.0.1", ready));

const { default: drive } = await import(pathToFileURL(join(playwright, "index.js")));
const chromium = await drive.chromium.launch({
  executablePath: browser,
  args: ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});
try {
  const page = await chromium.newPage();
  const faults = [];
  page.on("pageerror", (fault) => faults.push(String(fault)));
  await page.goto(`http://127.0.0.1:${server.address().port}/`);
  await page.waitForFunction(() => document.querySelector("#answer").textContent !== "…", null, { timeout: 60000 }).catch(() => {});
  const answer = await page.textContent("#answer");
  assert.deepEqual(faults, []);
  assert.equal(
    answer,
    "They want 67.5 lb/day; 1,000 lb/ac stand above what is left, of which 80 % are eaten in a day.\nThat is 0.0844 ac: a strip of 36.8 ft.",
  );
  console.log(answer);
} finally {
  await chromium.close();
  server.close();
}
