import { toRadians } from "../../geometry/angle";
import { pathSpans, type Span } from "../../geometry/span";
import { SAME_DIRECTION } from "../../units/tolerances";
import { sidewallPressure, weightCorrection, type Lay } from "../../wiring/pulling";
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
  /** True where the cables' weight counts in level bends as well. */
  readonly bendWeight: boolean;
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
  /** Where a box would come before it: beside the bend of a step of the route; none in a pull without bends. */
  readonly box?: { readonly step: number; readonly side: "before" | "after" };
}

/**
 * Tension along a pull, from a feed that gives none.
 *
 * Legs: `T + L·W·(f·w·cos A ± sin A)` for a slope A, up or down, never below 0. Bends: `T·e^(w·f·a)`, their own weight left
 * out; where it counts, a level one `T·cosh x + √(T² + (W·R)²)·sinh x` with `x = w·f·a`. Sources: telephone duct manual 8.11 and
 * 8.12; a utility's formula appendix for slopes; an open code for the full form.
 *
 * @param from the end that the cable is fed in at
 */
export function pullSteps({ pull }: BuiltPull, cables: PulledCables, from: "datum" | "far"): PullStep[] {
  const { weight, friction, lay, ratio, bendWeight } = cables;
  const correction = weightCorrection(lay, ratio);
  const spans = pathSpans(pullPath(pull)).filter(({ length }) => length > 0);
  const ordered = from === "datum" ? spans : [...spans].reverse();
  let tension = 0;
  return ordered.map((span): PullStep => {
    const box = boxBefore(pull, span, from);
    if (span.kind === "arc") {
      const grip = correction * friction * toRadians(span.angle);
      const isLevel = Math.abs(span.normal[2]) > 1 - SAME_DIRECTION;
      const onWall = Math.hypot(tension, (weight * span.radius) / 12);
      tension = bendWeight && isLevel ? tension * Math.cosh(grip) + onWall * Math.sinh(grip) : tension * Math.exp(grip);
      const sidewall = sidewallPressure(lay, tension, span.radius, correction);
      return { part: "bend", size: span.angle, tension, sidewall, box };
    }
    const rise = riseOf(span) * (from === "datum" ? 1 : -1);
    const level = Math.sqrt(Math.max(0, 1 - rise ** 2));
    tension = Math.max(0, tension + (span.length / 12) * weight * (friction * correction * level + rise));
    return { part: "leg", size: span.length, tension, box };
  });
}

/** In the leg that the cable comes from before a bend; somewhere in a leg itself. */
function boxBefore({ corners }: BuiltPull["pull"], span: Span, from: "datum" | "far"): PullStep["box"] {
  const isLastLeg = span.kind === "straight" && span.leg >= corners.length;
  const corner = corners[span.kind === "arc" ? span.bend : isLastLeg ? corners.length - 1 : span.leg];
  if (!corner) return undefined;
  const after = span.kind === "arc" ? from === "far" : isLastLeg;
  return { step: corner.step, side: after ? "after" : "before" };
}

const riseOf = ({ direction }: Span): number => direction[2];

const HEADERS = ["Pull", "Feed from", "Part", "Length or angle", "Tension lb", "Sidewall lb/ft", "Verdict"];

/** What a pull must not pass: tension [lb] and sidewall pressure [lb/ft]. */
export interface PullLimits {
  readonly tension?: number;
  readonly sidewall: number;
}

/** What a step passes, in words; ok where it passes nothing. */
function overLimit({ tension, sidewall }: PullStep, limits: PullLimits): string {
  const over = [
    limits.tension !== undefined && tension > limits.tension ? `above ${limits.tension.toFixed(0)} lb` : "",
    sidewall !== undefined && sidewall > limits.sidewall ? `above ${limits.sidewall} lb/ft` : "",
  ].filter((words) => words !== "");
  return over.length > 0 ? over.join(", ") : "ok";
}

/** One way to feed a pull. */
export interface Way {
  readonly from: "datum" | "far";
  readonly steps: readonly PullStep[];
  /** At the end it is pulled out of [lb]. */
  readonly tension: number;
  /** The most at a bend [lb/ft]. */
  readonly sidewall: number;
  /** Place of the first step that passes a limit; -1 where none does. */
  readonly past: number;
  /** How much of a limit it comes to, of the one that it comes nearest to: 1 at the limit. */
  readonly share: number;
}

/** Both ways to feed a pull, the better one first: one that keeps to the limits before one that does not, then the lower tension. */
export function waysToPull(pull: BuiltPull, cables: PulledCables, limits: PullLimits): readonly [Way, Way] {
  const way = (from: Way["from"]): Way => {
    const steps = pullSteps(pull, cables, from);
    const sidewall = Math.max(0, ...steps.map((step) => step.sidewall ?? 0));
    const past = steps.findIndex((step) => overLimit(step, limits) !== "ok");
    const tension = steps.at(-1)?.tension ?? 0;
    const most = Math.max(0, ...steps.map((step) => step.tension));
    const share = Math.max(most / (limits.tension ?? Infinity), sidewall / limits.sidewall);
    return { from, steps, tension, sidewall, past, share };
  };
  const keeps = ({ past }: Way): number => (past < 0 ? 0 : 1);
  const sorted = [way("datum"), way("far")].sort(
    (a, b) => keeps(a) - keeps(b) || a.tension - b.tension || a.sidewall - b.sidewall,
  );
  return sorted as [Way, Way];
}

/** Both ways of every pull of a run, leg by leg and bend by bend, with a header row; a line for each pull says which end to feed. */
export function pullTable({ pulls }: BuiltRun, cables: PulledCables, limits: PullLimits): (string | number)[][] {
  const rows = pulls.flatMap((pull, index) => {
    const ways = waysToPull(pull, cables, limits);
    const inOrder = [...ways].sort((a, b) => a.from.localeCompare(b.from));
    const lines = inOrder.flatMap(({ from, steps }) =>
      steps.map((step) => [
        ...[index + 1, `${from} end`, step.part, step.size, step.tension, step.sidewall ?? ""],
        overLimit(step, limits),
      ]),
    );
    return [...lines, adviceLine(index + 1, ways[0])];
  });
  return [HEADERS, ...rows];
}

/** The way to feed, and where a box would help. */
function adviceLine(pull: number, { from, tension, sidewall, past }: Way): (string | number)[] {
  const words =
    past < 0
      ? `feed from the ${from} end`
      : `neither way keeps to the limits: put a box before part ${past + 1} of the feed from the ${from} end`;
  return [pull, `${from} end`, "whole pull", "", tension, sidewall, words];
}
