import { placeAt } from "../support/bentLine";

test("the integrator follows a straight, a quarter circle and a straight", () => {
  const end = placeAt([{ start: 3, angle: 90, radius: 4 }], 3 + 2 * Math.PI + 5);
  expect(end.x).toBeCloseTo(7, 10);
  expect(end.y).toBeCloseTo(9, 10);
  expect(end.heading).toBeCloseTo(90, 10);
});
