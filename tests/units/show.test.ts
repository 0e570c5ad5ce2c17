import { offsetAngle } from "../../src/bends/shapes/offsetAngle";
import { showApart } from "../../src/units/show";

test.each<[limit: number, value: number, shown: [string, string]]>([
  [1.07179677, 1.0718, ["1.071797", "1.0718"]],
  [12, 3, ["12", "3"]],
  [0.5, 1e-308, ["0.5", "1e-308"]],
  [Infinity, 45, ["more than 1e308", "45"]],
])("a limit of %d and a value of %d are told apart", (limit, value, shown) => {
  expect(showApart(limit, value)).toEqual(shown);
});

test("the least spacing of an offset and one a hair below it are told apart", () => {
  expect(() => offsetAngle(6, 6 - 1e-7)).toThrow(
    "spacing must be at least 6 in. for a rise of 6 in.; got 5.9999999 in.",
  );
  expect(() => offsetAngle(45, 45, 1e308)).toThrow(
    /^spacing must be at least more than 1e308 in\. for a rise of 45 in\./,
  );
});
