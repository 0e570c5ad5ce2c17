import { NotListedError } from "../../src/units/errors";
import { readConductors } from "../../src/wiring/readConductors";
import { fillOf, fillSize } from "../../src/wiring/fill";
import { sizesOf } from "../../src/raceway/dimensions";

test("areas of different conductors add up", () => {
  // By hand: 3 × 0.0211 + 0.0133 = 0.0766 in² in 0.533.
  const fill = fillOf("EMT", "3/4", readConductors("3 #10 THHN + 1 #12 THHN"), 2023);
  expect(fill.area).toBeCloseTo(0.0766, 12);
  expect(fill.ratio).toBeCloseTo(0.0766 / 0.533, 12);
  expect(fill.rule).toMatchObject({ limit: 0.4, section: "chapter 9, table 1", edition: 2023 });
});

test("all conductors are counted for the limit, not the kinds", () => {
  const limitOf = (text: string) => fillOf("EMT", "2", readConductors(text), 2023).rule.limit;
  expect(limitOf("1 #4 THHN")).toBe(0.53);
  expect(limitOf("2 #4 THHN")).toBe(0.31);
  expect(limitOf("1 #4 THHN + 1 #8 THHN")).toBe(0.31);
  expect(limitOf("2 #4 THHN + 1 #8 THHN")).toBe(0.4);
});

test("a nipple may be filled to 60 %, one a little longer may not", () => {
  // By hand: 13 × 0.0133 = 0.1729 in² of 0.304, 56.9 %.
  const conductors = readConductors("13 #12 THHN");
  expect(fillOf("EMT", "1/2", conductors, 2023, 24).fits).toBe(true);
  expect(fillOf("EMT", "1/2", conductors, 2023, 24.5).fits).toBe(false);
  expect(fillOf("EMT", "1/2", conductors, 2023).fits).toBe(false);
});

test("note 7 rounds up the number of conductors of one size alone", () => {
  // By hand: 40 % of 1.496 is 0.5984; 0.5984 / 0.0507 = 11.803, so 12 #6 fit; 12 × 0.0507 = 0.6084 in mixed sizes do not.
  expect(fillOf("EMT", "1-1/4", readConductors("12 #6 THHN"), 2023).fits).toBe(true);
  expect(fillOf("EMT", "1-1/4", readConductors("13 #6 THHN"), 2023).fits).toBe(false);
  expect(fillOf("EMT", "1-1/4", readConductors("11 #6 THHN + 1 #6 XHHW"), 2023).fits).toBe(false);
  // The same conductors written in two parts are still of one size.
  expect(fillOf("EMT", "1-1/4", readConductors("8 #6 THHN + 4 #6 THHN"), 2023).fits).toBe(true);
});

test("the size that is chosen fits, and the one below does not", () => {
  for (const text of ["3 #12 THHN", "4 #4 XHHW", "3 250 kcmil THHN + 1 #4 THHN", "2 500 kcmil XHHW"]) {
    const conductors = readConductors(text);
    const sizes = sizesOf("RMC");
    const place = sizes.indexOf(fillSize("RMC", conductors, 2023));
    expect(sizes.map((size) => fillOf("RMC", size, conductors, 2023).fits)).toEqual(
      sizes.map((_, index) => index >= place),
    );
  }
});

test("conductors that no size takes are told so", () => {
  // By hand: 12 × 0.7073 = 8.4876 in² of EMT 4's 14.753, 57.5 %.
  expect(() => fillSize("EMT", readConductors("12 500 kcmil THHN"), 2020)).toThrow(
    new NotListedError(
      "No listed size of EMT takes the conductors: they fill the largest, 4, to 57.5 %; " +
        "the limit is 40 % (NEC 2020, chapter 9, table 1).",
    ),
  );
  expect(fillSize("EMT", readConductors("12 500 kcmil THHN"), 2020, 24)).toBe("4");
});

test("a size the raceway is not made in is not listed", () => {
  expect(() => fillOf("IMC", "5", readConductors("3 #12 THHN"), 2023)).toThrow(
    new NotListedError("IMC is not listed in size 5; its sizes are 1/2, 3/4, 1, 1-1/4, 1-1/2, 2, 2-1/2, 3, 3-1/2, 4."),
  );
});
