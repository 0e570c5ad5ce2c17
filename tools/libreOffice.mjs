// Opens written workbooks in LibreOffice, where it is installed, and compares what it shows with what was written:
// `node tools/libreOffice.mjs`. Not part of `npm test`, which needs nothing but Node.
import { execFileSync, spawnSync } from "node:child_process";
import fs from "node:fs";
import { createRequire } from "node:module";
import os from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import ExcelJS from "exceljs";
import { build } from "./build.mjs";
import { loadDrawPng } from "./pictures/load.mjs";

const load = createRequire(import.meta.url);
const samples = path.resolve(import.meta.dirname, "..", "docs", "samples");
/** LibreOffice works formulas of built-in functions out itself instead of trusting the results in the file. */
const recalculateAlways = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;
const keepResults = recalculateAlways.replace("<value>0<", "<value>1<");

/** Every sheet of a workbook as CSV, by name, exact numbers. */
function inLibreOffice(file, folder, recalculate) {
  const user = path.join(folder, "profile", "user");
  fs.mkdirSync(user, { recursive: true });
  fs.writeFileSync(path.join(user, "registrymodifications.xcu"), recalculate ? recalculateAlways : keepResults);
  const profile = `-env:UserInstallation=${pathToFileURL(path.join(folder, "profile"))}`;
  const filter = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";
  execFileSync("soffice", [profile, "--headless", "--convert-to", filter, "--outdir", folder, file], {
    stdio: "pipe",
    timeout: 180_000,
  });
  const start = `${path.basename(file, ".xlsx")}-`;
  const { readCsv } = load("../dist/tools/workbook.cjs");
  const names = fs.readdirSync(folder).filter((name) => name.startsWith(start) && name.endsWith(".csv"));
  return new Map(
    names.map((name) => [name.slice(start.length, -4), readCsv(fs.readFileSync(path.join(folder, name), "utf8"))]),
  );
}

function written(value) {
  if (value === null || value === undefined) return "";
  if (value instanceof Date) return value.toISOString().slice(0, 10);
  if (typeof value === "object") return written(value.error ?? value.result);
  return typeof value === "boolean" ? String(value).toUpperCase() : value;
}

/**
 * Cells that LibreOffice shows otherwise than the file has them; numbers may differ in the 13th digit. LibreOffice works
 * array formulas and formulas with errors out anew and does not know the add-in's functions, so those are passed over.
 */
async function differences(file, folder, recalculate) {
  const book = new ExcelJS.Workbook();
  await book.xlsx.readFile(file);
  const shown = inLibreOffice(file, folder, recalculate);
  const different = [];
  let compared = 0;
  for (const sheet of book.worksheets) {
    const rows = shown.get(sheet.name) ?? [];
    if (sheet.getCell("A1").formula) continue;
    // Rows without a word are not told.
    const filled = (sheet.getRows(1, sheet.rowCount) ?? []).filter((row) =>
      Object.values(row.values).some((value) => written(value) !== ""),
    );
    filled.forEach((row, place) =>
      row.eachCell((cell, column) => {
        if (cell.formula && typeof cell.result === "object" && "error" in cell.result) return;
        // The reader keeps a formula's result of 0 out of its value.
        const want = written(cell.formula ? cell.result : cell.value);
        const got = rows[place]?.[column - 1] ?? "";
        const same = typeof want === "number" ? Math.abs(Number(got) - want) <= 1e-12 * Math.abs(want) : got === want;
        compared += 1;
        if (!same) different.push(`${sheet.name}!${cell.address}: written ${want}, LibreOffice shows ${got}`);
      }),
    );
  }
  return { different, compared };
}

/** @throws Error with the first of the cells that differ */
async function compare(file, folder, recalculate) {
  const { different, compared } = await differences(file, folder, recalculate);
  process.stdout.write(`${path.basename(file)}: ${compared} cells compared, ${different.length} differ.\n`);
  if (different.length > 0) throw new Error(different.slice(0, 20).join("\n"));
  if (compared === 0) throw new Error(`${file}: LibreOffice shows nothing of it.`);
}

async function main() {
  if (spawnSync("soffice", ["--version"]).status !== 0) {
    process.stdout.write("LibreOffice is not installed: workbooks were not opened in it.\n");
    return;
  }
  await build(["functions", "tools"]);
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "workbooks-"));
  try {
    const { demoCsv, main: workbook } = load("../dist/tools/workbook.cjs");
    const draw = loadDrawPng();
    const csv = path.join(folder, "runs.csv");
    fs.writeFileSync(csv, demoCsv());
    const addIn = { id: "11111111-2222-4333-8444-555555555555", version: "7.8.9" };
    for (const [name, ...options] of [["plain", "--plain"], ["live"], ["offers-pane", "--offer-pane"]]) {
      const file = path.join(folder, `${name}.xlsx`);
      if ((await workbook([...options, csv, file], { draw, addIn })) !== 0) throw new Error(`${file} was not written.`);
      await compare(file, folder, name === "plain");
    }
    for (const name of fs.readdirSync(samples).filter((each) => each.endsWith(".xlsx")))
      await compare(path.join(samples, name), folder, false);
  } finally {
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

main().catch((error) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
});
