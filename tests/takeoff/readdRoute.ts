/**
 * Reads a route a second way, for totals that are added up again: no corner points, no vectors but for `to` steps. Each
 * step says how much conduit it adds to the legs, or saves of them. Formulas derived by hand, lengths in inches.
 */

export interface Readd {
  /** Developed length of each pull [in]. */
  pulls: number[];
  /** Angles of the bends [°]. */
  bends: number[];
  /** Turns in a conduit body. */
  bodies: number;
  /** A flexible piece at the end [in]. */
  whip: number;
}

const rad = (degrees: number) => (degrees * Math.PI) / 180;
const gain = (angle: number, radius: number) => radius * (2 * Math.tan(rad(angle) / 2) - rad(angle));

/** `12' 6"`, `3' 4-1/2"`, `2-1/2`, `1/2`, `40` in inches. */
export function tape(text: string): number {
  const [feet, inches] = text.includes("'") ? text.split("'") : ["0", text];
  const parts = (inches ?? "")
    .replace('"', "")
    .trim()
    .split(/[\s-]+/)
    .filter(Boolean);
  const value = (part: string) => part.split("/").reduce((sum, n, index) => (index ? sum / Number(n) : Number(n)), 0);
  return Number(feet) * 12 + parts.reduce((sum, part) => sum + value(part), 0);
}

export function readdRoute(route: string, radius: number): Readd {
  const pulls = [0];
  const bends: number[] = [];
  let heading = "";
  let at = [0, 0, 0];
  let way: number[] | undefined;
  let [sweep, bodies, whip] = [0, 0, 0];
  const add = (length: number) => (pulls[pulls.length - 1]! += length);
  const bend = (...angles: number[]) => angles.forEach((angle) => (bends.push(angle), add(-gain(angle, radius))));
  const turn = (angle: number) => {
    if (!sweep) return bend(angle);
    const shots = Math.ceil(angle / 10);
    const half = sweep * Math.tan(rad(angle / shots) / 2);
    add((shots - 1) * 2 * half - 2 * (sweep * Math.tan(rad(angle) / 2) - half));
    bend(...Array<number>(shots).fill(angle / shots));
    sweep = 0;
  };
  for (const step of route.split(",").map((text) => text.trim())) {
    const [word, rest] = [step.split(" ")[0]!, step.slice(step.indexOf(" ") + 1)];
    const at2 = /at (.*)$/.exec(rest);
    const angle = Number(at2?.[1]);
    if (step === "box" || step === "LB") {
      if (step === "LB") bodies += 1;
      pulls.push(0);
      heading = "";
    } else if (word === "flex") {
      whip = tape(rest.split(" ")[0]!);
    } else if (step.startsWith("box offset")) {
      const rise = tape(/offset (\S+)/.exec(step)![1]!);
      add(rise / Math.sin(rad(5)));
      bend(5, 5);
    } else if (word === "offset") {
      const rises = [...rest.replace(/at .*/, "").matchAll(/([\d/-]+) (?:up|down|north|south|east|west)/g)];
      add(Math.hypot(...rises.map((match) => tape(match[1]!))) / Math.sin(rad(angle)));
      bend(angle, angle);
    } else if (word === "saddle") {
      const height = tape(rest.split(" ")[0]!);
      const over = /over (\S+)/.exec(rest);
      if (over) {
        add((2 * height) / Math.sin(rad(angle)) - (2 * height) / Math.tan(rad(angle)));
        bend(angle, angle, angle, angle);
      } else {
        const corner = height + radius / Math.cos(rad(angle / 2)) - radius;
        add((2 * corner) / Math.sin(rad(angle / 2)) - (2 * corner) / Math.tan(rad(angle / 2)));
        bend(angle / 2, angle, angle / 2);
      }
    } else if (word === "bend") {
      bend(Number(rest.split(" ")[0]));
    } else if (word === "sweep") {
      sweep = Number(rest);
    } else if (word === "to") {
      const to = rest.split(" ").map(Number);
      const leg = to.map((value, axis) => value - at[axis]!);
      const length = Math.hypot(...leg);
      if (way) turn((Math.acos(leg.reduce((sum, v, axis) => sum + v * way![axis]!, 0) / length) * 180) / Math.PI);
      way = leg.map((value) => value / length);
      at = to;
      add(length);
    } else {
      const previous = heading;
      if (word !== "ahead") heading = word;
      if (word !== "ahead" && previous && previous !== word) turn(90);
      add(tape(rest));
    }
  }
  return { pulls, bends, bodies, whip };
}
