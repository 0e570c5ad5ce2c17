import { expected, line, type Part } from "../types";
import { isAnswered } from "../waiting";

/** The guide's checks are put into sheets elsewhere: here is what happens when something is in the way. */
export const spillsPart: Part = {
  id: "spills",
  title: "Results that spill",
  async run({ scratch, until }) {
    const stable = (wanted: (first: string) => boolean) =>
      until(async () => {
        const cell = (await scratch.read(0, 0, 1, 1))[0]![0];
        return isAnswered(cell) && wanted(String(cell)) ? String(cell) : undefined;
      });
    await scratch.enter(0, 0, [["=CONDUIT.CUT.PLAN({40;50},{3;2})"]]);
    const { answer: free } = await stable((first) => first === "Sticks");
    const before = JSON.stringify(await scratch.read(0, 0, 4, 8));
    await scratch.enter(1, 1, [["in the way"]]);
    const { answer: blocked } = await stable((first) => first.startsWith("#"));
    await scratch.enter(1, 1, [[""]]);
    const { answer: again } = await stable((first) => first === "Sticks");
    const after = JSON.stringify(await scratch.read(0, 0, 4, 8));
    await scratch.enter(0, 12, [["=ROWS(A1#)"]]);
    const { answer: rows } = await until(async () => {
      const cell = (await scratch.read(0, 12, 1, 1))[0]![0];
      return isAnswered(cell) ? cell : undefined;
    });
    return [
      expected("a table spills from one cell", free === "Sticks", String(free ?? "no answer")),
      expected("a cell in the way gives #SPILL!", blocked === "#SPILL!", String(blocked ?? "no error")),
      expected("the table is back once the way is free", again === "Sticks" && after === before, String(again)),
      line(
        "A1# names the whole of it",
        typeof rows === "number" && rows > 1 ? "yes" : String(rows ?? "no answer"),
        "told",
      ),
    ];
  },
};
