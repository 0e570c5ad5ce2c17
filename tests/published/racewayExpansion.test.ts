/** Expansion of PVC: NEC 2023, 352.44(A) and its table, as read: 3.38e-5 in. per inch and °F; change of 100 ft in inches. */
import { expansion, expansionRule, takesExpansionFitting } from "../../src/raceway/expansion";

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
  expect([0.25, -0.25, 0.2499, -0.2499, 1].map(takesExpansionFitting)).toEqual([true, true, false, false, true]);
});
