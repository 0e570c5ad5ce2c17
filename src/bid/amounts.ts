import { toCent } from "../units/money";
import { shareOut } from "./shareOut";

/** An amount of a bid in whole cents, group by group, in the order of the bid's groups. */
export type Cents = readonly number[];

/** Dollars, or whatever the workbook counts in, as whole cents. */
export const centsOf = (amount: number): number => Math.round(toCent(amount) * 100);

export const moneyOf = (cents: number): number => cents / 100;

export const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Adds group by group. */
export const addParts = (a: readonly number[], b: readonly number[]): readonly number[] =>
  a.map((value, place) => value + b[place]!);

/** An amount shared out to the groups: the parts add up to it to the cent. */
export const sharedCents = (amount: number, weights: readonly number[]): Cents => shareOut(centsOf(amount), weights);
