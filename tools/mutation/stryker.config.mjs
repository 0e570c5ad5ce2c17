// Mutation testing of a room that holds the trade's geometry (bends, geometry or shop):
//   MUTATION_ROOM=shop npm run mutate
// or of some of its files:
//   MUTATION_ROOM=shop npm run mutate -- --mutate "src/shop/marks.ts,src/shop/pieces.ts"
// The report goes to reports/mutation/. Never part of `npm test`: a room takes a quarter of an hour and more.
import process from "node:process";

/** Which tests judge which room: its own, and those that know its answers from elsewhere. */
const TESTS = {
  geometry: ["tests/geometry/*.test.ts", "tests/published/runGeometry.test.ts", "tests/simulator/*.test.ts"],
  bends: ["tests/bends/*.test.ts", "tests/published/bends.test.ts", "tests/functions/bend*.test.ts"],
  // The quick ones first: the random runs are only asked where they leave a mutant alive.
  shop: [
    ...["tests/shop/!(bendAgain).test.ts", "tests/drawing/drawShoe.test.ts"],
    ...["tests/shop/bendAgain.test.ts", "tests/simulator/*.test.ts"],
  ],
};
const room = process.env.MUTATION_ROOM ?? "bends";
if (!(room in TESTS)) throw new Error(`MUTATION_ROOM must be ${Object.keys(TESTS).join(", ")}; got ${room}.`);

export default {
  packageManager: "npm",
  testRunner: "mocha",
  plugins: ["@stryker-mutator/mocha-runner"],
  mutate: [`src/${room}/*.ts`],
  mochaOptions: {
    "no-config": true,
    require: ["./tools/mutation/jestWords.cjs"],
    spec: TESTS[room],
  },
  coverageAnalysis: "perTest",
  concurrency: 1,
  timeoutMS: 10000,
  timeoutFactor: 3,
  reporters: ["clear-text", "json", "progress-append-only"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: `reports/mutation/${room}.json` },
  ignorePatterns: ["dist", "docs", "taskpane", ".cache", ".git"],
};
