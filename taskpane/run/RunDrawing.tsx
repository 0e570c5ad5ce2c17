import { useRef, useState, type PointerEvent } from "react";
import { drawRun } from "../../src/drawing/run/drawRun";
import type { RunEnd, RunPull } from "../../src/drawing/run/runDrawing";
import type { RunView } from "../../src/drawing/run/projection";
import { readEdition } from "../../src/raceway/code/edition";
import { supportPlaces, supportRule } from "../../src/raceway/code/supports";
import { pullPath } from "../../src/route/problems";
import type { Pull, PullEnd } from "../../src/route/text/types";
import type { BuiltRun } from "../../src/shop/run/builtRun";
import { bodyOf, runWhips } from "../../src/shop/run/pullEnds";
import { Choice } from "../components/Choice";
import { Drawing } from "../components/Drawing";
import { Section } from "../components/Section";
import { useWidth } from "../hooks/useWidth";
import { useUnits } from "../hooks/useUnits";
import { strings } from "../strings";

const t = strings.run.view;

type Seen = "isometric" | "plan" | "elevation" | "turned";

const endDrawn = (end: PullEnd): RunEnd => (bodyOf(end) ? "body" : end === "whip" ? "open" : "box");

/** A pull starts at what the one before it ends at, or where its flexible piece goes. */
const startDrawn = ({ end, whip }: Pull): RunEnd => (whip ? (whip.toBox ? "box" : "open") : endDrawn(end));

/** Half a turn of the drawing for a drag across it [°/px]. */
const DRAG = 0.6;
const START = { azimuth: -45, elevation: 25 };

/**
 * The run to scale: from above, from the side, or turned any way by dragging or with two sliders. The bends of the step
 * the person is in are pointed out.
 */
export function RunDrawing({
  built,
  step,
  onPick,
}: {
  built: BuiltRun;
  step: number;
  /** The person points at a bend of this step. */
  onPick(step: number): void;
}) {
  const units = useUnits();
  const [watch, width] = useWidth(296);
  const [seen, setSeen] = useState<Seen>("isometric");
  const [turn, setTurn] = useState(START);
  const view: RunView = seen === "turned" ? turn : seen;
  const supports = supportRule(built.run.raceway, built.run.size, readEdition(undefined));
  const scene = drawRun(
    {
      name: built.run.name,
      outsideDiameter: built.shoe.outsideDiameter,
      whips: runWhips(built),
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
  const turnBy = (right: number, down: number) =>
    setTurn(({ azimuth, elevation }) => ({
      azimuth: wrapped(azimuth - right),
      elevation: Math.max(-90, Math.min(90, elevation + down)),
    }));
  const pick = (target: Element) => {
    const picked = stepOfBend(built, bendAt(target));
    if (picked !== undefined) onPick(picked);
  };
  const drag = useDrag((x, y) => {
    setSeen("turned");
    turnBy(x * DRAG, y * DRAG);
  });
  return (
    <Section title={t.title}>
      <Choice<Seen>
        label={t.choose}
        value={seen}
        options={[
          { value: "isometric", text: t.isometric },
          { value: "plan", text: t.plan },
          { value: "elevation", text: t.elevation },
          { value: "turned", text: t.turned },
        ]}
        onChange={setSeen}
      />
      {seen === "turned" && (
        <div className="rl-grid">
          <Slider
            label={t.turn}
            min={-180}
            max={180}
            value={turn.azimuth}
            onChange={(azimuth) => setTurn({ ...turn, azimuth })}
          />
          <Slider
            label={t.tilt}
            min={-90}
            max={90}
            value={turn.elevation}
            onChange={(elevation) => setTurn({ ...turn, elevation })}
          />
        </div>
      )}
      <div ref={watch} className="rl-turnable" {...drag} onClick={(event) => pick(event.target as Element)}>
        <Drawing scene={scene} />
      </div>
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

interface SliderProps {
  label: string;
  min: number;
  max: number;
  value: number;
  onChange(value: number): void;
}

function Slider({ label, min, max, value, onChange }: SliderProps) {
  return (
    <label className="rl-slider">
      {label}
      <input
        type="range"
        min={min}
        max={max}
        step={5}
        value={Math.round(value)}
        aria-valuetext={`${Math.round(value)}°`}
        onChange={(event) => onChange(Number(event.target.value))}
      />
    </label>
  );
}

/** Tells of each move of a pointer that is held down on an element [px]. */
function useDrag(onMove: (x: number, y: number) => void) {
  const last = useRef<{ x: number; y: number } | undefined>(undefined);
  return {
    onPointerDown: (event: PointerEvent) => {
      if ((event.target as Element).closest("svg")) last.current = { x: event.clientX, y: event.clientY };
    },
    onPointerMove: (event: PointerEvent) => {
      const { current } = last;
      if (!current || event.buttons === 0) return;
      last.current = { x: event.clientX, y: event.clientY };
      onMove(event.clientX - current.x, event.clientY - current.y);
    },
    onPointerUp: () => (last.current = undefined),
  };
}

const wrapped = (degrees: number): number => ((((degrees + 180) % 360) + 360) % 360) - 180;
