import { drawRun } from "../../src/drawing/run/drawRun";
import type { RunEnd, RunPull } from "../../src/drawing/run/runDrawing";
import type { RunView } from "../../src/drawing/run/projection";
import { readEdition } from "../../src/raceway/code/edition";
import { supportPlaces, supportRule } from "../../src/raceway/code/supports";
import type { Path } from "../../src/geometry/path";
import { add, ORIGIN, type Vec3 } from "../../src/geometry/vector";
import { pullPath } from "../../src/route/problems";
import type { Pull, PullEnd } from "../../src/route/text/types";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { bodyOf, runWhips } from "../../src/shop/run/pullEnds";
import { Section } from "../components/Section";
import { Turned } from "../components/Turned";
import { useUnits } from "../hooks/useUnits";
import { strings } from "../strings";

const t = strings.run.view;

const movedPath = ({ points, radii }: Path, by: Vec3 = ORIGIN): Path => ({
  points: points.map((point) => add(point, by)),
  radii,
});

const endDrawn = (end: PullEnd): RunEnd => (bodyOf(end) ? "body" : end === "whip" ? "open" : "box");

/** A pull starts at what the one before it ends at, or where its flexible piece goes. */
const startDrawn = ({ end, whip }: Pull): RunEnd => (whip ? (whip.toBox ? "box" : "open") : endDrawn(end));

/**
 * The run to scale: from above, from the side, or turned any way by dragging or with two sliders. The bends of the step
 * the person is in are pointed out.
 */
export function RunDrawing({
  built,
  beside = [],
  step,
  onPick,
}: {
  built: BuiltRun;
  /** The other conduits of its rack. */
  beside?: readonly BuiltRun[];
  step: number;
  /** The person points at a bend of this step. */
  onPick(step: number): void;
}) {
  const units = useUnits();
  const supports = supportRule(built.run.raceway, built.run.size, readEdition(undefined));
  const draw = (view: RunView, width: number) =>
    drawRun(
      {
        name: built.run.name,
        outsideDiameter: built.shoe.outsideDiameter,
        whips: runWhips(built),
        beside: beside.flatMap(({ run, pulls }) =>
          pulls.map(({ pull }) => movedPath(pullPath(pull), run.rack?.offset)),
        ),
        pulls: built.pulls.map(({ pull, parts, joints, elbows }, index): RunPull => ({
          path: pullPath(pull),
          start: index === 0 ? "box" : startDrawn(built.pulls[index - 1]!.pull),
          end: endDrawn(pull.end),
          couplings: joints,
          elbows: elbows.map(({ place }) => place),
          straps: supportPlaces(parts.developed, supports),
        })),
      },
      { view, width, show: units.show, highlight: bendsOfStep(built, step) },
    );
  const pick = (target: Element) => {
    const picked = stepOfBend(built, bendAt(target));
    if (picked !== undefined) onPick(picked);
  };
  return (
    <Section title={t.title}>
      <Turned draw={draw} onPick={pick} />
    </Section>
  );
}

/** Bends that a step asks for, counted from 1 through the run. */
const bendsOfStep = ({ pulls }: BuiltRun, step: number): number[] =>
  pulls.flatMap(({ pull }) => pull.corners).flatMap((corner, index) => (corner.step === step ? [index + 1] : []));

/** The number that is pointed at: a circle is followed by its number. NaN elsewhere. */
function bendAt(target: Element): number {
  const text = target.tagName === "circle" ? target.nextElementSibling : target;
  return text?.tagName === "text" ? Number(text.textContent) : NaN;
}

/** The step that asks for a bend, by its number through the run. */
const stepOfBend = ({ pulls }: BuiltRun, bend: number): number | undefined =>
  pulls.flatMap(({ pull }) => pull.corners)[bend - 1]?.step;
