import { remember } from "../../memory/remember";
import type { RuleBook } from "../../rules/rules";
import { placingsOf, type Placing } from "../../rules/typicals";
import { lookUpKey } from "../../units/names/lookUpKey";
import { MOST_OF_ONE, type Run, type RunRow } from "../run/runsTable";

/**
 * Where a typical is placed by the rules "Typical NAME" and "Typical NAME, AREA", how often in each; or in words why nowhere.
 */
export function placesOf(typical: string, { typicals }: RuleBook): readonly Placing[] | string {
  const placings = placingsOf(typicals, typical);
  if (placings.length === 0) {
    const nearly = typical.includes(",") ? "; the name of a typical has no comma" : "";
    return `typical ${typical} is placed nowhere: no rule Typical ${typical} says how many times${nearly}`;
  }
  const placed = placings.filter(({ times }) => times > 0);
  return placed.length > 0 ? placed : `typical ${typical} is placed 0 times by its rule`;
}

/**
 * The rows that a row of a typical stands for: one in each area where it is placed, its Quantity times as many; or in words
 * why there are none. Its name tells the area: A (North).
 */
export const placedRows: (row: RunRow, rules: RuleBook) => readonly RunRow[] | string = remember((row, rules) => {
  const { run, rowNumber, name } = row;
  if (!run?.typical) return [row];
  const places = placesOf(run.typical, rules);
  if (typeof places === "string") return places;
  const most = places.find(({ times }) => run.quantity * times > MOST_OF_ONE);
  if (most) {
    return `Quantity ${run.quantity}, placed ${most.times} times, is above ${MOST_OF_ONE}, the most of one run`;
  }
  return places.map(({ area, times }): RunRow => {
    const called = area === "" ? name : `${name} (${area})`;
    const placed: Run = {
      ...run,
      name: called,
      area: area || run.area,
      quantity: run.quantity * times,
      placed: times,
    };
    return { rowNumber, name: called, run: placed };
  });
});

/** Typicals that rules place and nothing belongs to, in words. @param used names of those that something belongs to */
export function idleTypicals({ typicals }: RuleBook, used: readonly string[]): string[] {
  const keys = new Set(used.map(lookUpKey));
  const idle = typicals.filter(({ typical }) => !keys.has(lookUpKey(typical)));
  return [...new Map(idle.map(({ typical }) => [lookUpKey(typical), typical])).values()].map(
    (typical) => `typical ${typical}: a rule places it, but no row of the runs and counts belongs to it`,
  );
}
