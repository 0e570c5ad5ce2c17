/**
 * Reads a shop ticket as printed, with nothing but its words. What it cannot read it refuses; it guesses nothing.
 */
import { HOOKS, LINE_UPS, type BenchShoe, type Stroke } from "./bench";

export interface PrintedBend {
  /** Along the stick, from the datum end. */
  readonly number: number;
  readonly mark: number;
  readonly turn: string;
  readonly lineUp: Stroke["lineUp"];
  readonly hook: Stroke["hook"];
  readonly dial: number;
}

export interface PrintedTicket {
  readonly run: string;
  readonly piece: number;
  readonly shoe: BenchShoe;
  readonly dialStart: number;
  readonly cutLength: number;
  readonly bends: readonly PrintedBend[];
  /** Number of the piece that the datum end couples to. */
  readonly coupledTo?: number;
  /** How bend 1 points against the last bend before it [°], clockwise seen from the datum end. */
  readonly join: number;
}

export function readTicket(text: string): PrintedTicket {
  const lines = text.split("\n");
  const shoe = find(
    text,
    /^Shoe: radius (.+?), deduct (.+?), outside diameter (.+?), springback (.+?)° at 90°(?: and (.+?)° at (.+?)°)?, dial starts at (.+?)° /m,
  );
  const starts = lines.flatMap((line, index) => (/^Step \d/.test(line) ? [index] : []));
  const coupled = /^Datum end: couples to piece (\d+)$/m.exec(text);
  return {
    run: find(text, /^RUN (.+)$/m)[0]!,
    piece: Number(find(text, /^Piece (\d+) of \d+; make \d+$/m)[0]),
    shoe: {
      ...{ radius: inches(shoe[0]!), deduct: inches(shoe[1]!), outsideDiameter: inches(shoe[2]!) },
      springback: {
        at90: Number(shoe[3]),
        ...(shoe[4] === undefined ? {} : { second: { opened: Number(shoe[4]), angle: Number(shoe[5]) } }),
      },
    },
    dialStart: Number(shoe[6]),
    cutLength: inches(find(text, /^Cut length: (.+)$/m)[0]!),
    bends: readBends(starts.map((start, index) => lines.slice(start, starts[index + 1] ?? lines.length))),
    ...(coupled ? { coupledTo: Number(coupled[1]) } : {}),
    join: readJoin(text),
  };
}

/** The bends in the order they are printed in, which is the order they are made in; each number is there once. */
function readBends(texts: readonly (readonly string[])[]): PrintedBend[] {
  const bends = texts.map(readBend);
  const numbers = bends.map(({ number }) => number).sort((a, b) => a - b);
  if (numbers.some((number, index) => number !== index + 1)) throw new Error(`bends ${numbers.join(", ")} are printed`);
  return bends;
}

function readBend(lines: readonly string[], place: number): PrintedBend {
  const text = lines.join("\n");
  const [printedStep, printed, mark] = find(text, /^Step (\d+), bend (\d+) \(.+\): mark at (.+)$/m);
  const number = Number(printed);
  if (Number(printedStep) !== place + 1) throw new Error(`step ${printedStep} stands in place ${place + 1}`);
  const [dial, finished] = find(text, /^ {2}Dial: (\S+)°, for a finished (\S+)°$/m).map(Number);
  if (!Number.isFinite(dial) || !Number.isFinite(finished)) throw new Error(`bend ${number}: no dial reading`);
  return {
    number,
    mark: inches(mark!),
    turn: find(text, /^ {2}Turn: (.+)$/m)[0]!,
    lineUp: oneOf(find(text, /^ {2}Line up: (?:\S+° (?=notch$))?(\w+)$/m)[0]!, LINE_UPS),
    hook: oneOf(find(text, /^ {2}Hook: toward the (\w+) end$/m)[0]!, HOOKS),
    dial: dial!,
  };
}

function readJoin(text: string): number {
  const line =
    /^Coupled on: bend 1 points (.+) the (?:last bend of piece \d+|\S+° factory elbow before it)(, seen from the datum end)?$/m.exec(
      text,
    )?.[1];
  if (line === undefined || line === "the same way as") return 0;
  if (line === "opposite to") return 180;
  const [degrees, way] = find(line, /^(\S+)° (clockwise|counterclockwise) from$/);
  return way === "clockwise" ? Number(degrees) : -Number(degrees);
}

/** A length as printed, up to the bracket with its decimals: 3' 4-1/2", 11/16", 40.4970 in., 1028 mm. */
export function inches(printed: string): number {
  const plain = printed.replace(/ \(.*\)$/, "");
  const metric = /^(-?[\d.]+) mm$/.exec(plain);
  if (metric) return Number(metric[1]) / 25.4;
  const decimal = /^(-?[\d.]+) in\.$/.exec(plain);
  if (decimal) return Number(decimal[1]);
  const tape = /^(-?)(?:(\d+)' )?(?:(\d+)(?:-|"|$))?(?:(\d+)\/(\d+))?"?$/.exec(plain);
  if (!tape || plain === "") throw new Error(`not a length: ${printed}`);
  const [, sign, feet = 0, whole = 0, top = 0, bottom = 1] = tape;
  return (sign === "-" ? -1 : 1) * (12 * Number(feet) + Number(whole) + Number(top) / Number(bottom));
}

function find(text: string, pattern: RegExp): string[] {
  const found = pattern.exec(text);
  if (!found) throw new Error(`the ticket has nothing like ${String(pattern)}`);
  return found.slice(1);
}

function oneOf<Word extends string>(word: string, words: readonly Word[]): Word {
  const found = words.find((each) => each === word);
  if (!found) throw new Error(`${word} is none of ${words.join(", ")}`);
  return found;
}
