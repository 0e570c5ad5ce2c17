/** Section numbers as read in NEC 2023 and in the California Electrical Code 2022 (NEC 2020). */
import { InputError } from "../../src/units/errors";
import { degreesLimitRule, nameRule, radiusRule, readEdition, ruleInWords } from "../../src/raceway/code/rules";

test.each([
  ["EMT", "358"],
  ["IMC", "342"],
  ["RMC", "344"],
  ["PVC-coated RMC", "344"],
  ["Aluminum RMC", "344"],
  ["Stainless RMC", "344"],
  ["RTRC", "355"],
  ["FMC", "348"],
  ["LFMC", "350"],
  ["LFNC-A", "356"],
  ["LFNC-B", "356"],
  ["ENT", "362"],
  ["PVC 40", "352"],
  ["PVC 80", "352"],
] as const)("%s: article %s, whose sections moved between the editions", (raceway, article) => {
  expect(degreesLimitRule(raceway, 2020)).toMatchObject({ section: `${article}.26`, edition: 2020, limit: 360 });
  expect(degreesLimitRule(raceway, 2023)).toMatchObject({ section: `${article}.24(B)`, edition: 2023, limit: 360 });
  expect(radiusRule(raceway, 2020)).toMatchObject({ section: `${article}.24`, edition: 2020 });
  expect(radiusRule(raceway, 2023)).toMatchObject({ section: `${article}.24(A)`, edition: 2023 });
});

test("a rule is named by edition and section", () => {
  const rule = degreesLimitRule("EMT", 2023);
  expect(nameRule(rule)).toBe("NEC 2023, 358.24(B)");
  expect(ruleInWords(rule)).toBe(
    "NEC 2023, 358.24(B): Between pull points the bends of a run may add up to 360° at most.",
  );
});

test.each([
  [undefined, 2023],
  [null, 2023],
  ["", 2023],
  [2020, 2020],
  ["2020", 2020],
  [" NEC 2020 ", 2020],
  [2023, 2023],
])("edition %p is %i", (value, edition) => {
  expect(readEdition(value)).toBe(edition);
});

test.each([
  [2017, "edition must be 2020 or 2023; got 2017."],
  ["newest", 'edition must be 2020 or 2023; got "newest".'],
  [0, "edition must be 2020 or 2023; got 0."],
])("edition %p is refused", (value, message) => {
  expect(() => readEdition(value)).toThrow(new InputError(message));
});
