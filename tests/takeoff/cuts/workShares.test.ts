import { WorkShares } from "../../../src/takeoff/cuts/workShares";

test("each task may take an equal share of what is left, and leaves the rest to the next ones", () => {
  const shares = new WorkShares(10, 3);
  const given: number[] = [];
  const take = (used: number) => shares.next((steps) => (given.push(steps), { steps: used, name: `took ${used}` }));
  // 10 / 3, then 9 / 2, then all that is left.
  expect(take(1)).toEqual({ steps: 1, name: "took 1" });
  take(3);
  take(2);
  expect(given).toEqual([3, 4, 6]);
  // More tasks than were told of may take what is left; a task that took more leaves nothing, not less.
  take(7);
  take(0);
  expect(given).toEqual([3, 4, 6, 4, 0]);
});
