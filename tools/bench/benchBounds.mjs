// What large and odd inputs cost: each is answered, or refused in words, within a second.

const HEADERS = ["Run", "Raceway", "Size", "Route", "Stick"];

/** A route of so many bends, each in another plane than the one before. */
const stairs = (bends, leg) =>
  Array.from({ length: bends + 1 }, (_, at) => `${["up", "east", "north"][at % 3]} ${leg}`).join(", ");

const oneRun = (route, stick = 120) => [HEADERS, ["A", "EMT", "1/2", route, stick]];
const filled = (rows, columns, cell) => Array.from({ length: rows }, () => Array.from({ length: columns }, () => cell));
const records = (count) => [
  ["Date", "Piece", "Good", "Raceway", "Size", "Dial reached", "Angle measured"],
  ...Array.from({ length: count }, (_, at) => [
    "2026-12-01",
    `R-${at}/1`,
    1,
    "EMT",
    "1/2",
    48 + (at % 40),
    45 + (at % 40),
  ]),
];
const bench = (above, height) => [
  ["Setting", "Value"],
  ["Room above", above],
  ["Shoe height", height],
];

/**
 * Each with the function's name, then what it is given; made before the clock starts.
 * @type {[title: string, id: string, given: (runsOf: (count: number) => unknown[][]) => unknown[]][]}
 */
const INPUTS = [
  ["8 bends on one piece, little room", "JOB.SETUP", () => [oneRun(stairs(8, 14), 480), null, bench(34, 30)]],
  ["10 bends on one piece, too little room", "JOB.SETUP", () => [oneRun(stairs(10, 14), 480), null, bench(20, 15)]],
  ["101 bends in one pull", "JOB.CHECKS", () => [oneRun(stairs(101, 24))]],
  ["5,000 shoes of one size", "JOB.CHECKS", () => [oneRun(stairs(2, 24)), shoes(5000)]],
  ["a box of 1,000 × 1,000 entries", "PULLBOX", () => [filled(1000, 1000, "2"), "angle"]],
  ["200,000 test bends", "BEND.SPRINGBACK.MODEL", () => [[["Angle", "Dial"], ...filled(200000, 2, 48)]]],
  ["200,000 records of made pieces", "SHOE.LEARN", () => [records(200000)]],
  ["100,000 runs", "JOB.CHECKS", (runsOf) => [runsOf(100000)]],
  [
    "200 runs in whole columns, 10 million cells",
    "JOB.CHECKS",
    (runsOf) => [[...runsOf(200), ...filled(1048375, 10, "")]],
  ],
  ["a list of a million lengths", "CUT.PLAN", () => [filled(1000, 1000, 10.5)]],
];

const shoes = (count) => [
  ["Raceway", "Size", "Radius", "Deduct"],
  ...Array.from({ length: count }, (_, at) => ["EMT", "1/2", 4, 5 + at / 10000]),
];

/** CPU time of each [ms], and the answer's rows or the words of the refusal. */
export function boundTimes(functionOf, runsOf, cpu) {
  return INPUTS.map(([title, id, given]) => {
    const args = given(runsOf);
    let words = "";
    const { cpu: spent } = cpu(() => {
      try {
        words = `${functionOf(id)(...args).length} rows`;
      } catch (error) {
        words = error.message;
      }
    });
    return [title, id, spent.toFixed(0), words.slice(0, 70)];
  });
}
