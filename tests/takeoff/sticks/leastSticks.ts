import { buildJob } from "../../../src/shop/job/job";
/**
 * How many sticks the demo job needs of one kind, by a second route: every way to cut a stick is listed, and a
 * general-purpose MIP solver (HiGHS) chooses among them.
 */
import highs from "highs";
import { scheduleJob } from "../../../src/shop/schedule/schedule";
import { demoRules } from "../../../workbench/demo/ferryTables";
import { demoRuns } from "../../../workbench/demo/ferryTerminal";
import { readded } from "../readdJob";

/** In sixteenths: a stick, and what the saw takes. */
const [STICK, KERF] = [1920, 1];

export async function leastSticks(kind: string, shoes: unknown): Promise<number> {
  const demands = new Map<number, number>();
  const want = (inches: number, count: number) => {
    const length = Math.round(inches * 16);
    demands.set(length, (demands.get(length) ?? 0) + count);
  };
  for (const { stretches, quantity } of readded.filter((run) => run.kind === kind && run.elbows > 0)) {
    for (const stretch of stretches) {
      const whole = Math.ceil(stretch / 120) - 1;
      want(120, whole * quantity);
      want(stretch - 120 * whole, quantity);
    }
  }
  const bent = new Map(readded.filter((run) => run.kind === kind && run.elbows === 0).map((run) => [run.name, run]));
  const pieces = new Map<string, number>();
  for (const row of scheduleJob(buildJob({ runs: demoRuns, shoes, rules: demoRules }))) {
    if (bent.has(String(row.Run))) pieces.set(`${row.Run}/${row.Piece}`, Number(row["Cut length"]));
  }
  for (const [piece, length] of pieces) want(length, bent.get(piece.split("/")[0]!)!.quantity);
  const whole = demands.get(STICK) ?? 0;
  demands.delete(STICK);
  return whole + (await fewest([...demands]));
}

async function fewest(demands: [length: number, count: number][]): Promise<number> {
  if (demands.length === 0) return 0;
  const patterns: number[][] = [];
  const list = (at: number, room: number, counts: number[]): void => {
    if (at === demands.length) {
      if (counts.some((count) => count > 0)) patterns.push(counts);
      return;
    }
    const [length, wanted] = demands[at]!;
    for (let count = 0; count <= wanted && count * (length + KERF) <= room; count++) {
      list(at + 1, room - count * (length + KERF), [...counts, count]);
    }
  };
  list(0, STICK + KERF, []);
  const names = patterns.map((_, at) => `x${at}`);
  const rows = demands.map(([, wanted], piece) => {
    const terms = patterns.flatMap((counts, at) => (counts[piece]! > 0 ? [`${counts[piece]} x${at}`] : []));
    return ` ${terms.join(" + ")} >= ${wanted}`;
  });
  const model = ["Minimize", ` obj: ${names.join(" + ")}`, "Subject To", ...rows, "General", ` ${names.join("\n ")}`, "End"]; // prettier-ignore
  const solution = (await highs()).solve(model.join("\n"));
  expect(solution.Status).toBe("Optimal");
  return Math.round(solution.ObjectiveValue);
}
