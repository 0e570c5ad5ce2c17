import { expected, line, type Line, type Part } from "../types";
import { isAnswered } from "../waiting";

const HEADERS = ["Run", "Raceway", "Size", "Route", "Length in."];
const row = (run: string, route: string) => [`'${run}`, "EMT", "'1/2", route];

/** A table that grows, a column that fills down, and formulas that name its columns. */
export const tablesPart: Part = {
  id: "tables",
  title: "Tables",
  async run({ scratch, until, tableName }): Promise<Line[]> {
    const name = tableName("Runs");
    const own = (header: string) => `[@${header}]`;
    const formula = `=CONDUIT.RUN.LENGTH(${["Route", "Raceway", "Size"].map(own).join(",")})`;
    await scratch.enter(0, 0, [HEADERS, [...row("A-1", "up 36, east 60"), ""], [...row("A-2", "up 30, east 50"), ""]]);
    await scratch.addTable(name, 0, 0, 3, HEADERS.length);
    await scratch.enter(1, 4, [[formula], [formula]]);
    await scratch.enter(0, 8, [
      [`=COUNTA(${name}[Run])`],
      [`=ROWS(CONDUIT.JOB.SCHEDULE(${name}[[#All],[Run]:[Route]]))`],
    ]);
    const watch = async () => (await scratch.read(0, 8, 2, 1)).map(([cell]) => cell);
    const { answer: before } = await until(async () => {
      const cells = await watch();
      return cells.every(isAnswered) ? cells : undefined;
    });
    const lines = [
      expected("columns of a table by name", typeof before?.[1] === "number", String(before?.[1] ?? "no answer")),
    ];
    await scratch.enter(3, 0, [row("A-3", "up 24, east 40")]);
    const byItself = (await scratch.rowsOf(name)) === 4;
    lines.push(line("a row that the add-in writes under a table", byItself ? "joins it" : "stays out", "told"));
    if (!byItself) await scratch.resize(name, 0, 0, 4, HEADERS.length);
    const { answer: after } = await until(async () => {
      const cells = await watch();
      return cells[0] === 3 && cells[1] !== before?.[1] && isAnswered(cells[1]) ? cells : undefined;
    });
    lines.push(
      expected("a longer table is worked out anew", after !== undefined, `still ${String((await watch())[1])} rows`),
    );
    const { answer: filled } = await until(async () => {
      const [[cell]] = (await scratch.readFormulas(3, 4, 1, 1)) as [[string]];
      return String(cell).includes("CONDUIT") ? cell : undefined;
    });
    lines.push(expected("a column of formulas fills down", filled !== undefined, "its cell stays empty"));
    return lines;
  },
};
