import { drawnRowsInTurn, type DrawnRows, type RunsReached } from "../../src/drawn/drawnRows";
import type { Drawing } from "../../src/drawn/file/drawing";
import { readDrawing } from "../../src/drawn/file/readDrawing";
import { planLayers, type LayerPlan } from "../../src/drawn/layers";
import { DRAWING_UNITS, type DrawingUnit } from "../../src/drawn/units";
import { readRules } from "../../src/rules/rules";
import { fittingRule } from "../../src/shop/fittings/fittingRule";
import { readShoes } from "../../src/shop/shoe/shoeBook";
import { textOfBytes } from "./textOfBytes";

/** A drawing's file as it was chosen. */
export interface DrawingFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What a drawing says before its runs are laid out. */
export interface OpenedDrawing {
  /** Inches in a drawing unit; null where it does not say. */
  readonly unit: number | null;
  readonly layers: readonly LayerPlan[];
}

/** What a person says of a drawing, and the tables it is laid out with. */
export interface DrawingWishes {
  readonly unit: DrawingUnit;
  readonly layers: readonly LayerPlan[];
  readonly shoes: unknown[][] | null;
  readonly rules: unknown[][] | null;
}

/** @throws InputError for a file that is no drawing */
export function openDrawing({ name, bytes }: DrawingFile): { drawing: Drawing; opened: OpenedDrawing } {
  const drawing = readDrawing(textOfBytes(bytes), name);
  return { drawing, opened: { unit: drawing.unit, layers: planLayers(drawing) } };
}

/** The runs of a drawing, one after another. */
export const lookAtRuns = (drawing: Drawing, wishes: DrawingWishes): Generator<RunsReached, DrawnRows> =>
  drawnRowsInTurn(drawing, {
    unit: DRAWING_UNITS[wishes.unit],
    layers: wishes.layers,
    shoes: readShoes(wishes.shoes),
    fittings: fittingRule(readRules(wishes.rules)),
  });
