import { lengthFor, readSizedLengths } from "../../src/rules/sizedLengths";

const at = (text: unknown, raceway: "EMT" | "PVC 40", size: "1/2" | "2" | "1-1/4") =>
  lengthFor(readSizedLengths(text, "rule"), raceway, size);

test("one length for all, or the nearest of several", () => {
  expect([at(0.5, "EMT", "2"), at(`3/4"`, "PVC 40", "1/2")]).toEqual([0.5, 0.75]);
  const text = `1/8; 2: 1/4; EMT: 3/8; EMT 2: 1-1/2\nPVC 40 1 1/4: 20 mm`;
  expect([at(text, "PVC 40", "1/2"), at(text, "PVC 40", "2"), at(text, "EMT", "1/2"), at(text, "EMT", "2")]).toEqual([
    0.125, 0.25, 0.375, 1.5,
  ]);
  expect(at(text, "PVC 40", "1-1/4")).toBeCloseTo(20 / 25.4, 12);
  expect(at("EMT: 1", "PVC 40", "2")).toBeUndefined();
});

test.each([
  ["", "rule is empty; write a length"],
  ["EMT 7/8: 1", 'rule is for a raceway, a size or both, as in EMT 1/2: 0.5; got "EMT 7/8".'],
  ["copper: 1", 'got "copper"'],
  ["EMT: 1: 2", "one colon in each part"],
  ["EMT: wide", "rule must be a length"],
  ["EMT: 300", "rule must be at most 100 in.; got 300 in."],
])("%s is refused in words", (text, words) => {
  expect(() => readSizedLengths(text, "rule", { max: 100 })).toThrow(words);
});
