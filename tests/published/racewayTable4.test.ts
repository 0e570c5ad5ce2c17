/** Inside diameters and areas against NEC chapter 9, table 4, whose source stands in data/necTable4.json. */
import { dimension, sizesOf } from "../../src/raceway/dimensions";
import { RACEWAYS } from "../../src/raceway/raceway";
import { readTradeSize } from "../../src/raceway/tradeSize";
import table4 from "./data/necTable4.json";

/** Areas are printed to a thousandth; the print's own columns differ by a little more among themselves [in²]. */
const PRINT = 0.0011;

/** The print has one table for EMT of steel and of aluminum and one for RMC of every metal. */
const printOf = {
  ...table4.rows,
  "Aluminum EMT": table4.rows.EMT,
  "Aluminum RMC": table4.rows.RMC,
  "Stainless RMC": table4.rows.RMC,
};

/** It has none for a coat, and none for RTRC. */
const PRINTED = RACEWAYS.flatMap((raceway) => (raceway === "PVC-coated RMC" || raceway === "RTRC" ? [] : [raceway]));

const rows = PRINTED.flatMap((raceway) =>
  Object.entries(printOf[raceway]).map(([size, [inside, total, ...parts]]) => ({
    raceway,
    size: readTradeSize(size),
    inside: inside!,
    total: total!,
    parts,
  })),
);

test("RTRC has no bore in the print: what fills it is not known", () => {
  expect(sizesOf("RTRC")).toEqual(sizesOf("RMC"));
  expect(() => dimension("RTRC", "2", "insideDiameter")).toThrow("No inside diameter is listed for RTRC 2.");
  expect(() => dimension("RTRC", "2", "area")).toThrow("No area is listed for RTRC 2.");
});

test("every row of the print is there, and no other", () => {
  expect(rows.length).toBe(66 + 2 * 12 + 10 + 10 + 6 + 6 + 6);
  for (const raceway of PRINTED) {
    const printed = rows.filter((row) => row.raceway === raceway).map(({ size }) => size);
    expect([...sizesOf(raceway)].sort()).toEqual(printed.sort());
  }
});

test.each(rows)("$raceway $size has the printed diameter and area", ({ raceway, size, inside, total }) => {
  expect(dimension(raceway, size, "insideDiameter")).toEqual({ value: inside, source: "NEC table 4" });
  expect(dimension(raceway, size, "area")).toEqual({ value: total, source: "NEC table 4" });
});

test.each(rows)("$raceway $size: the area is π/4·d², and its parts are the printed ones", (row) => {
  const inside = dimension(row.raceway, row.size, "insideDiameter").value;
  const area = dimension(row.raceway, row.size, "area").value;
  expect(Math.abs((Math.PI / 4) * inside ** 2 - area)).toBeLessThan(PRINT);
  expect(row.parts).toHaveLength(4);
  [0.6, 0.53, 0.31, 0.4].forEach((part, index) => {
    expect(Math.abs(part * area - row.parts[index]!)).toBeLessThan(PRINT);
  });
});

test("PVC-coated RMC has the bore of RMC", () => {
  expect(sizesOf("PVC-coated RMC")).toEqual(sizesOf("RMC"));
  expect(dimension("PVC-coated RMC", "1-1/4", "insideDiameter")).toEqual({ value: 1.394, source: "RMC inside" });
  expect(dimension("PVC-coated RMC", "1-1/4", "area")).toEqual({ value: 1.526, source: "RMC inside" });
});
