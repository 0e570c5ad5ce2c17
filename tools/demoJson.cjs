// The demo job as the pane reads it: one file beside it, made of the tables in workbench/demo when the pane is built.
const path = require("node:path");
const { transformFileSync } = require("@swc/core");

const folder = path.join(__dirname, "..", "workbench", "demo");
const FILES = {
  "ferryTerminal.ts": { demoRuns: "Runs", issuedRuns: "Issued" },
  "ferryTables.ts": {
    demoStock: "Stock",
    demoPrices: "Prices",
    demoLabor: "Labor",
    demoRules: "Rules",
    demoBench: "Bench",
    demoMade: "Made",
  },
};

/** What a file of plain data exports; such a file imports types only. */
function exportsOf(file) {
  const { code } = transformFileSync(path.join(folder, file), {
    module: { type: "commonjs" },
  });
  const module = { exports: {} };
  new Function("module", "exports", code)(module, module.exports);
  return module.exports;
}

/** Text of demo.json: for each table its rows, header row first. */
function demoJson() {
  const tables = Object.entries(FILES).flatMap(([file, names]) => {
    const found = exportsOf(file);
    return Object.entries(names).map(([name, table]) => [table, found[name]]);
  });
  return JSON.stringify(Object.fromEntries(tables));
}

module.exports = { demoJson, demoFolder: folder };
