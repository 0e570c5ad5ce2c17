/** Expansion of PVC: NEC 2023, 352.44(A) and its table, as read: 3.38e-5 in. per inch and °F; change of 100 ft in inches. */
import { expansion, expansionRule, takesExpansionFitting } from "../../src/raceway/code/expansion";

/** The table's column is rounded to a hundredth [in]. */
const PRINT = 0.006;

test.each([
  [5, 0.2],
  [25, 1.01],
  [40, 1.62],
  [100, 4.06],
  [140, 5.68],
  [200, 8.11],
])("a change of %f °F changes 100 ft by %f in.", (degrees, inches) => {
  expect(Math.abs(expansion("PVC 40", 1200, degrees) - inches)).toBeLessThan(PRINT);
  expect(Math.abs(expansion("PVC 80", 1200, -degrees) + inches)).toBeLessThan(PRINT);
});

/** The metric table gives millimeters per meter: 3.04 for 50 °C, 6.08 for 100 °C. */
test.each([
  [50, 3.04],
  [100, 6.08],
])("a change of %f °C changes a meter by %f mm", (celsius, millimeters) => {
  const inches = expansion("PVC 40", 1000 / 25.4, celsius * 1.8);
  expect(Math.abs(inches * 25.4 - millimeters)).toBeLessThan(PRINT);
});

test("1/4 in. takes a fitting, less does not, whichever way it goes", () => {
  expect(expansionRule("PVC 40", 2023)).toMatchObject({ limit: 0.25, section: "352.44(A)", edition: 2023 });
  expect(expansionRule("PVC 80", 2020)).toMatchObject({ limit: 0.25, section: "352.44", edition: 2020 });
  expect([0.25, -0.25, 0.2499, -0.2499, 1].map((change) => takesExpansionFitting(change))).toEqual([
    true,
    true,
    false,
    false,
    true,
  ]);
});

/**
 * Steel: Steel Tube Institute, table 3, expansion of steel conduit and tubing, in inches for 100 ft, as read (its row of 55 °F has
 * 0.44 and is left out: a slip, 0.43). The code's note: a fifth of PVC's for steel, two fifths for aluminum.
 */
test.each([
  [5, 0.04, 0.2],
  [25, 0.2, 1.01],
  [50, 0.39, 2.03],
  [60, 0.47, 2.43],
  [100, 0.78, 4.06],
  [150, 1.17, 6.08],
  [200, 1.56, 8.11],
])("%f °F: 100 ft of steel move %f in., a fifth of PVC's %f; aluminum two fifths", (degrees, inches, pvc) => {
  for (const raceway of ["EMT", "IMC", "RMC", "PVC-coated RMC"] as const) {
    expect(Math.abs(expansion(raceway, 1200, degrees) - inches)).toBeLessThan(PRINT);
  }
  // "A nominal number": 4 % less than the coefficients say.
  expect(expansion("RMC", 1200, degrees) / (0.2 * pvc)).toBeCloseTo(0.96, 1);
  expect(expansion("Aluminum EMT", 1200, degrees) / (0.4 * pvc)).toBeCloseTo(0.96, 1);
});

// forums.mikeholt.com 25560: EMT of 120 in. from 6 to 99 °F, 0.072 in. A PVC maker's sheet: 10 ft over 100 °F, about 3/8 in.
test("worked examples: EMT over 93 °F, PVC over 100 °F", () => {
  // Printed to a thousandth, cut off: 0.07254.
  expect(Math.floor(expansion("EMT", 120, 93) * 1000)).toBe(72);
  expect(Math.abs(expansion("PVC 40", 120, 100) - 3 / 8)).toBeLessThan(1 / 16);
});

test("the rule of metal names no limit", () => {
  expect(expansionRule("RMC", 2023)).toMatchObject({ section: "300.7(B)", edition: 2023 });
  expect(expansionRule("Aluminum EMT", 2020)).not.toHaveProperty("limit");
});
