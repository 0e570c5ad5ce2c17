import { workShare } from "../../../src/takeoff/cuts/workShare";

test("tasks have equal shares of no more than all the work, which few changes in their number change", () => {
  // By hand: 1, 2, 4, 4, 8 and 8 parts of 900; a part is whole.
  expect([1, 2, 3, 4, 5, 8].map((tasks) => workShare(900, tasks))).toEqual([900, 450, 225, 225, 112, 112]);
  expect(workShare(900, 0)).toBe(900);
});
