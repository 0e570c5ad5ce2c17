/**
 * The demo job added up again from its raw rows: readdRoute.ts reads the routes a second way, and what is bought bent is
 * laid out by hand. Radii are those of the code's table for one-shot benders (NEC chapter 9, table 2) [in].
 */
import { demoRuns } from "../../workbench/demo/ferryTerminal";
import { readdRoute, tape } from "./readdRoute";
import { records } from "./tables";

const RADIUS: Record<string, number> = { "1/2": 4, "3/4": 4.5, "1": 5.75, "1-1/4": 7.25, "1-1/2": 8.25 };
/** By the rules of the demo job: PVC, and metal above size 1. */
const BOUGHT_BENT = ["EMT 1-1/4", "PVC 40 1-1/2"];
/** Straight conduit at each end of an elbow [in]: PVC as ANSI C80.1, from memory; of EMT none is known. */
const ELBOW_END: Record<string, number> = { "PVC 40 1-1/2": 2 };
const CANNOT_BE_BUILT = "PR-09";
const STICK = 120;
/** What the job's LB takes of the conduit, on both its sides together [in]. */
const TAKEN_BY_LB = 1.25 + 2.375;
/**
 * The conduits of the rack, by hand: they lie south of the first and the run turns south, so each is its 3 in. shorter on
 * either side of that turn, where tan 45° is 1; the first bend stands square to them.
 */
const RACKS: Record<string, string[]> = {
  "WS-01": [`up 5', east 15', south 8'`, "up 60, east 177, south 93", "up 60, east 174, south 90"],
};

/** What one run takes, once. */
export interface Readded {
  name: string;
  kind: string;
  quantity: number;
  ends: string[];
  conductors: string;
  /** Developed length from box to box [in]. */
  pulls: number[];
  /** Ends of pulls at a box or panel, where a body or a flexible piece takes none. */
  terminations: number;
  bodies: number;
  /** Length of a flexible piece at the end of the run [in]. */
  whip: number;
  /** Angles of the bends the shop makes [°]. */
  bends: number[];
  elbows: number;
  /** Conduit, without elbows [in]. */
  conduit: number;
  /** Straight conduit between elbows [in]; only of a run with elbows. */
  stretches: number[];
  joints: number;
  /** Most pieces its conduit is cut into. */
  pieces: number;
}

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

export const readded: Readded[] = records(demoRuns.map((row) => row.map((cell) => cell ?? "")))
  .filter((run) => run["Run"] !== CANNOT_BE_BUILT)
  .flatMap((run) => {
    const routes = RACKS[String(run["Run"])] ?? [];
    if (String(run["Rack"]) === "") return [run];
    return routes.map((Route, at) => ({ ...run, Route, Run: `${run["Run"]}-${at + 1}` }));
  })
  .map((run) => {
    const kind = `${run["Raceway"]} ${run["Size"]}`;
    const radius = RADIUS[String(run["Size"])]!;
    const route = String(run["Route"]);
    return {
      name: String(run["Run"]),
      kind,
      quantity: Number(run["Quantity"]),
      ends: ["From", "To"].flatMap((column) => boxes(String(run[column]), Number(run["Quantity"]))),
      conductors: String(run["Conductors"]),
      ...(BOUGHT_BENT.includes(kind) ? withElbows(route, radius, ELBOW_END[kind] ?? 0) : bent(route, radius)),
    };
  });

/** Names of the boxes at one end: with each before it one for every run of the row. */
function boxes(name: string, quantity: number): string[] {
  return name.startsWith("each ") ? Array.from({ length: quantity }, (_, at) => `${name} ${at + 1}`) : [name];
}

function bent(route: string, radius: number) {
  const { pulls, bends, bodies, whip } = readdRoute(route, radius);
  const pieces = pulls.map((length) => Math.ceil(length / STICK));
  const terminations = 2 * pulls.length - 2 * bodies - (whip > 0 ? 1 : 0);
  return {
    ...{
      pulls,
      bends,
      bodies,
      whip,
      terminations,
      elbows: 0,
      stretches: [],
      conduit: sum(pulls) - bodies * TAKEN_BY_LB,
    },
    ...{ pieces: sum(pieces), joints: sum(pieces) - pulls.length },
  };
}

/** Legs at right angles, each shorter by the radius and the straight end at every elbow it has; `elbow 18` tells the next one's. */
function withElbows(route: string, usual: number, end: number) {
  const steps = route.split(",").map((step) => step.trim());
  const legs = steps.filter((step) => !step.startsWith("elbow")).map((step) => tape(step.replace(/^\w+ /, "")));
  const elbows = legs.length - 1;
  const radii = steps.flatMap((step, at) => {
    const asked = /^elbow (.*)$/.exec(steps[at - 1] ?? "")?.[1];
    return at === 0 || step.startsWith("elbow") ? [] : [asked ? tape(asked) : usual];
  });
  const taken = (corner: number) => (radii[corner] === undefined ? 0 : radii[corner] + end);
  const stretches = legs.map((leg, at) => leg - taken(at - 1) - taken(at));
  const pieces = sum(stretches.map((length) => Math.ceil(length / STICK)));
  const pulls = [sum(stretches) + (sum(radii) * Math.PI) / 2 + 2 * elbows * end];
  const none = { bends: [], bodies: 0, whip: 0, terminations: 2 };
  return { ...none, pulls, elbows, stretches, conduit: sum(stretches), pieces, joints: pieces + elbows - 1 };
}
