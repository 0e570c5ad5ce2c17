import type { Part } from "../types";
import { blanksPart } from "./blanks";
import { guidePart } from "./guide";
import { limitsPart } from "./limits";
import { sheetsPart } from "./sheets";
import { speedPart } from "./speed";
import { spellingPart } from "./spelling";
import { spillsPart } from "./spills";
import { tablesPart } from "./tables";

/** The trial's parts in their order; each works on a sheet of its own, and one that breaks stops no other. */
export const PARTS: readonly Part[] = [
  guidePart,
  blanksPart,
  spillsPart,
  tablesPart,
  spellingPart,
  sheetsPart,
  speedPart(100),
  speedPart(1000),
  limitsPart,
];
