/** Shapes a route text asks for, against values from outside. Tolerances are the printed places. */
import { arcsOf, onePull, partsOf } from "../support/pulls";
import { expectNear } from "../support/nearVectors";

const TWO_PLACES = 5e-3;
const FOUR_PLACES = 5e-5;
const FIVE_PLACES = 5e-6;

const offset = onePull("east 40, offset 6 up at 30, east 40", 4);

// Worked out independently of this code from setbacks and arcs: exact spacing = rise / sin A − gain.
test("the bends of an offset of 6 at 30° with R 4 start 11.9508 apart; the handbook's cosecant says 12", () => {
  const [first, second] = arcsOf(offset);
  expectNear([second!.from - first!.from], [11.9508], FOUR_PLACES);
  expectNear([partsOf(offset).legs[1]!], [12]);
});

test("that offset shrinks the run by 1.50930", () => {
  expectNear([partsOf(offset).developed - offset.points.at(-1)![0]], [1.5093], FIVE_PLACES);
});

// Same source: height 4 to the corner of the middle bend, which stands 0.3296 above its crest.
test("a three-bend saddle with its corner 4 high has 11.14159 from the first bend to the middle of the second", () => {
  const saddle = onePull(`east 40, saddle ${4 - 4 * (1 / Math.cos(Math.PI / 8) - 1)} up at 45, east 40`, 4);
  const [first, middle] = arcsOf(saddle);
  expectNear([middle!.from + middle!.length / 2 - first!.from], [11.14159], FIVE_PLACES);
});

test("the middle corner of a saddle 4 high at 45° with R 4 stands 0.3296 above 4", () => {
  expectNear([onePull("east 40, saddle 4 up at 45, east 40", 4).points[2]![2]], [4.3296], FOUR_PLACES);
});

// A public how-to page: sides of 8 and 12 roll into 14.42.
test("rises of 8 and 12 make a rolling offset of 14.42", () => {
  const [, first, second] = onePull("north 40, offset 8 up 12 east at 45, north 40").points;
  expectNear([Math.hypot(second![0] - first![0], second![2] - first![2])], [14.42], TWO_PLACES);
});

// Modern Residential Wiring (2015), p. 91: bends of about 5°, marks 6 apart; a rise of 6 sin 5° = 0.523 by hand.
test("a box offset of 0.523 at its usual angle has its corners 6 apart", () => {
  const { legs, bends } = partsOf(onePull("up 20, box offset 0.523 east, up 3"));
  expectNear([legs[1]!], [6], TWO_PLACES);
  expectNear(bends.map(({ angle }) => angle), [5, 5]); // prettier-ignore
});
