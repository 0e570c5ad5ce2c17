// Mutation testing of one room (bends, cutting, geometry, shop or takeoff):
//   MUTATION_ROOM=shop npm run mutate
// or of some of its files:
//   MUTATION_ROOM=shop npm run mutate -- --mutate "src/shop/shoe/marks.ts,src/shop/run/couplings.ts"
// The report goes to reports/mutation/. Never part of `npm test`: a room takes a quarter of an hour and more.
import process from "node:process";
import { fileURLToPath } from "node:url";

/** Which tests judge which room: its own, and those that know its answers from elsewhere. */
const TESTS = {
  geometry: ["tests/geometry/*.test.ts", "tests/published/runGeometry.test.ts", "tests/simulator/*.test.ts"],
  bends: ["tests/bends/**/*.test.ts", "tests/published/bends.test.ts", "tests/functions/bend*.test.ts"],
  // The quick ones first: the random runs are only asked where they leave a mutant alive.
  shop: [
    ...["tests/shop/**/!(bendAgain).test.ts", "tests/drawing/bench/drawShoe.test.ts"],
    ...["tests/shop/run/bendAgain.test.ts", "tests/simulator/*.test.ts"],
  ],
  // Without the demo's totals: they work the whole demo out while they are loaded, so that each change would have all
  // tests loaded anew.
  takeoff: [
    ...[
      "tests/takeoff/**/!(*Laws|demoTotals).test.ts",
      "tests/functions/takeoff.test.ts",
      "tests/functions/cuts.test.ts",
    ],
    "tests/takeoff/**/*Laws.test.ts",
  ],
  // Without what asks the whole solver for large plans: that judges the search, and takes a minute for each change.
  cutting: ["tests/cutting/!(laws|planCuts).test.ts"],
};
/** Of the cutting room only what is exact: the search is heuristic, and `npm run bench:cuts` judges it. */
const CUTTING_FILES = [
  ...["checking/verify", "checking/verifyBound", "checking/verifyPairs", "checking/verifyCounts"],
  ...["checking/verifyRest", "checking/toPlan", "memory"],
  ...["model/toModel", "model/grid", "model/kinds", "model/request", "model/counts"],
];
const room = process.env.MUTATION_ROOM ?? "bends";
if (!(room in TESTS)) throw new Error(`MUTATION_ROOM must be ${Object.keys(TESTS).join(", ")}; got ${room}.`);

export default {
  packageManager: "npm",
  testRunner: "mocha",
  // From the folder beside this file: mutation testing has packages of its own.
  plugins: [fileURLToPath(import.meta.resolve("@stryker-mutator/mocha-runner"))],
  mutate: room === "cutting" ? CUTTING_FILES.map((file) => `src/cutting/${file}.ts`) : [`src/${room}/**/*.ts`],
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
