/** Records of a bender added to the Made table: by hand. */
import { mergeMade } from "../../src/made/records/mergeMade";
import { readMade } from "../../src/made/records/madeTable";
import { MADE_HEADERS, readRecordsText, recordsText } from "../../src/made/records/recordsText";

const TABLE = [
  ["Id", "Date", "Piece", "Good", "Scrapped", "By", "Note", "My column"],
  ["k1", 46357, "A-1/1", 2, "", "Ida", "", "x"],
];
const text = (...records: Parameters<typeof recordsText>[0][number][]) => readRecordsText(recordsText(records));
// 46357 is 2026-12-01 (day 39448 is 2008-01-01; 18 years with five leap days and 334 days more).
const KNOWN = { Id: "k1", Date: "2026-12-01", Piece: "A-1/1", Good: 2, Scrapped: 0, By: "Ida" };

test("a new record is added under the table's own headers; what has no column there goes into Note", () => {
  const { rows, known, conflicts, refused } = mergeMade(
    TABLE,
    text({ Id: "k2", Date: "2026-12-02", Piece: "A-2", Good: 1, Shape: "GMP3-TN8Y", Note: "slow" }),
  );
  expect(rows).toEqual([["k2", "2026-12-02", "A-2", 1, "", "", "slow; Shape GMP3-TN8Y", null]]);
  expect([known, conflicts, refused]).toEqual([0, [], []]);
});

test("twice read is once counted: from the table, and within what is read", () => {
  const { rows, known, conflicts } = mergeMade(TABLE, text(KNOWN, { ...KNOWN, Id: "k3" }, { ...KNOWN, Id: "k3" }));
  expect(rows.map(([id]) => id)).toEqual(["k3"]);
  expect([known, conflicts]).toEqual([2, []]);
});

test("a record of the same Id that says something else is shown, and changes nothing", () => {
  const { rows, known, conflicts } = mergeMade(TABLE, text({ ...KNOWN, Good: 3, By: "Olu" }));
  expect([rows, known]).toEqual([[], 0]);
  expect(conflicts).toEqual([
    {
      id: "k1",
      differences: [
        { column: "Good", here: "2", there: "3" },
        { column: "By", here: "Ida", there: "Olu" },
      ],
    },
  ]);
});

test("a record without an Id is refused by its line, and hides no other", () => {
  const { rows, refused } = mergeMade(TABLE, text({ ...KNOWN, Id: "" }, { ...KNOWN, Id: "k9" }));
  expect(refused).toEqual(["line 2: it has no Id, so it cannot be told whether it was read before."]);
  expect(rows).toHaveLength(1);
});

test("a table without a column Id takes none: the next time they would count twice", () => {
  const { rows, refused } = mergeMade([["Piece", "Good"]], text(KNOWN));
  expect([rows, refused]).toEqual([[], ["line 2: the Made table has no column Id to keep k1 in."]]);
});

test("what is added reads as it was recorded", () => {
  const { rows } = mergeMade(
    [[...MADE_HEADERS]],
    text({ ...KNOWN, Bend: 2, "Dial reached": 93, "Angle measured": 90 }),
  );
  expect(readMade([[...MADE_HEADERS], ...rows])).toMatchObject({
    records: [{ piece: "A-1/1", good: 2, by: "Ida", date: "2026-12-01", measured: { bend: 2, dial: 93, angle: 90 } }],
    problems: [],
  });
});

test("a measured bend may count no piece; a row that says nothing is refused", () => {
  const { records, problems } = readMade([
    ["Piece", "Good", "Bend", "Dial reached", "Angle measured"],
    ["A-1", 0, 1, 93, 90],
    ["A-1", 0, "", "", ""],
  ]);
  expect(records).toHaveLength(1);
  expect(problems).toEqual(["made row 3: Good and Scrapped are both 0 or empty; write how many were made."]);
});

test("tabs and lines inside a cell become spaces; other text is refused with what it begins with", () => {
  expect(text({ ...KNOWN, Note: "two\nlines\tand a tab" })[1]).toContain("two lines and a tab");
  expect(() => readRecordsText("Dear all,\nthree pieces today")).toThrow(
    "records must begin with a line of headers with Piece, parted by tabs, as a bender's file has it; got Dear all,.",
  );
  expect(() => readRecordsText("")).toThrow("got nothing.");
  expect(() => readRecordsText("Piece\tGood\nA\t1")).toThrow("headers with Id");
});
