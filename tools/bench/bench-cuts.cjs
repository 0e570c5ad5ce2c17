// Measures the cutting plan: npm run bench:cuts -- [FOLDER …] [--seed N] [--count N] [--mip N] [--only TEXT]
require("../typescript.cjs");
require("../../tests/bench/cuts/bench.ts");
