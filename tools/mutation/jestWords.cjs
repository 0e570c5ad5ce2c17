// Lets mocha run tests that are written for jest: `test`, `test.each`, `describe.each` and `expect`, by jest's own
// packages. Mocha loads the tests once and then only switches mutants, which is many times quicker.
const path = require("node:path");
const { bind } = require("jest-each");
const { expect } = require("expect");
require("../typescript.cjs");

const root = path.join(__dirname, "..", "..");

/**
 * Each test file is a suite of its own: mocha would run the tests outside of `describe` of all files first, and so the
 * slow ones of the last file before the quick ones of the first. A test file that cannot even be loaded is a test that
 * fails: without this a mutant that breaks it would be no result.
 */
const load = /** @type {(module: NodeModule, file: string) => void} */ (require.extensions[".ts"]);
require.extensions[".ts"] = (module, file) => {
  if (!file.endsWith(".test.ts")) return load(module, file);
  addEach();
  globalThis.describe(path.basename(file), () => {
    try {
      load(module, file);
    } catch (error) {
      globalThis.it("can be loaded", () => {
        throw error;
      });
    }
  });
};

/** Mocha makes its words anew for every file, without `each`. */
function addEach() {
  for (const word of ["describe", "it"]) globalThis[word].each ??= bind(globalThis[word], false);
}

/** Tests that count what their random runs came upon: they need all their runs. */
const COUNTS_RUNS = /covered every line-up|had both hooks|a low bench asks for/;

const test = (name, body) => (COUNTS_RUNS.test(name) ? undefined : globalThis.it(name, body));
test.each = bind(test, false);
Object.assign(globalThis, { test, expect });

// fast-check with the same properties, fewer runs each, always from one seed: a mutant is killed or survives by the
// tests and not by chance.
const MOST_RUNS = Number(process.env.MUTATION_RUNS ?? 50);
const fastCheck = require("fast-check");
const fewer = (given = {}) => ({ seed: 20261125, ...given, numRuns: Math.min(given.numRuns ?? 100, MOST_RUNS) });
const assert = (property, given) => fastCheck.assert(property, { ...fewer(given), endOnFailure: true });
const name = require.resolve("fast-check");
/** @type {NodeModule} */ (require.cache[name]).exports = {
  ...fastCheck,
  assert,
  default: { ...fastCheck.default, assert },
  __esModule: true,
};

require(path.join(root, "tests", "support", "customFunctions.ts"));
