/** Lists that Excel offers while an argument is typed: each choice is one that its function takes. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { listedIn, withChoices, type Choices } from "../../tools/choices/choices";
import { loadBundle } from "../../workbench/engine/functions/customFunctions";

const dist = join(__dirname, "../../dist");
const metadata = JSON.parse(readFileSync(join(dist, "functions.json"), "utf8")) as {
  functions: { id: string; parameters: { name: string; type?: string; customEnumId?: string }[] }[];
  enums: Choices[];
};
const implementations = loadBundle(readFileSync(join(dist, "functions.js"), "utf8"));
const RUNS = [["Run", "Job", "Area", "Raceway", "Size", "Route"], ["A-1", "J", "North", "EMT", "1/2", "up 36, east 60"]]; // prettier-ignore
const MADE = [["Date", "Piece", "Good"], ["2026-11-02", "A-1/1", 1]]; // prettier-ignore
const BID = [["Line", "Value", "Unit"], ["Material", null, "material"], ["Total", null, "total"]]; // prettier-ignore
const LABOR = [["Operation", "Minutes"], ["conduit", 1]]; // prettier-ignore

/** Arguments that each function takes, so that one of them can be replaced by a choice. */
const ARGUMENTS: Record<string, unknown[]> = {
  DATA: ["EMT", "1", "outside diameter"],
  FILL: ["EMT", "1", "3 #12 THHN", "ratio", null, 2023],
  "FILL.SIZE": ["EMT", "3 #12 THHN"],
  SUPPORTS: ["EMT", "1", 300, null, "count", 2023],
  EXPANSION: ["PVC 40", 1200, 100, "change", 2023],
  PULLBOX: [[["3", "2"]], "angle", "size", 2023, "4/0"],
  "PULL.FACTOR": ["EMT", "2", 0.2, 3, "triangular", "factor"],
  "PULL.TENSION": ["east 600, north 60", "EMT", "1", 0.144, 1, 0.3],
  "PULL.LIMIT": [4, "4/0", null, "eye"],
  "BOX.FILL": ["6 #12", null, null, null, null, "volume", 2023],
  AMPACITY: ["12", 3, 30, null, "ampacity", null, 2023],
  "GROUND.SIZE": [50, "8", "1", null, "size", 2023],
  COVER: ["general", "RMC", "cover", 2023],
  "OFFSET.MULTIPLIER": [30, "table"],
  "JOB.BENDS": [RUNS, null],
  "JOB.PROGRESS": [RUNS, MADE, null],
  "JOB.TAKEOFF": [RUNS, null, null, null],
  "JOB.TRACE": [RUNS, "EMT 1/2 strap", null, null, null],
  "JOB.HOURS": [RUNS, LABOR, null, null],
  "JOB.RECAP": [RUNS, BID, null, null, null, null, null, null],
  "JOB.CHECKS": [RUNS, null, 2023],
};
const ROUTE = ["up 36, east 60", "EMT", "1"];

const chosen = metadata.functions.flatMap(({ id, parameters }) =>
  parameters.flatMap(({ name, customEnumId }, place) => (customEnumId ? [{ id, name, place, customEnumId }] : [])),
);

test.each(chosen)("$id takes every choice for $name", async ({ id, name, place, customEnumId }) => {
  const list = metadata.enums.find((each) => each.id === customEnumId)!;
  const args = ARGUMENTS[id] ?? ROUTE;
  expect(list.values.length).toBeGreaterThan(0);
  const ask = async (choice: unknown) => {
    const given = [...args];
    given[place] = choice;
    try {
      await implementations.get(id)!(...given);
      return "";
    } catch (error) {
      return (error as Error).message;
    }
  };
  // What is no choice is refused by the argument's name (its reader's word for it is "by", "item", "size" …).
  expect(await ask("no such thing")).not.toBe("");
  const refused: string[] = [];
  for (const value of list.values) {
    const choice = "numberValue" in value ? value.numberValue : value.stringValue;
    const message = await ask(choice);
    // A raceway may lack a size in the tables (#N/A), which is an answer; a choice the reader does not know is none.
    if (new RegExp(`^(${name}|code edition)\\b|must be one of|no column`, "i").test(message))
      refused.push(`${choice}: ${message}`);
  }
  expect(refused).toEqual([]);
});

test("raceway, size, edition, table, by, item and place have lists; arguments keep their type, so that all that was taken still is", () => {
  expect(new Set(chosen.map(({ name }) => name))).toEqual(
    new Set(["raceway", "size", "edition", "table", "by", "item", "place"]),
  );
  const types = metadata.functions
    .flatMap(({ parameters }) => parameters.filter((each) => each.customEnumId))
    .map((each) => each.type);
  expect(new Set(types)).toEqual(new Set(["any"]));
});

/** Microsoft, "Manually create JSON metadata for custom functions", enums, 2025-10-27. */
test("lists are as Microsoft's reference has them: ids of their own, names, and values of the list's type", () => {
  const ids = metadata.enums.map(({ id }) => id.toLowerCase());
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.length).toBeGreaterThan(15);
  for (const { type, values } of metadata.enums)
    for (const value of values) {
      expect(value.name).not.toBe("");
      expect(typeof (value as unknown as Record<string, unknown>)[`${type}Value`]).toBe(type);
    }
  expect(
    metadata.functions.every(({ parameters }) =>
      parameters.every(({ customEnumId }) => customEnumId === undefined || ids.includes(customEnumId.toLowerCase())),
    ),
  ).toBe(true);
});

test("a description is read as people read it", () => {
  expect(listedIn("ratio, limit, area [in²], fits (TRUE or FALSE) or rule; omitted: ratio")).toEqual([
    ...["ratio", "limit", "area", "fits", "rule"],
  ]);
  expect(listedIn("columns to count by: Job, Area, or none; omitted: Job")).toEqual(["Job", "Area", "none"]);
  expect(listedIn("name of the item as JOB.TAKEOFF shows it")).toEqual([]);
  expect(withChoices('{"functions":[{"id":"X.Y","parameters":[{"name":"angle"}]}]}')).not.toContain("customEnumId");
});
