import { expected, line, type Part } from "../types";
import { isAnswered } from "../waiting";

/** A run with a cell for its straps, which may be left empty; the checks say so where it holds 0. */
const RUN = ["'A-1", "EMT", "'1/2", "up 36, east 60"];
const WITHOUT = ["Run", "Raceway", "Size", "Route"];

/** Whether empty cells come to the functions as empty, and not as 0. */
export const blanksPart: Part = {
  id: "blanks",
  title: "Empty cells",
  async run({ scratch, until }) {
    await scratch.enter(0, 0, [
      [...WITHOUT, "Straps"],
      [...RUN, ""],
    ]);
    await scratch.enter(0, 10, [WITHOUT, RUN]);
    // Below them, so that each has the columns to its right to spill into. H1 and H2 are empty.
    const formulas = [
      "=CONDUIT.JOB.CHECKS(A1:E2)",
      "=CONDUIT.JOB.CHECKS(K1:N2)",
      "=CONDUIT.CUT.PLAN({40;50},{3;2},120,0,H1)",
      "=CONDUIT.CUT.PLAN({40;50},{3;2},120,0)",
      "=CONDUIT.CUT.PLAN({40;50},{3;2},120,0,H1:H1)",
      "=CONDUIT.LENGTH(H1)",
      "=CONDUIT.BEND.DIAL(90,5,)",
    ];
    const place = (index: number) => 4 + 12 * index;
    for (const [index, formula] of formulas.entries()) await scratch.enter(place(index), 0, [[formula]]);
    const { answer } = await until(async () => {
      const cells = await scratch.read(4, 0, 12 * formulas.length, 8);
      return formulas.every((_, index) => isAnswered(cells[12 * index]![0])) ? cells : undefined;
    });
    if (!answer) return [line("an answer", "none in time", "differs")];
    const told = formulas.map((_, index) => JSON.stringify(answer.slice(12 * index, 12 * index + 11)));
    const same = (one: number, other: number) => told[one] === told[other];
    const first = (index: number) => String(answer[12 * index]![0]);
    return [
      expected("an empty cell of a range counts as empty", same(0, 1), "it comes as 0"),
      expected("a single empty cell counts as left out", same(2, 3), "it comes as 0"),
      expected("a range of one empty cell counts as left out", same(4, 3), "it comes as 0"),
      expected("an empty cell where a length is needed is refused", first(5) === "#VALUE!", first(5)),
      expected("an argument left empty before the bracket counts as left out", first(6) === "95", first(6)),
    ];
  },
};
