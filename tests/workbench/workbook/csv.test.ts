import fc from "fast-check";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { decodeText, readCsv, runsFromCsv, tableToCsv } from "../../../workbench/workbook";

describe("reading CSV", () => {
  /** RFC 4180, section 2, rules 5 to 7: quoted fields, line breaks and doubled quotes inside them. */
  test("quotes, commas and line breaks inside a cell", () => {
    expect(readCsv('Run,Route\r\nA-1,"up 4\', east 12\' 6"""\r\nA-2,"up 1\nnorth 2"\r\n')).toEqual([
      ["Run", "Route"],
      ["A-1", `up 4', east 12' 6"`],
      ["A-2", "up 1\nnorth 2"],
    ]);
  });

  test("semicolons and tabs part cells too, as in other countries and on the clipboard", () => {
    expect(readCsv('Run;Route\n"A;1";"up 4, east 5"')).toEqual([
      ["Run", "Route"],
      ["A;1", "up 4, east 5"],
    ]);
    expect(readCsv("Run\tRoute\nA-1\tup 4, east 5")).toEqual([
      ["Run", "Route"],
      ["A-1", "up 4, east 5"],
    ]);
  });

  test("a size stays the text it is", () => {
    expect(readCsv("Size,Quantity\n1/2,007\n3-4,1e3")).toEqual([
      ["Size", "Quantity"],
      ["1/2", "007"],
      ["3-4", "1e3"],
    ]);
  });

  test("a quote that is never closed is told with its line", () => {
    expect(() => readCsv('Run,Route\nA-1,up 4\nA-2,"up 5\nA-3,up 6')).toThrow(
      "line 3 opens a quote that is never closed.",
    );
  });

  test("bytes in UTF-8, UTF-16 and Windows-1252", () => {
    expect(decodeText(Buffer.from("\uFEFF½ in.", "utf8")).replace("\uFEFF", "")).toBe("½ in.");
    expect(decodeText(Buffer.from("\uFEFF½ in.", "utf16le")).replace("\uFEFF", "")).toBe("½ in.");
    expect(decodeText(Uint8Array.of(0xbd, 0x20, 0x69, 0x6e, 0x2e))).toBe("½ in.");
  });
});

describe("writing CSV", () => {
  test("whatever a cell holds comes back", () => {
    const cell = fc.string({ unit: fc.constantFrom(...`=+-@'"',;\t\r\n 1a½`), maxLength: 6 });
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { maxLength: 5 }), (rows) => {
        const table = [["Run", "Route"], ...rows];
        expect(readCsv(tableToCsv(table))).toEqual(table.filter((row) => row.some((text) => text.trim() !== "")));
      }),
    );
  });

  test("numbers are written in full and stay numbers, below zero too", () => {
    expect(tableToCsv([[1 / 3, -5, 1e21, true, null]])).toBe("\uFEFF0.3333333333333333,-5,1e+21,TRUE,\r\n");
  });
});

describe("runs from a file", () => {
  test("headers in any order and case; unknown columns are kept, worked-out ones left out", () => {
    const list = runsFromCsv("route,QTY,Trade size,Foreman,run,Conduit,Length\nup 4,3,1/2,Pat,A-1,EMT,99", "runs.csv");
    const at = (name: string) => list.rows[0]![list.headers.indexOf(name)];
    expect(["Run", "Raceway", "Size", "Route", "Quantity", "Foreman"].map(at)).toEqual([
      "A-1",
      "EMT",
      "1/2",
      "up 4",
      3,
      "Pat",
    ]);
    expect(list.headers).not.toContain("Length");
  });

  test("a missing column is named, with the headers that were read", () => {
    expect(() => runsFromCsv("Run,Size,Route\nA,1/2,up 4", "runs.csv")).toThrow(
      'runs.csv must have the column "Raceway"; the header row reads "Run", "Size", "Route".',
    );
  });

  test("a column that stands twice is named", () => {
    expect(() => runsFromCsv("Run,Raceway,Size,Route,Crew no,crew NO\n", "runs.csv")).toThrow(
      'runs.csv must name each column once; "crew NO" stands twice.',
    );
  });

  test("the demo job comes back as it was", () => {
    const { headers, rows } = runsFromCsv(tableToCsv(demoRuns), "demo.csv");
    // Every column the functions read is there; what the file lacks is empty.
    const places = demoRuns[0]!.map((header) => headers.indexOf(String(header)));
    expect([headers, ...rows].map((row) => places.map((place) => row[place]))).toEqual(demoRuns.map((row) => [...row]));
    expect(rows.map((row) => row[headers.indexOf("Straps")])).toEqual(rows.map(() => null));
  });
});
