import { sameContent } from "../../memory/contents";
import { rememberTable } from "../../memory/tables";
import { defaultShoe } from "../../raceway/defaultShoes";
import { outsideDiameter } from "../../raceway/dimensions";
import { isFlexible, readRaceway, type Raceway } from "../../raceway/raceway";
import { readTradeSize, type TradeSize } from "../../raceway/tradeSize";
import { readTable } from "../../table/headerTable";
import { InputError, isUserError, NotListedError } from "../../units/errors";
import { DIAL, readShoe, SHOE_COLUMNS, SHORTEST_TAIL } from "./readShoe";
import type { Shoe } from "./shoe";

/** A row of the Shoes table that could not be read. */
export interface ShoeProblem {
  readonly rowNumber: number;
  readonly message: string;
}

/** The shoe for a raceway and size; or why its row cannot be used; or that neither table has one. */
export type ShoeAnswer = { readonly shoe: Shoe } | { readonly unusable: string } | { readonly notListed: string };

/** The shoes of a shop: the user's rows first, built-in defaults for the rest. */
export interface ShoeBook {
  lookUp(raceway: Raceway, size: TradeSize): ShoeAnswer;
  /** @throws InputError or NotListedError when neither the user's table nor the built-in one has a usable shoe */
  shoeFor(raceway: Raceway, size: TradeSize): Shoe;
  /** The user's own shoes that could be read. */
  readonly own: readonly Shoe[];
  readonly problems: readonly ShoeProblem[];
}

/**
 * Reads the Shoes range; without one, only the built-in shoes are used. A bad row is told and does not hide the
 * others; a run that needs that very shoe gets the row's message.
 */
export const readShoes: (range: unknown) => ShoeBook = rememberTable((range) => {
  const own = new Map<string, Shoe>();
  const spoilt = new Map<string, string>();
  const problems: ShoeProblem[] = [];
  const rows = range === null || range === undefined ? [] : readTable(range, "shoes", SHOE_COLUMNS).rows;
  for (const row of rows) {
    let key = "";
    try {
      const raceway = readRaceway(row.get("Raceway"));
      const size = readTradeSize(row.get("Size"));
      if (isFlexible(raceway))
        throw new InputError(`${raceway} is laid by hand and not bent on a shoe; leave the row out.`);
      key = keyOf(raceway, size);
      if (own.has(key) || spoilt.has(key)) {
        throw new InputError(`${raceway} ${size} stands twice in shoes; keep one row for each raceway and size.`);
      }
      own.set(key, readShoe(row, raceway, size));
    } catch (error) {
      if (!isUserError(error)) throw error;
      const message = `shoes row ${row.rowNumber}: ${error.message}`;
      problems.push({ rowNumber: row.rowNumber, message });
      if (key) spoilt.set(key, message);
    }
  }
  const find = (raceway: Raceway, size: TradeSize): ShoeAnswer => {
    const unusable = spoilt.get(keyOf(raceway, size));
    if (unusable !== undefined) return { unusable };
    const shoe = own.get(keyOf(raceway, size));
    return shoe ? { shoe } : builtIn(raceway, size);
  };
  const answers = new Map<string, ShoeAnswer>();
  const lookUp = (raceway: Raceway, size: TradeSize): ShoeAnswer => {
    const key = keyOf(raceway, size);
    const answer = answers.get(key) ?? sameAnswer(find(raceway, size));
    answers.set(key, answer);
    return answer;
  };
  return {
    own: [...own.values()],
    problems,
    lookUp,
    shoeFor(raceway, size) {
      const answer = lookUp(raceway, size);
      if ("shoe" in answer) return answer.shoe;
      throw "unusable" in answer ? new InputError(answer.unusable) : new NotListedError(answer.notListed);
    },
  };
});

/** Books that say the same of a raceway and size give the same object: an edit of one shoe leaves the runs of others alone. */
const sameAnswer = sameContent<ShoeAnswer>();

const keyOf = (raceway: Raceway, size: TradeSize): string => `${raceway} ${size}`;

/** The built-in shoe for a raceway and size, an editable default: measure your own with a test bend. */
export function builtInShoe(raceway: Raceway, size: TradeSize): Shoe {
  const base = defaultShoe(raceway, size);
  return {
    raceway,
    size,
    radius: base.radius,
    deduct: base.deduct,
    outsideDiameter: outsideDiameter(raceway, size),
    springback: base.springback,
    dialFrom: DIAL.from,
    dialTo: DIAL.to,
    dialStart: DIAL.start,
    shortestTail: SHORTEST_TAIL,
    source: base.source,
  };
}

function builtIn(raceway: Raceway, size: TradeSize): ShoeAnswer {
  try {
    return { shoe: builtInShoe(raceway, size) };
  } catch (error) {
    if (!(error instanceof NotListedError)) throw error;
    return { notListed: error.message };
  }
}
