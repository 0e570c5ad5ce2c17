/** The demo job's bid. Every cost, rate and percent is invented for it; put your own in their place. */

type DemoCell = string | number | null;

export const demoCosts: readonly (readonly DemoCell[])[] = [
  ["Job cost", "Quantity", "Unit", "Price", "Area", "Note"],
  ["Permit and inspection", 1, "job", 640, null, "invented"],
  ["Scissor lift", 2, "week", 415, "Ticket hall", "invented"],
  ["Trenching, fuel pier", 150, "ft", 9.4, "Dock lighting", "invented"],
  ["Site trailer", 1.5, "month", 380, null, "invented"],
];

export const demoBid: readonly (readonly DemoCell[])[] = [
  ["Line", "Value", "Unit", "Of", "Note"],
  ["Job", "Ferry terminal, raceways and wire", "words", null, null],
  ["Bidder", "Demo bidder", "words", null, "invented, as every number below"],
  ["Date", "2026-04-14, due at 2 p.m.", "words", null, null],
  ["Material", null, "material", null, null],
  ["Sales tax", 7.5, "%", "Material", null],
  ["Labor", 61.4, "per hour", null, "wage, fringes and burden of an hour"],
  ["Direct job costs", null, "costs", null, "the Job costs table"],
  ["Prime cost", null, "subtotal", null, null],
  ["Overhead", 12, "%", "Prime cost", null],
  ["Contingency", 3, "%", "Prime cost", null],
  ["Break-even", null, "subtotal", null, null],
  ["Profit", 8, "margin %", null, "8 % of the price, not on top of the cost"],
  ["Bond", 1.2, "%", null, null],
  ["Total", null, "total", null, null],
];
