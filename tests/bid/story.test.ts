/** The story of docs/bid.md, run: its tables in, its recap out. The numbers were worked out by hand, as the page tells. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { missingTable } from "../../src/takeoff/reports/missing";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { recapTable } from "../../src/bid/recap";

/** The tables of the page by their first header; cells that are numbers as numbers. */
function tablesOf(page: string): Map<string, (string | number)[][]> {
  const blocks = page.split(/\n\n+/).filter((block) => block.startsWith("|"));
  const tables = blocks.map((block) => {
    const lines = block.trim().split("\n").filter((line) => !/^\|[\s|-]+\|$/.test(line)); // prettier-ignore
    return lines.map((line) => line.split("|").slice(1, -1).map((cell) => cellOf(cell.trim()))); // prettier-ignore
  });
  return new Map(tables.map((table) => [`${table[0]![0]} ${table[0]![1]}`, table]));
}

const cellOf = (text: string): string | number => (text !== "" && !Number.isNaN(Number(text)) ? Number(text) : text);

const tables = tablesOf(readFileSync(join(__dirname, "../../docs/bid.md"), "utf8"));
const table = (name: string) => tables.get(name)!;
const lists = { prices: table("Item Unit"), labor: table("Operation Hours") };

test("the tables of the page give the recap of the page", () => {
  const given = { ...lists, factors: table("Column Is"), costs: table("Job cost Quantity") };
  expect(recapTable(table("Run Raceway"), table("Line Value"), given)).toEqual(table("Line Basis"));
});

test("its lists lack nothing, and an empty pair lacks every row of theirs", () => {
  expect(missingTable(table("Run Raceway"), lists)[1]![1]).toBe("nothing is missing");
  const missing = missingTable(table("Run Raceway")).slice(1).map(([, name]) => name); // prettier-ignore
  const names = [...lists.prices.slice(1), ...lists.labor.slice(1)].map(([name]) => name);
  expect(missing.sort()).toEqual(names.sort());
});

test("the room of the page is in the take-off of its areas as the page counts it", () => {
  const [headers, ...rows] = takeoff(table("Run Typical"), { rules: table("Rule Value"), by: "Area" });
  const counted = rows.map((row) => table("Area Item")[0]!.map((header) => row[headers!.indexOf(String(header))]));
  for (const row of table("Area Item").slice(1)) expect(counted).toContainEqual(row);
});
