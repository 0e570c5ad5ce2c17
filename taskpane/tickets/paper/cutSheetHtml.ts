import { sawLines } from "../../../src/takeoff/saw/sawLines";
import { formatLength, type LengthStyle } from "../../../src/units/formatLength";
import type { CutResult, LotPlan } from "../../totals/cuts/cutWork";
import { list, text } from "./ticketHtml";
import { ticketStrings } from "../ticketStrings";

const t = ticketStrings.cuts;

/** The cutting plan for the person at the saw: stick by stick, with a box to tick for each line. */
export function cutSheetHtml({ lots, total, problems }: CutResult, style: LengthStyle): string {
  const show = (inches: number): string => formatLength(inches, 16, style);
  const kerf = lots.find(({ sticks }) => sticks.length > 0)?.kerf ?? 0;
  return [
    `<article class="rlt-cuts"><h3>${text(t.title)}</h3>`,
    kerf > 0 ? `<p>${text(t.about(show(kerf)))}</p>` : "",
    total ? `<p>${text(`${t.total} ${total.proof}`)}</p>` : "",
    `<div class="rlt-ways">`,
    ...lots.map((lot) => lotHtml(lot, show)),
    list("rlt-way", t.notCut, problems),
    "</div>",
    "</article>",
  ].join("\n");
}

const lotHtml = (lot: LotPlan, show: (inches: number) => string): string =>
  [
    `<h4>${text(lot.title)}</h4><p>${text(lot.problem || lot.proof)}</p>`,
    ...lot.sticks.map((stick) => {
      const [take = "", ...cuts] = sawLines(stick, show);
      return `<div class="rlt-way"><p>${text(take)}</p><ul>${cuts.map((cut) => `<li>${text(cut)}</li>`).join("")}</ul></div>`;
    }),
  ].join("\n");
