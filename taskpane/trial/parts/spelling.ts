import { asEntered } from "../../workbook/design/spelling";
import { expected, line, type Line, type Part } from "../types";
import { answerOf } from "../waiting";

/** Names that Excel may take for a cell or hold for something else. */
const NAMES = ["Job1", "R1C1", "R"];

/** Formulas as files spell them, names as people give them, and cards. */
export const spellingPart: Part = {
  id: "spelling",
  title: "Spellings, names and cards",
  async run(bench): Promise<Line[]> {
    const { scratch } = bench;
    const ask = async (row: number, formula: string) => {
      try {
        return String((await answerOf(bench, row, 0, formula)) ?? "no answer");
      } catch (error) {
        return (error as Error).message;
      }
    };
    const inFiles = '=_xldudf_CONDUIT_LENGTH("7 1/2")';
    const [byFile, [[kept]]] = [await ask(0, inFiles), await scratch.readFormulas(0, 0, 1, 1)] as [string, [[string]]];
    const again = await ask(0, asEntered(inFiles));
    const lines = [
      line("a formula as files spell it", `${byFile}; the cell holds ${String(kept)}`, "told"),
      expected("it works once entered anew", again === "7.5", again),
      line("=@CONDUIT.JOB.RULES()", await ask(1, "=@CONDUIT.JOB.RULES()"), "told"),
    ];
    for (const [at, name] of NAMES.entries()) {
      await scratch.enter(0, 20 + 2 * at, [["Head"], ["body"]]);
      const refused = await scratch.addTable(name, 0, 20 + 2 * at, 2, 1).then(
        () => "taken",
        (error: Error) => error.message,
      );
      lines.push(line(`a table called ${name}`, refused, "told"));
    }
    const card = '=CONDUIT.RUN.CARD("up 36, east 60","EMT","1/2")';
    lines.push(line("a card", await ask(10, card), "told"));
    for (const [at, field] of ["=A11.Degrees", "=A11.[Cut lengths]", '=FIELDVALUE(A11,"Degrees")'].entries())
      lines.push(line(`a field of a card: ${field}`, await ask(12 + 4 * at, field), "told"));
    lines.push(
      expected(
        "our functions take a card",
        (await ask(30, "=CONDUIT.LENGTH(A11)")) === "94.2831853071796",
        await ask(30, "=CONDUIT.LENGTH(A11)"),
      ),
    );
    return lines;
  },
};
