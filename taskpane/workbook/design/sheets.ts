import { RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { SHOE_COLUMNS } from "../../../src/shop/shoe/readShoe";
import { RUN_GROUP_NAMES } from "../../../src/takeoff/amounts/groupBy";
import { MADE_COLUMNS } from "../../../src/made/records/madeTable";
import type { ItemName, TableName } from "../items";
import { ALLOWANCE_UNITS } from "../../../src/takeoff/allowances/allowanceTable";
import { BID_UNITS } from "../../../src/bid/bidTable";
import { RUN_FORMULAS } from "./formulas";
import { columnDesign, type Change, type ColumnDesign } from "./columns";
import { FORMATS } from "./look";

/** A column of a sheet: its header, or its header with what is different here. */
type Listed = string | readonly [header: string, change: Change];

const hidden = (header: string): Listed => [header, { hidden: true }];
const wide = (header: string, width: number): Listed => [header, { width }];
const number = (header: string, width: number): Listed => [header, { width, look: { align: "center" } }];

/** Columns of Runs that many jobs never fill: out of sight until something stands in them. */
export const SELDOM = [
  ...["Stick", "Date", "Crew", "Fittings", "Grounding bushing", "Straps", "Start", "Joints", "Rack"],
  ...["Where", "Cover", "Temperature change", "Ambient", "Breaker", "Check pull"],
  ...["Phase", "Floor", "Height", "Alternate", "Typical"],
];
const SELDOM_MADE = ["Crew", "Raceway", "Size", "Shape", "Id"];

/** Ours first, in this order; whatever else the functions read follows, so that every column they read is offered. */
const inOrder = (first: readonly string[], columns: readonly { name: string }[]): string[] => [
  ...first,
  ...columns.map(({ name }) => name).filter((name) => !first.includes(name)),
];

/** Columns that people fill in; those that follow by formula stand right of them. */
export const INPUTS: Readonly<Record<TableName, readonly string[]>> = {
  Runs: inOrder(
    ["Run", "Job", "Area", "Raceway", "Size", "Route", "Quantity", "From", "To", "Conductors"],
    RUN_COLUMNS,
  ),
  Made: inOrder(
    ["Date", "Piece", "Good", "Scrapped", "By", "Bend", "Dial reached", "Angle measured", "Note"],
    [...MADE_COLUMNS],
  ),
  Issued: RUN_COLUMNS.map(({ name }) => name),
  // What a run's length reads stands together at the left.
  Shoes: inOrder(["Raceway", "Size", "Made for", "Radius", "Deduct"], SHOE_COLUMNS),
  Bench: ["Setting", "Value", "Note"],
  Stock: ["Raceway", "Size", "Length", "On hand", "Price", "Note"],
  Prices: ["Item", "Unit", "Price", "Package", "On hand", "Vendor"],
  Labor: ["Operation", "Minutes", "Hours", "Unit"],
  Counts: ["Item", "Unit", "Quantity", "Area", "Phase", "Floor", "Height", "Alternate", "Typical", "Note"],
  Factors: ["Column", "Is", "Percent", "Note"],
  Crews: ["Crew", "Worker", "Number", "Base", "Fringes", "Of that paid", "Burden", "Note"],
  Rules: ["Rule", "Value", "Unit", "Source"],
  Costs: ["Job cost", "Quantity", "Unit", "Price", "Area", "Alternate", "Note"],
  Bid: ["Line", "Value", "Unit", "Of", "Note"],
  Allowances: ["Allowance", "Of", "Value", "Unit", "Note"],
  "One bend": ["What it is", "Result", "As it is written"],
};

const seldom = (headers: readonly string[], names: readonly string[]): Listed[] =>
  headers.map((header) => (names.includes(header) ? hidden(header) : header));

const takeoff: readonly Listed[] = [
  "Item",
  "Unit",
  ["Quantity", { look: { format: FORMATS.quantity, align: "right" } }],
  "Unit price",
  "Extension",
  "Minutes",
  "Hours",
  wide("Note", 420),
];
const bends: readonly Listed[] = ["Bends", "Hours", wide("Note", 320)];

/** Units of prices and labor to choose from. */
const UNITS = ["each", "ft", "C", "M"];
const MONEY_AN_HOUR = ["Base", "Fringes", "Of that paid"];

const recap: readonly Listed[] = ["Line", "Basis", ["Amount", { width: 120, money: true }]];
/** Columns for the areas of a bid, which are called as the areas are. */
const AREAS: readonly Listed[] = Array.from({ length: 5 }, () => ["", { width: 115, money: true }] as const);

const SHEETS: Readonly<Record<ItemName, readonly Listed[]>> = {
  Runs: [...seldom(INPUTS.Runs, SELDOM), ...Object.keys(RUN_FORMULAS)],
  Made: seldom(INPUTS.Made, SELDOM_MADE),
  Issued: seldom(inOrder(INPUTS.Runs, []), SELDOM),
  Shoes: INPUTS.Shoes.map((header) => (header === "Source" ? wide(header, 330) : header)),
  Bench: [...INPUTS.Bench.slice(0, 2), wide("Note", 420)],
  Stock: INPUTS.Stock,
  Prices: [
    "Item",
    ["Unit", { list: UNITS, note: "each, ft, C (100), M (1000); C ft and M ft by the foot" }],
    "Price",
    [
      "Package",
      {
        width: 110,
        hidden: true,
        note: "Sizes it is sold in, whole: 50, or 500, 1000. What is left over has a line of its own",
      },
    ],
    ["On hand", { hidden: true, note: "How many or how many feet are there; the order takes them off" }],
    [
      "Vendor",
      {
        hidden: true,
        width: 110,
        note: "A vendor or lowest, out of your columns Price by …; their quotes' days stand in Quoted by …",
      },
    ],
  ],
  Labor: [
    ["Operation", { width: 240 }],
    "Minutes",
    ["Hours", { note: "In place of minutes: hours for the Unit, such as 4.5 for C ft" }],
    ["Unit", { list: UNITS, note: "each or ft where it is empty; C (100), M (1000), C ft and M ft by the foot" }],
  ],
  Counts: [
    "Item",
    ["Unit", { list: ["each", "ft"], note: "each where it is empty, or ft" }],
    ...INPUTS.Counts.slice(2, -3),
    ...["Alternate", "Typical"].map(hidden),
    wide("Note", 240),
  ],
  Factors: [
    ["Column", { list: RUN_GROUP_NAMES, note: "The column of Runs that the percent goes by" }],
    ["Is", { width: 130, look: { align: "left" }, note: "The word in that column; a number counts from there up" }],
    ["Percent", { look: { align: "right" }, note: "Added to the hours: 13 for 13 %" }],
    wide("Note", 360),
  ],
  Crews: [
    ...["Crew", "Worker", ["Number", { look: { align: "center" } }]],
    ...MONEY_AN_HOUR.map((header): Listed => [header, { width: 100, money: true }]),
    ["Burden", { look: { align: "right" }, note: "Taxes and insurance, percent of what is paid" }],
    wide("Note", 300),
  ] as readonly Listed[],
  Rules: INPUTS.Rules,
  Costs: seldom(INPUTS.Costs, ["Alternate"]),
  Bid: [
    "Line",
    ["Value", { width: 110, look: { align: "right" }, note: "8.25 for 8.25 %; dollars for per hour and lump sum" }],
    ["Unit", { width: 95, list: BID_UNITS, note: "% is a markup on Of; margin % is that share of the price" }],
    "Of",
    wide("Note", 360),
  ],
  Allowances: [
    ["Allowance", { width: 170 }],
    ["Of", { note: "An item by its name, or its class: wire, fittings, straps, boxes, conduit; empty: all" }],
    [
      "Value",
      { width: 90, look: { align: "right" }, note: "5 for 5 %; pieces or feet for a minimum; money for a lump sum" },
    ],
    ["Unit", { width: 100, list: ALLOWANCE_UNITS }],
    wide("Note", 320),
  ],
  "One bend": INPUTS["One bend"],
  Checks: [wide("Run", 90), "Weight", wide("Rule", 230), "Finding", "Fix"],
  Circuits: [
    ...[
      wide("Run", 90),
      wide("Conductors", 150),
      "Carrying",
      "Base A",
      "Adjustment",
      "Air °C",
      "Correction",
      "Ampacity A",
    ],
    ...["Terminals A", "Allowed A", wide("Breaker", 90), "Largest breaker A", "Least ground", "Fill %"],
    ...[wide("Feed from", 120), "Tension lb", "Sidewall lb/ft", "Of limit %", wide("Verdict", 220)],
  ],
  Schedule: [
    ...["Run", number("Piece", 50), "Cut length", number("Bend", 50), wide("Kind", 130), "Mark"],
    ...["Line up", "Hook", "Angle", "Dial", wide("Turn", 170), hidden("Plane"), wide("Note", 190)],
    ...[number("Quantity", 72), hidden("Pull"), "Cut 1/16", "Mark 1/16", hidden("Handbook off")],
    ...[hidden("Job"), hidden("Area"), wide("Raceway", 90), wide("Size", 50), "Step"],
  ],
  "Set-up": [
    ...["Run", number("Piece", 50), "Step", number("Bend", 50), "Mark", "Line up", "Hook", "Dial", wide("Turn", 190)],
    ...["Room above", "Room below", "Room beside", "Reach behind", "Reach ahead", "Verdict"],
  ],
  "Cutting plan": [
    ...[
      wide("Raceway", 95),
      "Size",
      "Sticks",
      wide("Stick", 105),
      wide("Cut", 300),
      "Left over",
      wide("For", 260),
      wide("Note", 260),
    ],
    ...["Drop", "Drop to"],
  ],
  Takeoff: takeoff,
  Missing: [
    ...["List", "Name", "Unit", ["Quantity", { look: { format: FORMATS.quantity } }], wide("Finding", 380), "Near"],
  ] as const,
  "Takeoff by area": ["Area", "Phase", ...takeoff],
  Order: [
    ...["Item", "Unit"],
    ...["Needed", "On hand", "To buy"].map((header): Listed => [
      header,
      { width: 85, look: { format: FORMATS.quantity, align: "right" } },
    ]),
    wide("Packages", 190),
    ["Left over", { width: 85, look: { format: FORMATS.quantity, align: "right" } }],
    wide("Note", 380),
  ] as readonly Listed[],
  "Change order": [
    ...["Change", wide("Item or line", 290), "Unit"],
    ...["Before", "After", "Difference"].map((header): Listed => [
      header,
      { width: 90, look: { format: FORMATS.hours, align: "right" } },
    ]),
    ["Unit price", {}],
    ["Amount", { width: 100, money: true }],
    "Hours",
    wide("Note", 330),
  ] as readonly Listed[],
  "Labor hours": [
    ...["Area", "Work", "Unit", ["Quantity", { look: { format: FORMATS.quantity } }], "Hours", "By factors"],
    "Hours in all",
  ] as readonly Listed[],
  Recap: recap,
  "Recap by area": [...recap, ...AREAS],
  Overview: [
    ...[wide("Part", 130), wide("What", 210), "Unit"],
    ["Amount", { width: 95, look: { format: FORMATS.hours, align: "right" } }],
    wide("Note", 270),
  ] as readonly Listed[],
  Traced: [
    wide("Run", 230),
    wide("Row", 240),
    "Each",
    "Times",
    "Amount",
    wide("Note", 320),
    number("", 30),
    number("", 200),
  ],
  "Bend counts": ["Area", "Raceway", "Size", wide("Kind", 150), ...bends],
  "Shop load": ["Date", "Crew", "Raceway", "Size", ...bends],
  Progress: [
    ...["Job", "Raceway", "Size", "Pieces needed", "Pieces made", "Pieces left", "Pieces scrapped"],
    ...["Bends needed", "Bends made", "Bends left", "Hours left", wide("Note", 360)],
  ],
  Daily: ["Date", wide("Crew", 90), "Pieces made", "Pieces scrapped", "Bends made", "Pieces left"],
  Changes: ["Change", "Run or item", "Column or unit", "Before", "After", "Difference"],
  Standing: ["Made", "Shape", "Pieces", "Standing", wide("For", 110), "To do", "Straight"],
  "Rules in force": INPUTS.Rules,
};

/** The columns of a sheet as they are made, in their order. */
export const sheetColumns = (item: ItemName, currency: string): ColumnDesign[] =>
  SHEETS[item].map((listed) =>
    typeof listed === "string" ? columnDesign(listed, currency) : columnDesign(listed[0], currency, listed[1]),
  );

/** Columns at the left that stay in view. */
export const frozenColumns = (item: ItemName): number => (item === "Runs" || item === "Issued" ? 1 : 0);
