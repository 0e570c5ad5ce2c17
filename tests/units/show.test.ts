import { showApart } from "../../src/units/show";

test.each<[limit: number, value: number, shown: [string, string]]>([
  [1.07179677, 1.0718, ["1.071797", "1.0718"]],
  [12, 3, ["12", "3"]],
  [0.5, 1e-308, ["0.5", "1e-308"]],
  [Infinity, 45, ["more than 1e308", "45"]],
])("a limit of %d and a value of %d are told apart", (limit, value, shown) => {
  expect(showApart(limit, value)).toEqual(shown);
});
