/**
 * The demo job, invented for this project: electrical raceways of a small ferry terminal.
 * Four areas, five raceways, every kind of bend, two runs whose elbows are bought, a rack, a conduit body and a flexible
 * piece; run DL-08 turns more than 360° between boxes and run PR-09 cannot be built, so that the checks have something to say.
 */

export const RUN_HEADERS = [
  "Run",
  "Job",
  "Area",
  "Raceway",
  "Size",
  "Route",
  "Quantity",
  "From",
  "To",
  "Conductors",
  "Date",
  "Crew",
  "Fittings",
  "Grounding bushing",
  "Where",
  "Temperature change",
  "Ambient",
  "Breaker",
  "Check pull",
  "Start",
  "Rack",
  "Phase",
] as const;

type DemoRun = readonly [
  run: string,
  area: "Ticket hall" | "Pump room" | "Dock lighting" | "Workshop",
  raceway: string,
  size: string,
  route: string,
  quantity: number,
  from: string,
  to: string,
  conductors: string,
];

const RUNS: readonly DemoRun[] = [
  ["TH-01", "Ticket hall", "EMT", "1/2", `up 10, east 8'`, 4, "Floor box", "Kiosk panel", "3 #12 THHN"],
  ["TH-02", "Ticket hall", "EMT", "1/2", `up 14, east 20, down 14`, 2, "Counter box 1", "Counter box 2", "3 #12 THHN"],
  [
    "TH-03",
    "Ticket hall",
    "EMT",
    "1/2",
    `east 3' 4-1/2", offset 6 up at 30, ahead 4'`,
    6,
    "Panel LP-1",
    "Gate reader",
    "4 #12 THHN",
  ],
  [
    "TH-04",
    "Ticket hall",
    "EMT",
    "3/4",
    `north 2', saddle 3 up at 45, ahead 4' 6"`,
    3,
    "Panel LP-1",
    "Ceiling box 3",
    "6 #12 THHN",
  ],
  [
    "TH-05",
    "Ticket hall",
    "EMT",
    "3/4",
    `east 6', saddle 4 up over 12 at 30, ahead 5'`,
    1,
    "Panel LP-1",
    "Ceiling box 4",
    "6 #12 THHN",
  ],
  [
    "TH-06",
    "Ticket hall",
    "EMT",
    "1",
    `up 4', east 12' 6", south 9', down 30`,
    1,
    "Panel LP-1",
    "Timetable board",
    "3 #6 THHN, 1 #10 THHN",
  ],
  [
    "TH-07",
    "Ticket hall",
    "EMT",
    "1/2",
    `up 8', box offset 1/2 north, ahead 10`,
    5,
    "Ceiling box 3",
    "Speaker box",
    "2 #14 THHN",
  ],
  [
    "TH-08",
    "Ticket hall",
    "EMT",
    "1/2",
    `east 7', bend 22.5 north, ahead 5'`,
    4,
    "Ceiling box 4",
    "each exit sign",
    "3 #12 THHN",
  ],
  [
    "TH-09",
    "Ticket hall",
    "EMT",
    "3/4",
    `up 9', east 21' 3", box, south 14', down 18`,
    1,
    "Panel LP-1",
    "Vending wall",
    "9 #12 THHN",
  ],
  [
    "TH-10",
    "Ticket hall",
    "EMT",
    "1/2",
    `up 3', offset 4 north 3 east at 45, ahead 2' 6"`,
    2,
    "Counter box 2",
    "Camera",
    "3 #14 THHN",
  ],
  [
    "TH-11",
    "Ticket hall",
    "EMT",
    "1-1/4",
    `up 6', east 24', down 4'`,
    2,
    "Panel LP-1",
    "Sign cabinet",
    "3 #4 THHN, 1 #8 THHN",
  ],
  [
    "PR-01",
    "Pump room",
    "RMC",
    "1",
    `up 24, east 9' 2", down 24`,
    2,
    "Starter P-1",
    "Pump P-1",
    "3 #8 THHN, 1 #10 THHN",
  ],
  [
    "PR-02",
    "Pump room",
    "RMC",
    "3/4",
    `up 5', north 13' 4", offset 8 up 12 east at 45, ahead 6'`,
    1,
    "Starter P-2",
    "Pump P-2",
    "3 #10 THHN, 1 #10 THHN",
  ],
  [
    "PR-03",
    "Pump room",
    "IMC",
    "3/4",
    `east 11', saddle 5 up at 60, ahead 9' 6"`,
    1,
    "Panel DP-1",
    "Starter P-1",
    "3 #8 THHN, 1 #10 THHN",
  ],
  [
    "PR-04",
    "Pump room",
    "IMC",
    "1",
    `up 40, sweep 24, east 8', south 5'`,
    1,
    "Panel DP-1",
    "Fan F-1",
    "3 #6 THHN, 1 #10 THHN",
  ],
  [
    "PR-05",
    "Pump room",
    "IMC",
    "1/2",
    `up 18, north 7' 8", bend 30 up, ahead 4'`,
    3,
    "Control panel",
    "Level switch",
    "6 #14 THHN",
  ],
  [
    "PR-06",
    "Pump room",
    "RMC",
    "1/2",
    `west 6' 2", offset 2-1/2 up at 22.5, ahead 3', down 20`,
    2,
    "Control panel",
    "Float valve",
    "4 #14 THHN",
  ],
  [
    "PR-07",
    "Pump room",
    "RMC",
    "1",
    `up 6', west 32', down 4'`,
    1,
    "Panel DP-1",
    "Starter P-2",
    "3 #4 THHN, 1 #8 THHN",
  ],
  [
    "PR-08",
    "Pump room",
    "RMC",
    "3/4",
    `to 0 0 60, to 84 0 60, to 120 48 60`,
    1,
    "Control panel",
    "Sump alarm",
    "4 #12 THHN",
  ],
  ["PR-09", "Pump room", "RMC", "1", `up 12, east 9, down 12`, 1, "Starter P-1", "Heater", "3 #10 THHN"],
  [
    "DL-01",
    "Dock lighting",
    "PVC-coated RMC",
    "3/4",
    `up 30, east 16', offset 5 north at 30, ahead 12'`,
    1,
    "Panel LP-2",
    "Pole 1",
    "3 #8 XHHW, 1 #10 THHN",
  ],
  ["DL-02", "Dock lighting", "RMC", "3/4", `up 20, south 42', down 20`, 3, "Pole 1", "Pole 2", "3 #8 XHHW"],
  [
    "DL-03",
    "Dock lighting",
    "RMC",
    "1/2",
    `south 9', saddle 2 up at 30, ahead 8' 3"`,
    4,
    "Pole 2",
    "Bollard",
    "3 #12 THHN",
  ],
  [
    "DL-04",
    "Dock lighting",
    "IMC",
    "3/4",
    `up 5', offset 3 east at 15, ahead 15', south 10'`,
    1,
    "Panel LP-2",
    "Gangway",
    "4 #10 THHN",
  ],
  [
    "DL-05",
    "Dock lighting",
    "IMC",
    "1",
    `east 27' 6", bend 45 north, ahead 10', bend 45 east, ahead 12'`,
    1,
    "Panel LP-2",
    "Ramp winch",
    "3 #4 THHN, 1 #8 THHN",
  ],
  [
    "DL-06",
    "Dock lighting",
    "EMT",
    "1",
    `up 7', east 13', saddle 6 up over 20 at 45, ahead 10', down 7'`,
    1,
    "Panel LP-2",
    "Canopy box",
    "8 #10 THHN",
  ],
  [
    "DL-07",
    "Dock lighting",
    "IMC",
    "1/2",
    `north 4', offset 10 up at 60, ahead 6' 4"`,
    2,
    "Canopy box",
    "Floodlight",
    "3 #12 THHN",
  ],
  [
    "DL-08",
    "Dock lighting",
    "RMC",
    "3/4",
    `up 4', east 10', south 6', east 8', offset 6 up at 30, ahead 5', down 3'`,
    1,
    "Panel LP-2",
    "Beacon",
    "3 #10 THHN",
  ],
  [
    "DL-09",
    "Dock lighting",
    "PVC 40",
    "1-1/2",
    `down 24, north 150', elbow 18, up 30`,
    1,
    "Panel LP-2",
    "Fuel pier box",
    "3 #6 XHHW, 1 #8 XHHW",
  ],
  ["WS-01", "Workshop", "EMT", "3/4", `up 5', east 15', south 8'`, 1, "Panel LP-3", "Bench box", "4 #12 THHN"],
  ["WS-02", "Workshop", "IMC", "3/4", `up 7', LB, north 9', down 40`, 1, "Panel LP-3", "Compressor", "3 #10 THHN"],
  [
    "WS-03",
    "Workshop",
    "EMT",
    "1/2",
    `up 6', west 10', flex 3' down 20 west 18`,
    1,
    "Panel LP-3",
    "Lathe",
    "3 #12 THHN",
  ],
];

/** When an area's runs are bent, and by whom. */
const BENDING: Record<DemoRun[1], readonly [date: string, crew: string]> = {
  "Ticket hall": ["2026-05-04", "A"],
  "Pump room": ["2026-05-06", "B"],
  "Dock lighting": ["2026-05-11", "B"],
  Workshop: ["2026-05-13", "A"],
};

/** Runs with fittings other than the usual, and where grounding bushings are asked for. */
const FITTINGS: Readonly<Record<string, string>> = { "TH-11": "compression, insulated", "DL-06": "compression" };
const GROUNDING: Readonly<Record<string, string>> = { "PR-01": "both", "PR-07": "from" };

/** What feeds them [A]; PR-03's is larger than its conductors carry. */
const BREAKERS: Readonly<Record<string, number>> = {
  ...{ "TH-01": 20, "TH-02": 20, "TH-03": 20, "TH-04": 20, "TH-05": 20, "TH-06": 50, "TH-07": 15, "TH-08": 20 },
  ...{ "TH-09": 20, "TH-10": 15, "TH-11": 70, "PR-01": 40, "PR-02": 30, "PR-03": 50, "PR-04": 50, "PR-05": 15 },
  ...{ "PR-06": 15, "PR-07": 70, "PR-08": 20, "DL-03": 20, "DL-04": 30, "DL-05": 70, "DL-06": 30, "DL-07": 20 },
  ...{ "WS-01": 20, "WS-02": 30, "WS-03": 20 },
};
/** The pier run lies open to the sun; the pump room is warm [°C]. */
const WHERE: Readonly<Record<string, string>> = { "DL-09": "exposed", "PR-01": "exposed, hot" };
const TEMPERATURE_CHANGE: Readonly<Record<string, number>> = { "DL-09": 60 };
const AMBIENT: Readonly<Record<string, number>> = { "PR-01": 40 };
const CHECK_PULL: Readonly<Record<string, string>> = { "PR-07": "yes" };

/** The ticket hall is wired in two phases: before the tiles and after them. */
const SECOND_PHASE = ["TH-06", "TH-07", "TH-08", "TH-10", "TH-11"];
const phaseOf = (run: string): string => (SECOND_PHASE.includes(run) ? "2" : "1");

/** Where each begins: east, north and up of the ticket hall's southwest corner at the floor [in]. */
const STARTS: Readonly<Record<string, string>> = {
  ...{ "TH-01": "120 60 0", "TH-02": "200 20 30", "TH-03": "6 0 60", "TH-04": "0 6 60", "TH-05": "6 3 66" },
  ...{ "TH-06": "0 -3 72", "TH-07": "2 125 66", "TH-08": "150 9 66", "TH-09": "3 -6 72", "TH-10": "222 20 30" },
  ...{ "TH-11": "-3 -9 72", "PR-01": "60 600 0", "PR-02": "0 630 20", "PR-03": "-250 590 60", "PR-04": "-250 596 70" },
  ...{ "PR-05": "-120 650 60", "PR-06": "-126 655 66", "PR-07": "-256 586 70", "PR-08": "-114 655 60" },
  ...{ "PR-09": "66 606 0", "DL-01": "500 0 48", "DL-02": "880 -20 6", "DL-03": "884 -540 6", "DL-04": "500 6 54" },
  ...{ "DL-05": "506 12 42", "DL-06": "506 18 60", "DL-07": "800 24 54", "DL-08": "506 -6 42", "DL-09": "500 12 30" },
  ...{ "WS-01": "-700 0 60", "WS-02": "-706 6 60", "WS-03": "-706 -18 66" },
};

/** Three conduits side by side, 3 in. center to center. */
const RACKS: Readonly<Record<string, string>> = { "WS-01": "3 at 3 south" };

const JOB = "Ferry terminal";

type RunCell = string | number | null;

const siteOf = (run: string): RunCell[] =>
  [FITTINGS, GROUNDING, WHERE, TEMPERATURE_CHANGE, AMBIENT, BREAKERS, CHECK_PULL, STARTS, RACKS].map(
    (column) => column[run] ?? null,
  );

/** The Runs table of the demo job, header row first. */
export const demoRuns: readonly (readonly RunCell[])[] = [
  RUN_HEADERS,
  ...RUNS.map(([run, area, ...rest]) => {
    return [run, JOB, area, ...rest, ...BENDING[area], ...siteOf(run), phaseOf(run)];
  }),
];

/** The runs as they were issued before two changes: TH-03 had a lower rise and DL-07 was not there yet. */
export const issuedRuns: readonly (readonly RunCell[])[] = demoRuns
  .filter(([run]) => run !== "DL-07")
  .map((row) => (row[0] === "TH-03" ? row.map(lowerRise) : row));

function lowerRise(cell: RunCell): RunCell {
  return typeof cell === "string" ? cell.replace("offset 6 up", "offset 4 up") : cell;
}
