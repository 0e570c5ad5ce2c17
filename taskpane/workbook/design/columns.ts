import { RACEWAYS } from "../../../src/raceway/raceway";
import { TRADE_SIZES } from "../../../src/raceway/tradeSize";
import { FORMATS, money, type Look } from "./look";

/** One column of a sheet we make. */
export interface ColumnDesign {
  header: string;
  /** [px], at 96 to the inch. */
  width: number;
  look: Look;
  /** Values to choose from; others may be typed. */
  list?: readonly string[];
  /** Said where the heading is selected. */
  note?: string;
  /** Out of sight until something stands in it, or somebody wants it. */
  hidden?: boolean;
}

/** What is said of a column beside its width. */
type Kind = Omit<ColumnDesign, "header" | "width">;

const plain: Kind = { look: {} };
const text: Kind = { look: { format: FORMATS.text } };
const words: Kind = { look: { format: FORMATS.text, wrap: true } };
const long: Kind = { look: { wrap: true } };
const right: Kind = { look: { align: "right" } };
const as = (format: string): Kind => ({ look: { format } });
const [inches, degrees, room, count] = [as(FORMATS.inches), as(FORMATS.degrees), as(FORMATS.room), as(FORMATS.count)];
const centered: Kind = { look: { align: "center" } };

/** Columns by their headers: the same header looks the same on every sheet. Money is added by the workbook's currency. */
const KINDS: Readonly<Record<string, readonly [width: number, kind: Kind]>> = {
  Run: [75, words],
  Job: [95, words],
  Area: [90, words],
  Raceway: [115, { look: { wrap: true }, list: RACEWAYS }],
  Size: [60, { look: { format: FORMATS.text, align: "center" }, list: TRADE_SIZES }],
  Route: [
    250,
    {
      ...words,
      note: `From the datum end, steps parted by commas: up 4', east 12' 6", offset 6 up at 30, ahead 8'`,
    },
  ],
  Quantity: [84, right],
  From: [
    105,
    {
      ...words,
      note: "Where the run begins. A name is one box; each J-1: one for every run of the row. Names with panel are no box; open is a stub.",
    },
  ],
  To: [
    105,
    {
      ...words,
      note: "Where the run ends. A name is one box, whatever ends there; each receptacle: one for every run of the row, by Quantity",
    },
  ],
  Conductors: [125, { ...words, note: "3 #12 THHN, 1 #12 THHN" }],
  Stick: [75, { ...right, note: "Length of a stick, where it is not 10': a number of inches, or 20'" }],
  Date: [95, { look: { format: FORMATS.date, align: "left" } }],
  Crew: [75, { look: { format: FORMATS.text, align: "center" } }],
  Fittings: [
    120,
    {
      look: {},
      list: ["set-screw", "compression", "threaded", "insulated", "set-screw, insulated", "compression, insulated"],
    },
  ],
  "Grounding bushing": [115, { look: {}, list: ["from", "to", "both"] }],
  Straps: [70, { ...right, note: "Straps you plan; checked against the code" }],
  Start: [
    120,
    { ...words, note: "Where the run begins: east, north and up of the job's own zero, as 100 0 96 or 8' 4\", 0, 8'" },
  ],
  Joints: [90, { ...words, note: "Where the run is coupled, from its datum end: 10', 20'" }],
  Rack: [
    110,
    {
      ...words,
      note: "4 at 3 north: four conduits, 3 in. center to center, the others north of the first where the run begins; the route is the first one's",
    },
  ],
  Where: [
    130,
    {
      look: { wrap: true },
      note:
        "exposed, concealed, buried, in concrete, wet, hot, parted by commas; of a buried run what is over it: under a road, under a " +
        "slab, dwelling driveway … In the ground and in concrete: no straps, no expansion fittings",
    },
  ],
  Cover: [75, { ...right, note: "Planned cover of a buried run: inches, or 2'" }],
  "Temperature change": [125, { ...right, note: "°F from coldest to hottest, where it is this run's own" }],
  Ambient: [80, { ...right, note: "Air around the run: °C, or 104 F" }],
  Breaker: [80, { ...right, note: "Amperes, or 600 A, 2 sets" }],
  "Check pull": [
    75,
    { ...centered, note: "Yes or no, or a friction such as 0.35: will its conductors pull? From 1/0 up unasked" },
  ],
  Phase: [75, text],
  Floor: [60, { look: { align: "center" }, note: "1 for the ground floor; the Factors table may go by it" }],
  Height: [
    70,
    { look: { align: "center" }, note: "Of the work above the floor, feet; the Factors table may go by it" },
  ],
  Alternate: [
    95,
    { ...text, note: "A name such as A1, or not A1 for what it takes the place of; a rule says which are in the job" },
  ],
  Typical: [
    95,
    { ...text, note: "A room or floor that is built many times; in Rules, Typical and its name say how many" },
  ],
  "Length in.": [95, { ...inches, note: "Developed length of the conduit; follows by formula" }],
  Bends: [70, count],
  Degrees: [80, { ...degrees, note: "The most between two boxes; follows by formula" }],
  Check: [280, long],
  // Shoes
  "Made for": [90, { ...words, note: "A shoe made for another size: 1, or RMC 1" }],
  Radius: [85, { ...inches, note: "Centerline, finished, at 90°" }],
  Deduct: [85, { ...inches, note: "Back of the 90 to the arrow's mark" }],
  Springback: [100, { ...degrees, note: "Of a 90" }],
  "Dial from": [75, degrees],
  "Dial to": [75, degrees],
  "Dial start": [75, degrees],
  "Shortest tail": [85, inches],
  "Second test": [100, { ...words, note: "Angle and dial of another test bend, as 30 at 31.5" }],
  Measured: [130, long],
  // Lists
  Length: [85, { ...right, note: "A number of inches, or 10'" }],
  "On hand": [75, { ...right, note: "How many of this length; empty: as many as you buy" }],
  Item: [300, long],
  Unit: [85, long],
  Operation: [170, words],
  Minutes: [80, as(FORMATS.minutes)],
  Rule: [310, long],
  Value: [150, { look: { format: FORMATS.text, align: "right", wrap: true } }],
  Source: [420, long],
  Setting: [160, plain],
  Note: [300, long],
  "What it is": [440, long],
  Result: [220, { look: { format: "0.0###", align: "left" } }],
  "As it is written": [520, long],
  // Bid
  "Job cost": [230, text],
  Line: [190, text],
  Of: [
    190,
    {
      look: { format: FORMATS.text, wrap: true },
      note: "Lines above it, parted by commas; empty: all above. Per hour: the part of the hours, 20 %",
    },
  ],
  Column: [90, plain],
  Percent: [75, plain],
  Worker: [170, text],
  Number: [75, plain],
  Burden: [80, plain],
  Work: [250, long],
  "By factors": [85, as(FORMATS.hours)],
  "Hours in all": [90, as(FORMATS.hours)],
  Basis: [380, long],
  // Made
  Piece: [75, text],
  Good: [65, right],
  Scrapped: [90, right],
  By: [80, text],
  Bend: [60, centered],
  "Dial reached": [80, degrees],
  "Angle measured": [90, degrees],
  Shape: [90, text],
  Id: [80, text],
  // Results
  Weight: [65, plain],
  Finding: [430, long],
  Fix: [360, long],
  Carrying: [75, count],
  "Base A": [65, as(FORMATS.count)],
  Adjustment: [92, as(FORMATS.hours)],
  "Air °C": [60, centered],
  Correction: [90, as(FORMATS.hours)],
  "Ampacity A": [92, as(FORMATS.hours)],
  "Terminals A": [95, count],
  "Allowed A": [80, as(FORMATS.hours)],
  "Largest breaker A": [95, count],
  "Least ground": [85, { look: { align: "center" } }],
  "Fill %": [65, as(FORMATS.quantity)],
  "Feed from": [120, long],
  "Tension lb": [85, count],
  "Sidewall lb/ft": [90, count],
  "Of limit %": [80, count],
  "Cut length": [100, inches],
  "Cut 1/16": [98, right],
  Kind: [120, long],
  Mark: [100, inches],
  "Mark 1/16": [98, right],
  "Line up": [60, plain],
  Hook: [55, plain],
  Angle: [62, degrees],
  Dial: [62, degrees],
  Turn: [210, long],
  Plane: [70, degrees],
  Pull: [50, centered],
  "Handbook off": [95, inches],
  Step: [50, centered],
  "Room above": [76, room],
  "Room below": [76, room],
  "Room beside": [76, room],
  "Reach behind": [76, room],
  "Reach ahead": [76, room],
  Verdict: [240, long],
  Extension: [105, plain],
  Hours: [75, as(FORMATS.hours)],
  "Hours left": [75, as(FORMATS.hours)],
  List: [70, plain],
  Name: [270, long],
  Near: [220, long],
  Sticks: [60, centered],
  Cut: [330, long],
  "Left over": [125, long],
  Allowance: [170, text],
  Vendor: [110, text],
  Package: [110, text],
  Packages: [190, long],
  "To buy": [85, plain],
  Needed: [85, plain],
  For: [290, long],
  Drop: [105, text],
  "Drop to": [70, plain],
  Row: [60, { look: { align: "left" } }],
  Each: [85, as(FORMATS.hours)],
  Times: [65, right],
  Amount: [95, as(FORMATS.hours)],
  Change: [110, long],
  "Run or item": [280, long],
  "Column or unit": [110, long],
  Before: [250, { look: { format: FORMATS.quantity, wrap: true, align: "left" } }],
  After: [250, { look: { format: FORMATS.quantity, wrap: true, align: "left" } }],
  Difference: [100, as(FORMATS.quantity)],
  Made: [90, text],
  Pieces: [70, count],
  Standing: [190, long],
  "To do": [330, long],
  Straight: [95, inches],
  "Pieces needed": [80, count],
  "Pieces made": [80, count],
  "Pieces left": [80, count],
  "Pieces scrapped": [85, count],
  "Bends needed": [80, count],
  "Bends made": [80, count],
  "Bends left": [80, count],
};

const MONEY = ["Price", "Unit price", "Extension", "Cost"];

/** Changes of a column on one sheet. */
export interface Change extends Partial<Omit<ColumnDesign, "header">> {
  /** Money here, where the header alone does not say so. */
  money?: boolean;
}

/** The design of a column by its header; one that is none of ours is given room for its words. */
export function columnDesign(
  header: string,
  currency: string,
  { money: isMoney = MONEY.includes(header), ...change }: Change = {},
): ColumnDesign {
  const [width, kind] = KINDS[header] ?? [100, plain];
  const look = isMoney ? { format: money(currency) } : kind.look;
  return { header, width, ...kind, look, ...change };
}

/** True for a header that has a design of its own. */
export const isDesigned = (header: string): boolean => header in KINDS || MONEY.includes(header);
