import { InputError } from "../../units/errors";
import { showSteps } from "./grid";
import type { CutGrid } from "./grid";
import type { CutRequest, CutStock } from "./request";

/** Sticks of one length and cost. */
export interface StockKind {
  length: number;
  cost: number;
  /** Infinity: as many as needed. */
  quantity: number;
}

/** A request in a form that does not depend on the order of its rows. */
export interface Canonical {
  /** Different piece lengths, longest first, and how many of each. */
  lengths: number[];
  demands: number[];
  /** Longest first, then cheapest; sticks to be bought before those on hand. */
  kinds: StockKind[];
  kerf: number;
  minimumOffcut: number;
}

/** Numbers larger than this are refused, so that sums stay exact. */
const LARGEST = 1e7;
/** Most pieces of one plan. */
export const MOST_PIECES = 100_000;

/**
 * Checks a request and puts it in order.
 * @param mostPieces more than these are refused
 * @throws InputError naming the argument, the limit and the value
 */
export function canonical(request: CutRequest, mostPieces = MOST_PIECES): Canonical {
  const { pieces, stocks, grid = "1/16" } = request;
  const demand = new Map<number, number>();
  let total = 0;
  pieces.forEach(({ length, quantity }, row) => {
    whole(length, `length of piece ${row + 1}`, 1);
    whole(quantity, `quantity of piece ${row + 1}`, 0);
    total += quantity;
    if (quantity > 0) demand.set(length, (demand.get(length) ?? 0) + quantity);
  });
  if (total > mostPieces) throw new InputError(`pieces must be at most ${mostPieces} together; got ${total}.`);
  const lengths = [...demand.keys()].sort((a, b) => b - a);
  const checked: Canonical = {
    lengths,
    demands: lengths.map((length) => demand.get(length)!),
    kinds: stockKinds(stocks),
    kerf: whole(request.kerf ?? 0, "kerf", 0),
    minimumOffcut: whole(request.minimumOffcut ?? 0, "minimum offcut", 0),
  };
  refuseTooLong(checked, grid);
  return checked;
}

function stockKinds(stocks: readonly CutStock[]): StockKind[] {
  if (stocks.length === 0) throw new InputError("stocks must list at least one stick length; got none.");
  const bought = stocks.filter((stock) => stock.quantity === undefined);
  const priced = bought.filter((stock) => stock.cost !== undefined);
  if (priced.length > 0 && priced.length < bought.length) {
    const row = stocks.findIndex((stock) => stock.quantity === undefined && stock.cost === undefined) + 1;
    throw new InputError(`stock ${row} must have a price when others have one, or none may have; got an empty price.`);
  }
  const kinds = new Map<string, StockKind>();
  stocks.forEach((stock, row) => {
    const length = whole(stock.length, `length of stock ${row + 1}`, 1);
    const limited = stock.quantity !== undefined;
    const quantity = limited ? whole(stock.quantity!, `quantity of stock ${row + 1}`, 0) : Infinity;
    const cost = whole(stock.cost ?? (limited ? 0 : 1), `cost of stock ${row + 1}`, limited ? 0 : 1);
    if (quantity === 0) return;
    const key = [length, cost, limited].join();
    const kind = kinds.get(key) ?? { length, cost, quantity: 0 };
    kind.quantity += quantity;
    kinds.set(key, kind);
  });
  if (kinds.size === 0) throw new InputError("stocks must have at least one stick; every quantity is 0.");
  return [...kinds.values()].sort(
    (a, b) => b.length - a.length || a.cost - b.cost || (a.quantity === b.quantity ? 0 : b.quantity - a.quantity),
  );
}

function refuseTooLong({ lengths, kinds }: Canonical, grid: CutGrid): void {
  const longest = kinds[0]!.length;
  const piece = lengths[0];
  if (piece === undefined || piece <= longest) return;
  throw new InputError(
    `piece length must be at most the longest stick, ${showSteps(longest, grid)}; got ${showSteps(piece, grid)}.`,
  );
}

function whole(value: number, argument: string, least: number): number {
  if (Number.isInteger(value) && value >= least && value <= LARGEST) return value;
  throw new InputError(`${argument} must be a whole number from ${least} to ${LARGEST}; got ${value}.`);
}
