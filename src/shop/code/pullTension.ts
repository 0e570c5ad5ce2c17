import { toRadians } from "../../geometry/angle";
import { pathSpans, type Span } from "../../geometry/span";
import { sidewallPressure, weightCorrection, type Lay } from "../../wiring/pull/pulling";
import { pullPath } from "../../route/problems";
import type { BuiltPull, BuiltRun } from "../run/builtRun";

/** What is pulled in. */
export interface PulledCables {
  /** Of all of them [lb/ft]. */
  readonly weight: number;
  readonly friction: number;
  readonly lay: Lay;
  /** Bore of the raceway over one cable's diameter. */
  readonly ratio: number;
}

/** One leg or bend of a pull, in the order the cable meets it. */
export interface PullStep {
  readonly part: "leg" | "bend";
  /** Length of a leg [in], angle of a bend [°]. */
  readonly size: number;
  /** Tension behind it [lb]. */
  readonly tension: number;
  /** Where the cable leaves a bend [lb/ft]. */
  readonly sidewall?: number;
}

/**
 * Tension along a pull, from a feed that gives none.
 *
 * Legs: `T + L·W·(f·w·cos A ± sin A)` for a slope A, up or down, never below 0. Bends: `T·e^(w·f·a)`, their own weight left
 * out. Sources: telephone duct manual 8.11 and 8.12; a utility's formula appendix for slopes.
 *
 * @param from the end that the cable is fed in at
 */
export function pullSteps({ pull }: BuiltPull, cables: PulledCables, from: "datum" | "far"): PullStep[] {
  const { weight, friction, lay, ratio } = cables;
  const correction = weightCorrection(lay, ratio);
  const spans = pathSpans(pullPath(pull)).filter(({ length }) => length > 0);
  const ordered = from === "datum" ? spans : [...spans].reverse();
  let tension = 0;
  return ordered.map((span): PullStep => {
    if (span.kind === "arc") {
      tension *= Math.exp(correction * friction * toRadians(span.angle));
      const sidewall = sidewallPressure(lay, tension, span.radius, correction);
      return { part: "bend", size: span.angle, tension, sidewall };
    }
    const rise = riseOf(span) * (from === "datum" ? 1 : -1);
    const level = Math.sqrt(Math.max(0, 1 - rise ** 2));
    tension = Math.max(0, tension + (span.length / 12) * weight * (friction * correction * level + rise));
    return { part: "leg", size: span.length, tension };
  });
}

const riseOf = ({ direction }: Span): number => direction[2];

const HEADERS = ["Pull", "Feed from", "Part", "Length or angle", "Tension lb", "Sidewall lb/ft", "Verdict"];

/** What a pull must not pass: tension [lb] and sidewall pressure [lb/ft]. */
export interface PullLimits {
  readonly tension?: number;
  readonly sidewall: number;
}

/** Both ways of every pull of a run, leg by leg and bend by bend, with a header row; a line for each pull says which end to feed. */
export function pullTable({ pulls }: BuiltRun, cables: PulledCables, limits: PullLimits): (string | number)[][] {
  const rows = pulls.flatMap((pull, index) => {
    const ways = (["datum", "far"] as const).map((from) => ({ from, steps: pullSteps(pull, cables, from) }));
    const lines = ways.flatMap(({ from, steps }) =>
      steps.map(({ part, size, tension, sidewall }) => [
        ...[index + 1, `${from} end`, part, size, tension, sidewall ?? ""],
        overLimit(tension, sidewall, limits),
      ]),
    );
    return [...lines, adviceLine(index + 1, ways, limits)];
  });
  return [HEADERS, ...rows];
}

function overLimit(tension: number, sidewall: number | undefined, limits: PullLimits): string {
  const over = [
    limits.tension !== undefined && tension > limits.tension ? `above ${limits.tension.toFixed(0)} lb` : "",
    sidewall !== undefined && sidewall > limits.sidewall ? `above ${limits.sidewall} lb/ft` : "",
  ].filter((words) => words !== "");
  return over.length > 0 ? over.join(", ") : "ok";
}

interface Way {
  readonly from: "datum" | "far";
  readonly steps: readonly PullStep[];
}

/** The way to feed: one that keeps to the limits before one that does not, then the lower tension; and where a box would help. */
function adviceLine(pull: number, ways: readonly Way[], limits: PullLimits): (string | number)[] {
  const end = ({ steps }: Way) => steps.at(-1)?.tension ?? 0;
  const pressure = ({ steps }: Way) => Math.max(0, ...steps.map(({ sidewall }) => sidewall ?? 0));
  const past = ({ steps }: Way) =>
    steps.findIndex(({ tension, sidewall }) => overLimit(tension, sidewall, limits) !== "ok");
  const rank = (way: Way) => (past(way) < 0 ? 0 : 1);
  const best = [...ways].sort((a, b) => rank(a) - rank(b) || end(a) - end(b) || pressure(a) - pressure(b))[0]!;
  const words =
    past(best) < 0
      ? `feed from the ${best.from} end`
      : `neither way keeps to the limits: put a box before part ${past(best) + 1} of the feed from the ${best.from} end`;
  return [pull, `${best.from} end`, "whole pull", "", end(best), pressure(best), words];
}
