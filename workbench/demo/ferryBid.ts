/** The demo job's bid. Every cost, rate and percent is invented for it; put your own in their place. */

type DemoCell = string | number | null;

export const demoCosts: readonly (readonly DemoCell[])[] = [
  ["Job cost", "Quantity", "Unit", "Price", "Area", "Note"],
  ["Permit and inspection", 1, "job", 640, null, "invented"],
  ["Scissor lift", 2, "week", 415, "Ticket hall", "invented"],
  ["Trenching, fuel pier", 150, "ft", 9.4, "Dock lighting", "invented"],
  ["Site trailer", 1.5, "month", 380, null, "invented"],
];

/** What hangs on no run. */
export const demoCounts: readonly (readonly DemoCell[])[] = [
  ["Item", "Unit", "Quantity", "Area", "Phase", "Note"],
  ["Gate reader", "each", 6, "Ticket hall", "2", "invented"],
  ["Exit sign", "each", 4, "Ticket hall", "2", "invented"],
  ["Floodlight on pole", "each", 5, "Dock lighting", "1", "invented"],
  ["Strut 1-5/8", "ft", 60, "Pump room", "1", "invented"],
];

export const demoAllowances: readonly (readonly DemoCell[])[] = [
  ["Allowance", "Of", "Value", "Unit", "Note"],
  ["Waste", "wire", 5, "%", "invented"],
  ["Lost", "fittings", 3, "%", "invented"],
  ["Spare", "Gate reader", 7, "minimum", "invented: one stays in the box"],
  ["Small hardware", null, 180, "lump sum", "invented"],
];

/** Packages, what lies in the store, and offers of two vendors, by item; invented. */
export const demoSupplies: Readonly<Record<string, Readonly<Record<string, string | number>>>> = {
  "#12 THHN conductor": {
    ...{ Package: "500, 1000, 2500", Vendor: "lowest", "Price by Vendor A": 0.155, "Quoted by Vendor A": "2026-04-02" },
    ...{ "Price by Vendor B": 0.149, "Quoted by Vendor B": "2026-03-20" },
  },
  "#10 THHN conductor": { Package: "500, 1000" },
  "EMT 1/2 strap": { Package: 50, "On hand": 35 },
  "EMT 1/2 set-screw connector": { Package: 25 },
  "RMC 3/4 locknut": { Package: 100, "On hand": 12 },
  "Exit sign": {
    ...{ Vendor: "Vendor A", "Price by Vendor A": 43.2, "Quoted by Vendor A": "2026-04-02" },
    ...{ "Price by Vendor B": 40.9, "Quoted by Vendor B": "2025-11-14" },
  },
};

export const demoCrews: readonly (readonly DemoCell[])[] = [
  ["Crew", "Worker", "Number", "Base", "Fringes", "Of that paid", "Burden", "Note"],
  ["A", "Bender", 1, 34, 11.2, 4, 9.1, "invented"],
  ["A", "Helper", 1, 22.5, 8.1, 3, 9.1, "invented"],
  ["B", "Foreman", 1, 41.5, 12.6, 4, 9.1, "invented"],
  ["B", "Electrician", 2, 36.8, 12.1, 4, 9.1, "invented"],
  ["B", "Apprentice", 1, 21.9, 8.4, 3, 9.1, "invented"],
];

export const demoFactors: readonly (readonly DemoCell[])[] = [
  ["Column", "Is", "Percent", "Note"],
  ["Area", "Pump room", 8, "invented: pipes in the way"],
  ["Area", "Dock lighting", 5, "invented: wind and tide"],
  ["Crew", "B", 2, "invented: a mixed crew"],
];

export const demoBid: readonly (readonly DemoCell[])[] = [
  ["Line", "Value", "Unit", "Of", "Note"],
  ["Job", "Ferry terminal, raceways and wire", "words", null, null],
  ["Bidder", "Demo bidder", "words", null, "invented, as every number below"],
  ["Date", "2026-04-14, due at 2 p.m.", "words", null, null],
  ["Material", null, "material", null, null],
  ["Sales tax", 7.5, "%", "Material", null],
  ["Labor", 49.01, "per hour", "90 %", "wage, fringes and burden of an hour"],
  ["Labor, overtime", 67.69, "per hour", "10 %", "Saturdays"],
  ["Direct job costs", null, "costs", null, "the Costs table"],
  ["Prime cost", null, "subtotal", null, null],
  ["Overhead", 12, "%", "Prime cost", null],
  ["Contingency", 3, "%", "Prime cost", null],
  ["Break-even", null, "subtotal", null, null],
  ["Profit", 8, "margin %", null, "8 % of the price, not on top of the cost"],
  ["Bond", 1.2, "%", null, null],
  ["Total", null, "total", null, null],
];

/** What the workbook has in place of two of those values: the loaded rate of a crew, by its formula. */
export const demoRates: Readonly<Record<string, string>> = {
  Labor: '=CONDUIT.CREW.RATE(Crews[#All],"B")',
  "Labor, overtime": '=CONDUIT.CREW.RATE(Crews[#All],"B","overtime")',
};
