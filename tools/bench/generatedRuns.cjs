// Runs made up by a seeded generator, for benchmarks: the same on every machine.

/** A small linear congruential generator (Numerical Recipes' constants). */
function randomFrom(seed) {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * below);
  };
}

const DIRECTIONS = ["up", "north", "east", "down", "south", "west"];
const RACEWAYS = ["EMT", "IMC", "RMC"];
const SIZES = ["1/2", "3/4", "1"];
const ANGLES = [22.5, 30, 45];

/** A Runs table with `count` rows below its header row. */
function generatedRuns(count, seed = 20261125) {
  const random = randomFrom(seed);
  const pick = (list) => list[random(list.length)];
  const rows = [["Run", "Job", "Area", "Raceway", "Size", "Route", "Quantity", "From", "To", "Conductors"]];
  for (let index = 0; index < count; index++) {
    rows.push([
      `R-${index + 1}`,
      "Bench",
      `Area ${1 + random(12)}`,
      pick(RACEWAYS),
      pick(SIZES),
      route(random, pick),
      1 + random(4),
      `Panel ${1 + random(30)}`,
      `Box ${1 + index}`,
      random(3) === 0 ? "" : `${2 + random(3)} #12 THHN`,
    ]);
  }
  return rows;
}

function route(random, pick) {
  const length = (from, to) => from + random((to - from) * 16) / 16;
  let axis = random(3);
  const steps = [`${DIRECTIONS[axis + 3 * random(2)]} ${length(24, 90)}`];
  const legs = 1 + random(3);
  for (let leg = 0; leg < legs; leg++) {
    axis = (axis + 1 + random(2)) % 3;
    steps.push(`${DIRECTIONS[axis + 3 * random(2)]} ${length(60, 200)}`);
    const across = DIRECTIONS[(axis + 1) % 3];
    if (random(3) === 0) steps.push(`offset ${length(3, 9)} ${across} at ${pick(ANGLES)}`, `ahead ${length(40, 90)}`);
    else if (random(6) === 0) steps.push(`saddle ${length(2, 5)} ${across} at 45`, `ahead ${length(40, 90)}`);
  }
  return steps.join(", ");
}

module.exports = { generatedRuns };
