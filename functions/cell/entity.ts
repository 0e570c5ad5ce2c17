import type { ScheduleRow } from "../../src/shop/schedule/schedule";

/** The sets a card needs: entities as values of cells, and as results of functions. */
const NEEDED = [
  ["ExcelApi", "1.16"],
  ["CustomFunctionsRuntime", "1.4"],
] as const;

/** True where this Excel shows cards. False, too, where there is no Office at all. */
export function showsCards(): boolean {
  if (typeof Office === "undefined") return false;
  const requirements = Office.context?.requirements;
  return NEEDED.every(([set, version]) => requirements?.isSetSupported(set, version) === true);
}

/** A field of a card. */
export type Field = Excel.CellValue;

/** Fields under a heading, in order. */
export interface CardSection {
  readonly title: string;
  readonly fields: Readonly<Record<string, Field | undefined>>;
}

/**
 * A card as the value of a cell.
 *
 * @param text what the cell shows
 * @param value the same as a plain value: the field Value, which every function of the add-in takes for the card
 */
export function card(
  text: string,
  value: Field,
  title: string,
  sections: readonly CardSection[],
): Excel.EntityCellValue {
  const listed = sections.map(({ title: heading, fields }) => {
    const given = Object.entries(fields).filter((entry): entry is [string, Field] => entry[1] !== undefined);
    return { heading, given };
  });
  return {
    type: "Entity",
    text,
    properties: Object.fromEntries([["Value", value], ...listed.flatMap(({ given }) => given)]),
    layouts: {
      card: {
        title,
        sections: listed.map(({ heading, given }) => ({
          layout: "List",
          title: heading,
          properties: given.map(([name]) => name),
        })),
      },
    },
    provider: { description: "Raceway Ledger" },
  };
}

export const textField = (basicValue: string): Field => ({ type: "String", basicValue });

export const numberField = (basicValue: number): Field => ({ type: "Double", basicValue });

export const inchesField = (basicValue: number): Field => ({
  type: "FormattedNumber",
  basicValue,
  numberFormat: "0.000",
});

/** A column of numbers or words that spills; one alone is a value of its own, and of none there is no field. */
export function listField(cells: readonly Field[]): Field | undefined {
  if (cells.length === 0) return undefined;
  const [only] = cells;
  return cells.length === 1 && only ? only : { type: "Array", elements: cells.map((cell) => [cell]) };
}

/** A cell of the schedule as a field. */
export const scheduleField = (cell: ScheduleRow[keyof ScheduleRow]): Field =>
  typeof cell === "number" ? numberField(cell) : textField(cell);
