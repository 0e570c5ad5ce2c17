import { createRequire } from "node:module";

const require = createRequire(import.meta.url);

/** What draws pictures, or undefined, with a word about it, where the canvas package does not run. */
export function loadDrawPng() {
  try {
    require("../typescript.cjs");
    return require("./drawPng.ts").drawPng;
  } catch (error) {
    process.stderr.write(`The tickets get no pictures: ${error.message}\n`);
    return undefined;
  }
}
