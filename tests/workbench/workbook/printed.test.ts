import { columnsAsShown } from "../../../workbench/workbook/file/columnsAsShown";
import { withoutEmpty } from "../../../workbench/workbook/file/withoutEmpty";
import { hideEmptyColumns } from "../../../workbench/workbook/file/emptyColumns";
import { arialLines, arialWidth } from "../../../workbench/workbook/file/arial";
import { setUpContent } from "../../../workbench/workbook/content/jobContent";
import { withRowHeights } from "../../../workbench/workbook/file/dress";
import { writeXlsx } from "../../../workbench/workbook/file/writeXlsx";
import { partOf } from "./otherReader";

const facts = { title: "t", namespace: "CONDUIT" };

test("letters are as wide as Adobe's published metrics of Helvetica say", () => {
  // Core14 AFM, Helvetica: H 722, e 556, l 222, o 556, space 278, W 944.
  expect(arialWidth("Hello W", 1000)).toBe(722 + 556 + 222 + 222 + 556 + 278 + 944);
});

test("words go on in as many lines as they take, long ones broken", () => {
  // Of digits 556 wide, nine fit into 5,010 and eighteen take two lines; by hand.
  expect(arialLines("123456789", 1000, 5010)).toBe(1);
  expect(arialLines("123456789 123456789", 1000, 5010)).toBe(2);
  expect(arialLines("123456789123456789", 1000, 5010)).toBe(2);
  expect(arialLines("1\n\n2", 1000, 5010)).toBe(3);
});

/** Takeoff as it stands without prices and labor: four of its eight columns. */
const takeoff = () => {
  const [sheet] = setUpContent(["Takeoff"], {});
  const shown = [
    ["Item", "Unit", "Quantity", "Note"],
    ["EMT 1/2 conduit", "ft", 12.5, "one for each name in From and To"],
  ];
  return { ...sheet!, cells: shown.map((row) => row.map((value) => ({ value }))) };
};

test("a column that moved to the left on a result keeps its width, look and heading on paper", () => {
  const [printed] = columnsAsShown([takeoff()]);
  expect(printed!.columns.map(({ width }) => width)).toEqual([300, 85, 84, 420]);
  expect(printed!.columns[3]!.look).toEqual({ wrap: true });
  expect(printed!.cells[0]!.map((cell) => cell!.look!.align)).toEqual(["left", "left", "right", "left"]);
});

test("a sheet that is as it was designed, or is somebody's own, stays as it is", () => {
  const own = { ...takeoff(), name: "My prices" };
  const [whole] = setUpContent(["Checks"], {});
  expect(columnsAsShown([own, whole!])).toEqual([own, whole]);
});

test("tables nobody has written in and results that only wait leave no page; one row and a result do", () => {
  const sheets = setUpContent(["Runs", "Prices", "Labor", "Progress", "Schedule"], {
    rows: { Prices: [{ Item: "Box" }] },
  });
  const results = [
    ["Progress", [["Write what was made into Made, a row for each time: it is counted here."]]],
    [
      "Schedule",
      [
        ["Run", "Piece"],
        ["A", 1],
      ],
    ],
  ] as const;
  const worked = sheets.map((sheet) => {
    const shown = results.find(([name]) => name === sheet.name)?.[1];
    return shown ? { ...sheet, cells: shown.map((row) => row.map((value) => ({ value }))) } : sheet;
  });
  expect(withoutEmpty(worked).map(({ name }) => name)).toEqual(["Schedule", "Prices"]);
});

test("columns of Runs with nothing in them are out of sight on paper, and no others; other tables keep theirs", () => {
  const [runs, prices] = setUpContent(["Runs", "Prices"], {
    rows: { Runs: [{ Run: "A", Raceway: "EMT", Size: "1", Route: "up 4'", Crew: "B" }], Prices: [{ Item: "Box" }] },
  });
  const [printed, list] = hideEmptyColumns([runs!, prices!]);
  const shown = printed!.cells[0]!.filter((_, at) => !printed!.columns[at]!.hidden).map((cell) => cell!.value);
  const computed = ["Length in.", "Bends", "Degrees", "Check"];
  expect(shown).toEqual(["Run", "Raceway", "Size", "Route", "Crew", ...computed]);
  expect(printed!.cells).toEqual(runs!.cells);
  expect(list).toEqual(prices);
});

test("rows are as high as their words, and programs with other fonts may measure anew; words stand at the top", async () => {
  const [runs] = setUpContent(["Runs"], { rows: { Runs: [{ Run: "A", Route: "up 4', ".repeat(20) }, { Run: "B" }] } });
  const bytes = await writeXlsx(withRowHeights([runs!]), facts);
  const sheet = partOf(bytes, "xl/worksheets/sheet1.xml");
  const heights = [...sheet.matchAll(/<row r="(\d)"(?: ht="([\d.]+)")?>/g)].map(([, , height]) => Number(height ?? 0));
  expect(heights).toHaveLength(3);
  expect(heights[1]).toBeGreaterThan(40);
  expect(heights[2]).toBe(0);
  expect(sheet).not.toContain("customHeight");
  const styles = partOf(bytes, "xl/styles.xml");
  const used = new Set([...sheet.matchAll(/<c r="[A-Z]+[23]" s="(\d+)"/g)].map(([, style]) => Number(style)));
  const formats = [...styles.slice(styles.indexOf("<cellXfs")).matchAll(/<xf [^>]*?(?:\/>|>(.*?)<\/xf>)/g)];
  expect(used.size).toBeGreaterThan(1);
  for (const style of used) expect(formats[style]![1]).toContain('vertical="top"');
});
