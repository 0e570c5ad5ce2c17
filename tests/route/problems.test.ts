import { pathProblems } from "../../src/route/problems";
import { onePull } from "../support/pulls";

test("a run whose legs hold their bends has no problems", () => {
  expect(pathProblems(onePull("up 4, east 8, up 4"))).toEqual([]);
});

// By hand, R 4: a 90 has a setback of 4; a 30 of 4 tan 15° = 1.0718; a 45 of 4 tan 22.5° = 1.6569; a 22.5 of 0.7956.
test.each([
  [
    "up 3, east 40",
    "step 2: the leg before the bend is 3 in. long, but its bends need 4 in. for their setbacks: 1 in. short.",
  ],
  [
    "up 40, east 3",
    "step 2: the leg after the bend is 3 in. long, but its bends need 4 in. for their setbacks: 1 in. short.",
  ],
  [
    "up 40, east 7.5, north 40",
    "steps 2 and 3: the leg from the bend to the bend is 7.5 in. long, but its bends need 8 in. for their setbacks: 0.5 in. short.",
  ],
  [
    "up 40, east 5, offset 6 up at 30, east 40",
    "steps 2 and 3: the leg from the bend to the offset is 5 in. long, but its bends need 5.0718 in. for their setbacks: 0.0718 in. short.",
  ],
  [
    "east 40, offset 1 up at 30, east 40",
    "step 2: the leg between bends 1 and 2 of the offset is 2 in. long, but its bends need 2.1436 in. for their setbacks: 0.1436 in. short.",
  ],
])("%p is told with its steps and what is missing", (route, problem) => {
  expect(pathProblems(onePull(route)).map(({ message }) => message)).toEqual([problem]);
});

test("every short leg is told, not only the first", () => {
  expect(pathProblems(onePull("up 3, east 7, north 2"))).toHaveLength(3);
});
