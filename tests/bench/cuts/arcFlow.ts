/**
 * The same problem for a general-purpose solver: the arc-flow model (a stick is a path from 0 to its length, a piece an
 * arc), which such solvers do best with. Pieces are laid longest first, which keeps the number of arcs down.
 */
import { canonical } from "../../../src/cutting/model/kinds";
import type { CutRequest } from "../../../src/cutting/model/request";

/** The model as text in LP format; undefined when it would have more arcs than `mostArcs`. */
export function arcFlowText(request: CutRequest, mostArcs: number): string | undefined {
  const { lengths, demands, kinds, kerf } = canonical(request);
  const room = Math.max(...kinds.map((kind) => kind.length)) + kerf;
  const flowIn = new Map<number, string[]>([[0, []]]);
  const flowOut = new Map<number, string[]>();
  const cutBy = lengths.map((): string[] => []);
  const names: string[] = [];
  const arc = (from: number, to: number, name: string): void => {
    names.push(name);
    flowOut.set(from, [...(flowOut.get(from) ?? []), name]);
    flowIn.set(to, [...(flowIn.get(to) ?? []), name]);
  };
  for (const [item, length] of lengths.entries()) {
    const weight = length + kerf;
    const starts = new Set(flowIn.keys());
    for (let copy = 0, from = [...starts]; copy < demands[item]! && from.length > 0; copy++) {
      const next: number[] = [];
      for (const node of from) {
        const name = `a${node}_${item}`;
        if (node + weight > room || cutBy[item]!.includes(name)) continue;
        if (names.length >= mostArcs) return undefined;
        cutBy[item]!.push(name);
        if (!flowIn.has(node + weight)) next.push(node + weight);
        arc(node, node + weight, name);
      }
      from = next;
    }
  }
  const cost: string[] = [];
  const bounds: string[] = [];
  const returns = new Map<number, string[]>();
  for (const [k, kind] of kinds.entries()) {
    cost.push(`${kind.cost} z${k}`);
    if (kind.quantity !== Infinity) bounds.push(` z${k} <= ${kind.quantity}`);
    for (const node of flowIn.keys()) {
      if (node === 0 || node > kind.length + kerf) continue;
      const name = `r${k}_${node}`;
      names.push(name);
      returns.set(node, [...(returns.get(node) ?? []), name]);
    }
  }
  const rows: string[] = [];
  for (const node of flowIn.keys()) {
    if (node === 0) continue;
    const out = [...(flowOut.get(node) ?? []), ...(returns.get(node) ?? [])];
    rows.push(` ${flowIn.get(node)!.join(" + ")}${out.map((name) => ` - ${name}`).join("")} = 0`);
  }
  for (const [k] of kinds.entries()) {
    const ends = [...returns.values()].flat().filter((name) => name.startsWith(`r${k}_`));
    rows.push(` ${ends.join(" + ")} - z${k} = 0`);
  }
  cutBy.forEach((arcs, item) => rows.push(` ${arcs.join(" + ")} >= ${demands[item]}`));
  const integers = [...names, ...kinds.map((_, k) => `z${k}`)];
  return [
    "Minimize",
    ` obj: ${cost.join(" + ")}`,
    "Subject To",
    ...rows,
    ...(bounds.length ? ["Bounds", ...bounds] : []),
    "General",
    ` ${integers.join("\n ")}`,
    "End",
  ].join("\n");
}
