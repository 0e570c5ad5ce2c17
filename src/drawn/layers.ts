import { RACEWAYS, racewayRecord, type Raceway } from "../raceway/raceway";
import { TRADE_SIZES, type TradeSize } from "../raceway/tradeSize";
import type { Drawing } from "./file/drawing";

/** What a layer of a drawing is taken for. */
export interface LayerPlan {
  readonly layer: string;
  /** Lines that lie on it. */
  readonly lines: number;
  readonly raceway: Raceway | "";
  readonly size: TradeSize | "";
  readonly take: boolean;
}

/** The layers of a drawing that lines lie on, with raceway and size where their names say them. */
export function planLayers(
  { lines, conduits }: Drawing,
  usual: { raceway?: Raceway; size?: TradeSize } = {},
): LayerPlan[] {
  const counts = new Map<string, number>();
  for (const { layer } of lines) counts.set(layer, (counts.get(layer) ?? 0) + 1);
  return [...counts].map(([layer, lines]) => {
    const told = conduits?.get(layer);
    const { raceway, size } = conduitOf(told ? `${told.raceway} ${told.size}` : layer);
    const own = { raceway: raceway ?? usual.raceway ?? "", size: size ?? usual.size ?? "" } as const;
    return { layer, lines, ...own, take: own.raceway !== "" && own.size !== "" };
  });
}

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, " ")
    .trim();

/** Every way to say a size in a layer's name, the longest first: 1 1 2 for 1-1/2. */
const SIZE_WORDS = TRADE_SIZES.map((size) => ({ size, words: plain(size) })).sort(
  (a, b) => b.words.length - a.words.length,
);
const RACEWAY_WORDS = RACEWAYS.flatMap((raceway) =>
  [raceway, ...racewayRecord(raceway).words].map((word) => ({ raceway, words: plain(word) })),
).sort((a, b) => b.words.length - a.words.length);

/** Raceway and size in the name of a layer, and what is left of it: the run's name. */
export function conduitOf(layer: string): { raceway?: Raceway; size?: TradeSize; rest: string } {
  const words = ` ${plain(layer)} `;
  const raceway = RACEWAY_WORDS.find((own) => words.includes(` ${own.words} `));
  const after = raceway ? words.slice(words.indexOf(` ${raceway.words} `) + raceway.words.length + 1) : "";
  // A size stands behind its raceway; before it a number may be anything.
  const size = SIZE_WORDS.find((own) => after.startsWith(` ${own.words} `));
  const end = raceway ? lengthBefore(layer, raceway.words) : layer.length;
  return { raceway: raceway?.raceway, size: size?.size, rest: layer.slice(0, end).replace(/[\s_-]+$/, "") || layer };
}

/** How much of a name stands before the words of a raceway. */
function lengthBefore(layer: string, words: string): number {
  const pattern = words.split(" ").join("[^a-z0-9.]+");
  return new RegExp(`(?<![a-z0-9.])${pattern}(?![a-z0-9.])`).exec(layer.toLowerCase())?.index ?? layer.length;
}
