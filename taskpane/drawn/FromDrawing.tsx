import { Button, ProgressBar } from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import type { DrawnRows, RunsReached } from "../../src/drawn/drawnRows";
import type { LayerPlan } from "../../src/drawn/layers";
import { DRAWING_UNITS, unitNamed, type DrawingUnit } from "../../src/drawn/units";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { AddDrawn } from "./AddDrawn";
import { DrawnPreview } from "./DrawnPreview";
import type { DrawingFile } from "./drawingWork";
import { drawnStrings as t } from "./drawnStrings";
import { LayerList } from "./LayerList";
import { readInWorker, type DrawingReader } from "./readInWorker";

/** Made for the demo job; it lies beside the pane and in docs/samples. */
const SAMPLE = "upper-deck.dxf";

interface Opened {
  readonly file: DrawingFile;
  readonly saysUnit: boolean;
}

/** Runs from a drawing in steps: file, unit and layers, what comes of it, and into the table. */
export default function FromDrawing() {
  const { tables } = useLedger();
  const task = useTask();
  const input = useRef<HTMLInputElement>(null);
  const [opened, setOpened] = useState<Opened>();
  const [unit, setUnit] = useState<DrawingUnit | "">("");
  const [layers, setLayers] = useState<readonly LayerPlan[]>([]);
  const [found, setFound] = useState<DrawnRows>();

  const reader = useRef<DrawingReader>(undefined);
  const [reached, setReached] = useState<RunsReached>();
  useEffect(() => () => reader.current?.stop(), []);

  const start = (file: DrawingFile) => {
    reader.current?.stop();
    return (reader.current = readInWorker(file));
  };
  const open = async (chosen: File) => {
    setFound(undefined);
    setOpened(undefined);
    const file = { name: chosen.name, bytes: new Uint8Array(await chosen.arrayBuffer()) };
    const drawing = await start(file).open();
    setOpened({ file, saysUnit: drawing.unit !== null });
    setUnit(unitNamed(drawing.unit) ?? "");
    setLayers(drawing.layers);
  };
  const openSample = async () => {
    const response = await fetch(`samples/${SAMPLE}`);
    if (!response.ok) throw new Error(t.noSample(response.status));
    await open(new File([await response.arrayBuffer()], SAMPLE));
  };
  const ready =
    unit !== "" &&
    layers.some(({ take }) => take) &&
    layers.every(({ take, raceway, size }) => !take || (raceway !== "" && size !== ""));
  const look = async () => {
    if (!opened || unit === "") return;
    // Where it was stopped the file is read anew.
    if (!reader.current) await start(opened.file).open();
    const reading = reader.current!;
    const tablesOf = { shoes: tables.Shoes?.cells ?? null, rules: tables.Rules?.cells ?? null };
    try {
      setReached({ done: 0, of: 0 });
      setFound(await reading.look({ unit, layers, ...tablesOf }, setReached));
    } finally {
      setReached(undefined);
    }
  };
  const stop = () => {
    reader.current?.stop();
    reader.current = undefined;
  };
  const changed =
    <T,>(set: (value: T) => void) =>
    (value: T) => {
      setFound(undefined);
      set(value);
    };

  return (
    <div className="rl-stack">
      <p>{t.about}</p>
      <input
        ref={input}
        type="file"
        accept=".dxf,.csv,.txt"
        aria-label={t.choose}
        hidden
        onChange={({ target }) => {
          const file = target.files?.[0];
          target.value = "";
          if (file) void task.run(() => open(file));
        }}
      />
      <Button disabledFocusable={task.busy} onClick={() => input.current?.click()}>
        {opened ? t.another : t.choose}
      </Button>
      {!opened && (
        <Button appearance="subtle" disabledFocusable={task.busy} onClick={() => void task.run(openSample)}>
          {t.sample}
        </Button>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {opened && layers.length === 0 && <Notice intent="warning">{t.noLines}</Notice>}
      {opened && layers.length > 0 && (
        <>
          <strong>{opened.file.name}</strong>
          <Choice<DrawingUnit | "">
            label={t.unit}
            value={unit}
            options={[{ value: "", text: t.noUnit }, ...(Object.keys(DRAWING_UNITS) as DrawingUnit[])]}
            onChange={changed(setUnit)}
            {...(!opened.saysUnit && { hint: t.unitHint })}
          />
          <strong>{t.layers}</strong>
          <p className="rl-hint">{t.layersHint}</p>
          <LayerList layers={layers} onChange={changed(setLayers)} />
          {!ready && <p className="rl-hint">{t.needs}</p>}
          <SheetButton disabledFocusable={!ready || task.busy} onClick={() => void task.run(look)}>
            {task.busy ? strings.common.working : t.look}
          </SheetButton>
          {reached && (
            <>
              <ProgressBar
                aria-label={t.look}
                thickness="large"
                {...(reached.of > 0 && { max: reached.of, value: reached.done })}
              />
              <p className="rl-hint">{reached.of > 0 ? t.reached(reached.done, reached.of) : t.joining}</p>
              <Button size="small" onClick={stop}>
                {t.stop}
              </Button>
            </>
          )}
        </>
      )}
      {found && <DrawnPreview found={found} />}
      {found && (
        <AddDrawn key={found.rows.map(({ run }) => run).join()} rows={found.rows.filter(({ taken }) => taken)} />
      )}
    </div>
  );
}
