import { CUT_SHEET_LABELS as t } from "../../shop/ticket/ticketLabels";
import { sawLines, type SawStick } from "../../takeoff/saw/sawLines";
import { formatLength, type LengthStyle } from "../../units/formatLength";
import type { TicketBlock } from "./blocks";
import { gapLine, textLines, type TicketLine } from "./ticketLines";

/** Cutting plans as they are shown at the saw. Lengths [in]. */
export interface CutPages {
  readonly lots: readonly {
    readonly title: string;
    /** What it comes to and how that is proven; or why there is no plan. */
    readonly proof: string;
    readonly problem: string;
    readonly kerf: number;
    readonly sticks: readonly SawStick[];
  }[];
  /** What all plans come to. */
  readonly total?: { readonly proof: string };
  /** What is not in the plans, and why. */
  readonly problems: readonly string[];
}

/** [pt] */
const AIR = 6;

/** The cutting sheet as blocks of worksheet rows: stick by stick, with a box to tick before each cut. */
export function cutBlocks({ lots, total, problems }: CutPages, style: LengthStyle): TicketBlock[] {
  const show = (inches: number): string => formatLength(inches, 16, style);
  const kerf = lots.find(({ sticks }) => sticks.length > 0)?.kerf ?? 0;
  const head = [
    ...textLines(t.title, "name"),
    ...(kerf > 0 ? textLines(t.about(show(kerf)), "fact") : []),
    ...(total ? textLines(`${t.total} ${total.proof}`, "fact") : []),
  ];
  const blocks = lots.flatMap(({ title, proof, problem, sticks }): TicketBlock[] => {
    const heading = [gapLine(AIR), ...textLines(title, "cut"), ...textLines(problem || proof, "fact")];
    const [first = [], ...more] = sticks.map((stick) => [gapLine(AIR), ...stickLines(stick, show)]);
    return [[...heading, ...first], ...more].map((lines) => ({ lines }));
  });
  const left = [
    gapLine(AIR),
    ...textLines(t.notCut, "strong"),
    ...problems.flatMap((words) => textLines(words, "check")),
  ];
  return [{ lines: head }, ...blocks, ...(problems.length > 0 ? [{ lines: left }] : [])];
}

function stickLines(stick: SawStick, show: (inches: number) => string): TicketLine[] {
  const [take = "", ...cuts] = sawLines(stick, show);
  const rest = cuts.pop() ?? "";
  return [
    ...textLines(take, "strong"),
    ...cuts.flatMap((cut) => textLines(`\u2610 ${cut}`, "check")),
    ...textLines(rest, "check"),
  ];
}
