import { LOOKS } from "../../excel/trial";
import { line, type Line, type Part } from "../types";

/** What the pane does to sheets beyond their cells, each by itself. */
export const sheetsPart: Part = {
  id: "sheets",
  title: "Looks, pages and pictures",
  async run({ scratch }): Promise<Line[]> {
    const lines: Line[] = [];
    for (const [what, apply] of LOOKS) {
      const problem = await scratch.act(apply).then(
        () => "",
        (error: Error) => error.message,
      );
      lines.push(line(what, problem === "" ? "yes" : problem, problem === "" ? "same" : "absent"));
    }
    return lines;
  },
};
