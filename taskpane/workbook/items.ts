/** The tables and result sheets the pane sets up, and how they hang together. */
export type Cell = string | number | boolean;

export const TABLES = [
  ...(["Runs", "Made", "Issued", "Shoes", "Bench", "Stock", "Prices", "Labor", "Rules", "One bend"] as const),
  ...(["Counts", "Factors", "Crews", "Costs", "Bid", "Allowances"] as const),
] as const;
export type TableName = (typeof TABLES)[number];

export const RESULTS = [
  ...(["Checks", "Circuits", "Schedule", "Set-up", "Cutting plan", "Takeoff", "Missing"] as const),
  ...(["Takeoff by area", "Order", "Traced", "Labor hours", "Recap", "Recap by area", "Change order"] as const),
  ...(["Overview", "Bend counts", "Shop load", "Progress", "Daily", "Changes", "Standing", "Rules in force"] as const),
] as const;
export type ResultName = (typeof RESULTS)[number];

export type ItemName = TableName | ResultName;

/** Every item as its tab stands in a workbook: in the order of the work, lists that seldom change last. */
export const TABS: readonly ItemName[] = [
  ...(["Runs", "Counts", "Checks", "Circuits", "Schedule", "Set-up", "Cutting plan", "Takeoff", "Missing"] as const),
  ...([
    "Takeoff by area",
    "Order",
    "Traced",
    "Labor hours",
    "Costs",
    "Bid",
    "Recap",
    "Recap by area",
    "Overview",
  ] as const),
  ...(["Bend counts", "Shop load", "Made", "Progress", "Daily", "Issued", "Changes", "Change order"] as const),
  ...([
    "Standing",
    "Shoes",
    "Bench",
    "Stock",
    "Prices",
    "Allowances",
    "Labor",
    "Factors",
    "Crews",
    "Rules",
    "Rules in force",
    "One bend",
  ] as const),
];

/** What a workbook does well without until somebody wants it. */
export const EXTRAS: readonly ItemName[] = [
  ...([
    "Circuits",
    "Missing",
    "Takeoff by area",
    "Traced",
    "Shop load",
    "Daily",
    "Issued",
    "Changes",
    "Standing",
  ] as const),
  ...([
    "Order",
    "Change order",
    "Factors",
    "Crews",
    "Labor hours",
    "Costs",
    "Bid",
    "Recap",
    "Recap by area",
    "Overview",
    "Rules in force",
    "One bend",
  ] as const),
];
