/** The words that stand on every ticket, on paper and in sheets, ready for translation. */
export const TICKET_LABELS = {
  piece: (piece: number, pieces: number) => `piece ${piece} of ${pieces}`,
  number: (number: number, of: number) => `ticket ${number} of ${of}`,
  printed: (day: string) => `printed ${day}`,
  make: (quantity: number) => `Make ${quantity}`,
  job: "Job",
  area: "Area",
  conduit: "Conduit",
  datumEnd: "Datum end",
  farEnd: "Far end",
  shoe: "Shoe",
  source: (source: string) => `The shoe's numbers: ${source}`,
  cut: "Cut",
  conductors: "Conductors",
  sawnEnds: "Sawn ends",
  crew: "Crew",
  date: "Date",
  issue: "Issue",
  tick: "Tick each when it is made",
  ofMany: (quantity: number) => `of ${quantity}`,
  by: "By",
  code: (piece: string) => `Code of ${piece}`,
  letters: { datum: "D", far: "F" },
  writeD: "write D on this end",
  marks: "Write D on the datum end. Put every mark on the straight stick first; measure each from D.",
  step: "Step",
  bendNumber: (number: number) => `bend ${number}`,
  lies: (step: number) => `How the conduit lies at the shoe in step ${step}`,
  lieWords: (end: string, lineUp: string) =>
    `End ${end} toward the hook at the left, the mark at the ${lineUp}, bending up.`,
  lie: "At the shoe",
  straight: "Straight: cut it, nothing to bend.",
  bend: "Bend",
  mark: "Mark",
  lineUp: "Line up",
  hook: "Hook",
  hookEnd: { datum: "D end", far: "F end" },
  dial: "Dial",
  turn: "Before it, turn the conduit",
  finished: (angle: string) => `finished ${angle}`,
  pastDial: "out of reach",
  shapeFlat: "Center lines, from the side",
  shape: "Center lines, bend 1 up, from behind",
  axes: ["left", "ahead", "up"] as const,
  checks: "Check the finished piece",
  coupledOn: "Coupled on:",
  caution: "Caution",
} as const;

/** More of them, for tickets on a worksheet. */
export const TICKET_SHEET_LABELS = {
  name: "Tickets",
  title: (job: string) => (job ? `Shop tickets, ${job}` : "Shop tickets"),
  continued: "continued",
  made: "Made from Runs as it stood. When a run changes, make the tickets again.",
  columns: ["Step", "Mark", "Line up", "Hook", "Dial", "Turn before it"],
  notMade: "Runs without tickets",
  issue: (issue: string) => `Issue ${issue}.`,
  straight: (count: number) =>
    count === 1
      ? "1 straight piece has no ticket: the cutting sheet at the end has it."
      : `${count} straight pieces have no ticket: the cutting sheet at the end has them.`,
} as const;

/** What stands on the cutting sheet. */
export const CUT_SHEET_LABELS = {
  title: "Cutting sheet",
  about: (kerf: string) =>
    `All sticks of a line together, one length after the other: this order saves settings of the stop. The saw takes ${kerf} with each cut; it is allowed for.`,
  total: "All together:",
  notCut: "Not in the plan",
} as const;

/** What stands on stickers. */
export const STICKER_LABELS = {
  name: "Stickers",
  count: (number: number, of: number, bends: number) =>
    `${number} of ${of} · ${bends === 0 ? "straight" : bends === 1 ? "1 bend" : `${bends} bends`}`,
} as const;
