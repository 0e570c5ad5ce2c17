import { Button, Checkbox, Spinner } from "@fluentui/react-components";
import { lazy, Suspense, useEffect, useRef, useState, type ReactNode } from "react";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { SheetButton } from "../components/SheetButton";
import { useTask } from "../hooks/useTask";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { Cautions } from "./Cautions";
import { CurrencyEntry } from "./CurrencyEntry";
import { MoreColumns } from "../run/MoreColumns";
import { DemoJob } from "./DemoJob";
import { LoadWithWorkbook } from "./LoadWithWorkbook";
import { MapTable } from "./MapTable";
import { PlanList } from "./PlanList";
import { UnitChoice } from "./UnitChoice";
import { WriteAnew } from "./WriteAnew";
import { useSetUp } from "./useSetUp";
import { EXTRAS } from "../workbook/items";
import { sheetNameProblem } from "../workbook/plan";

const t = strings.start;

// What reads drawings comes when it is asked for.
const FromDrawing = lazy(() => import(/* webpackChunkName: "pane-drawn" */ "../drawn/FromDrawing"));
// So does what tries Excel out, with the guide's examples.
const TrialView = lazy(() => import(/* webpackChunkName: "pane-trial" */ "../trial/TrialView"));

interface Props {
  toRun(): void;
  /** How often the part that reads drawings was asked for from outside. */
  drawingAsked?: number;
}

/** Sets the workbook up: what is missing is made, what is there is left as it is. */
export function StartView({ toRun, drawingAsked = 0 }: Props) {
  const { state, tables } = useLedger();
  const setUp = useSetUp();
  const task = useTask();
  const [wanted, setWanted] = useState(false);
  const { contents, plan } = setUp;
  if (state === "failed") return <p>{t.openOne}</p>;
  if (!contents) return <Spinner label={strings.common.reading} />;
  const missing = plan.filter(({ there }) => !there);
  const needed = missing.filter(({ item, begun }) => begun || !EXTRAS.includes(item));
  const extras = missing.filter((item) => !needed.includes(item));
  const begun = missing.filter((item) => item.begun).map(({ sheet }) => sheet);
  const ready = needed.length === 0;
  const namesFit = missing.every((item) => sheetNameProblem(item, plan, contents) === undefined);
  const make = (withExtras: boolean) => void task.run(async () => void (await setUp.carryOut(withExtras)));
  return (
    <>
      <p>{t.intro}</p>
      <WriteAnew setUp={setUp} />
      {ready ? (
        <Notice
          intent="success"
          actions={
            <Button size="small" appearance="primary" onClick={toRun}>
              {t.toRun}
            </Button>
          }
        >
          {t.ready}
        </Notice>
      ) : (
        <Section title={t.setUp.title}>
          {begun.length > 0 && <Notice intent="warning">{t.setUp.begun(begun.join(", "))}</Notice>}
          <p>{missing.some(({ taken }) => taken) ? t.setUp.someTaken : t.setUp.what}</p>
          <PlanList setUp={setUp} items={needed} />
          {extras.length > 0 && (
            <Checkbox
              checked={wanted}
              onChange={(_, { checked }) => setWanted(checked === true)}
              label={t.setUp.extras(extras.map(({ item }) => item).join(", "))}
            />
          )}
          <SheetButton appearance="primary" disabledFocusable={task.busy || !namesFit} onClick={() => make(wanted)}>
            {task.busy ? strings.common.working : begun.length > 0 ? t.setUp.goOn : t.setUp.button}
          </SheetButton>
        </Section>
      )}
      {ready && extras.length > 0 && (
        <Section title={t.extras.title}>
          <p>{t.extras.about}</p>
          <PlanList setUp={setUp} items={extras} />
          <SheetButton disabledFocusable={task.busy || !namesFit} onClick={() => make(true)}>
            {task.busy ? strings.common.working : t.extras.button}
          </SheetButton>
        </Section>
      )}
      {task.problem && <Notice intent="error">{task.problem}</Notice>}
      {tables.Runs && (
        <Section title={t.columns.title}>
          <p>{t.columns.about}</p>
          <MoreColumns />
        </Section>
      )}
      <LoadWithWorkbook />
      <DemoJob setUp={setUp} />
      <MapTable setUp={setUp} />
      <WhenAsked {...t.drawing} asked={drawingAsked}>
        <FromDrawing />
      </WhenAsked>
      <Section title={t.units.title}>
        <UnitChoice />
      </Section>
      <Section title={t.currency.title}>
        <CurrencyEntry />
      </Section>
      <WhenAsked {...t.trial}>
        <TrialView />
      </WhenAsked>
      <Cautions />
    </>
  );
}

interface WhenAskedProps {
  title: string;
  button: string;
  /** How often it was asked for from outside, which opens it and brings it into view. */
  asked?: number;
  children: ReactNode;
}

/** A part that loads once its button is pressed. */
function WhenAsked({ title, button, asked = 0, children }: WhenAskedProps) {
  const [isPressed, setPressed] = useState(false);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (asked > 0) place.current?.scrollIntoView?.();
  }, [asked]);
  const isOpen = isPressed || asked > 0;
  return (
    <Section title={title}>
      <div ref={place} />
      {isOpen ? (
        <Suspense fallback={<Spinner label={strings.common.opening} />}>{children}</Suspense>
      ) : (
        <Button onClick={() => setPressed(true)}>{button}</Button>
      )}
    </Section>
  );
}
