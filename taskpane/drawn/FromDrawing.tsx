import { Button } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { drawnRows, type DrawnRows } from "../../src/drawn/drawnRows";
import type { Drawing } from "../../src/drawn/file/drawing";
import { readDrawing } from "../../src/drawn/file/readDrawing";
import { planLayers, type LayerPlan } from "../../src/drawn/layers";
import { DRAWING_UNITS, unitNamed, type DrawingUnit } from "../../src/drawn/units";
import { readRules } from "../../src/rules/rules";
import { fittingRule } from "../../src/shop/fittings/fittingRule";
import { readShoes } from "../../src/shop/shoe/shoeBook";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { AddDrawn } from "./AddDrawn";
import { DrawnPreview } from "./DrawnPreview";
import { drawnStrings as t } from "./drawnStrings";
import { LayerList } from "./LayerList";
import { readFile } from "./readFile";

interface Opened {
  readonly name: string;
  readonly drawing: Drawing;
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

  const open = async (file: File) => {
    setFound(undefined);
    setOpened(undefined);
    const drawing = readDrawing(await readFile(file), file.name);
    setOpened({ name: file.name, drawing });
    setUnit(unitNamed(drawing.unit) ?? "");
    setLayers(planLayers(drawing));
  };
  const ready =
    unit !== "" &&
    layers.some(({ take }) => take) &&
    layers.every(({ take, raceway, size }) => !take || (raceway !== "" && size !== ""));
  const look = async () => {
    if (!opened || unit === "") return;
    // The words on the button come before the work, which holds the pane up.
    await new Promise((resolve) => setTimeout(resolve, 30));
    const [shoes, elbows] = [
      readShoes(tables.Shoes?.cells ?? null),
      fittingRule(readRules(tables.Rules?.cells ?? null)),
    ];
    setFound(drawnRows(opened.drawing, { unit: DRAWING_UNITS[unit], layers, shoes, elbows }));
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
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {opened && layers.length === 0 && <Notice intent="warning">{t.noLines}</Notice>}
      {opened && layers.length > 0 && (
        <>
          <strong>{opened.name}</strong>
          <Choice<DrawingUnit | "">
            label={t.unit}
            value={unit}
            options={[{ value: "", text: t.noUnit }, ...(Object.keys(DRAWING_UNITS) as DrawingUnit[])]}
            onChange={changed(setUnit)}
            {...(opened.drawing.unit === null && { hint: t.unitHint })}
          />
          <strong>{t.layers}</strong>
          <p className="rl-hint">{t.layersHint}</p>
          <LayerList layers={layers} onChange={changed(setLayers)} />
          {!ready && <p className="rl-hint">{t.needs}</p>}
          <SheetButton disabledFocusable={!ready || task.busy} onClick={() => void task.run(look)}>
            {task.busy ? strings.common.working : t.look}
          </SheetButton>
        </>
      )}
      {found && <DrawnPreview found={found} />}
      {found && (
        <AddDrawn key={found.rows.map(({ run }) => run).join()} rows={found.rows.filter(({ taken }) => taken)} />
      )}
    </div>
  );
}
