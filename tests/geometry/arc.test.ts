import { arcLength, cornerHeight, gain, setback } from "../../src/geometry/arc";
import { expectNear } from "../support/nearVectors";

// Derived by hand from right triangles: tan 45° = 1, tan 30° = 1/√3, 1/cos 45° = √2, 1/cos 30° = 2/√3.
test("a 90 of radius 4 has the setback, arc, gain and corner of a quarter circle", () => {
  expectNear(
    [setback(90, 4), arcLength(90, 4), gain(90, 4), cornerHeight(90, 4)],
    [4, 2 * Math.PI, 8 - 2 * Math.PI, 4 * (Math.SQRT2 - 1)],
  );
});

test("a 60 of radius 7 has those of a sixth of a circle", () => {
  const root = Math.sqrt(3);
  expectNear(
    [setback(60, 7), arcLength(60, 7), gain(60, 7), cornerHeight(60, 7)],
    [7 / root, (7 * Math.PI) / 3, 14 / root - (7 * Math.PI) / 3, 7 * (2 / root - 1)],
  );
});
