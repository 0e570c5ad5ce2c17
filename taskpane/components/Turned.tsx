import { useRef, useState, type PointerEvent } from "react";
import type { RunView } from "../../src/drawing/run/projection";
import type { Scene } from "../../src/drawing/paper/scene";
import { useWidth } from "../hooks/useWidth";
import { strings } from "../strings";
import { Choice } from "./Choice";
import { Drawing } from "./Drawing";

const t = strings.run.view;

type Seen = "isometric" | "plan" | "elevation" | "fromWest" | "turned";

/** Half a turn of the drawing for a drag across it [°/px]. */
const DRAG = 0.6;
/** A press that moves less than this is a click [px]. */
const STILL = 4;
const START = { azimuth: -45, elevation: 25 };
/** What is looked at toward the east. */
const FROM_WEST = { azimuth: 90, elevation: 0 };

/** A drawing of things in space: from above, from two sides, or turned any way by dragging or with two sliders. */
export function Turned({
  draw,
  onPick,
}: {
  draw(view: RunView, width: number): Scene;
  /** The person points at a part of the drawing. */
  onPick(target: Element): void;
}) {
  const [watch, width] = useWidth(296);
  const [seen, setSeen] = useState<Seen>("isometric");
  const [turn, setTurn] = useState(START);
  const view: RunView = seen === "turned" ? turn : seen === "fromWest" ? FROM_WEST : seen;
  const { moved, ...drag } = useDrag((x, y) => {
    setSeen("turned");
    setTurn(({ azimuth, elevation }) => ({
      azimuth: wrapped(azimuth - x * DRAG),
      elevation: Math.max(-90, Math.min(90, elevation + y * DRAG)),
    }));
  });
  return (
    <>
      <Choice<Seen>
        label={t.choose}
        value={seen}
        options={[
          { value: "isometric", text: t.isometric },
          { value: "plan", text: t.plan },
          { value: "elevation", text: t.elevation },
          { value: "fromWest", text: t.fromWest },
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
      <div
        ref={watch}
        className="rl-turnable"
        {...drag}
        onClick={(event) => {
          if (moved() < STILL) onPick(event.target as Element);
        }}
      >
        <Drawing scene={draw(view, width)} />
      </div>
    </>
  );
}

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
  const way = useRef(0);
  return {
    /** How far it moved since it was pressed [px]. */
    moved: () => way.current,
    onPointerDown: (event: PointerEvent) => {
      way.current = 0;
      if ((event.target as Element).closest("svg")) last.current = { x: event.clientX, y: event.clientY };
    },
    onPointerMove: (event: PointerEvent) => {
      const { current } = last;
      if (!current || event.buttons === 0) return;
      last.current = { x: event.clientX, y: event.clientY };
      way.current += Math.abs(event.clientX - current.x) + Math.abs(event.clientY - current.y);
      onMove(event.clientX - current.x, event.clientY - current.y);
    },
    onPointerUp: () => (last.current = undefined),
  };
}

const wrapped = (degrees: number): number => ((((degrees + 180) % 360) + 360) % 360) - 180;
