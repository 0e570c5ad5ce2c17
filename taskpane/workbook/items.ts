/** The tables and result sheets the pane sets up, and how they hang together. */
export type Cell = string | number | boolean;

export const TABLES = ["Runs", "Shoes", "Stock", "Prices", "Labor", "Rules", "Bench"] as const;
export type TableName = (typeof TABLES)[number];

export const RESULTS = ["Schedule", "Set-up", "Takeoff", "Bend counts", "Checks", "Cutting plan"] as const;
export type ResultName = (typeof RESULTS)[number];

export type ItemName = TableName | ResultName;
