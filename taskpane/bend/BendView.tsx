import { Spinner } from "@fluentui/react-components";
import { useMemo } from "react";
import { readShoes } from "../../src/shop/shoe/shoeBook";
import { buildOneRun } from "../../src/shop/run/oneRun";
import { scheduleRun } from "../../src/shop/schedule/schedule";
import { BENT_KINDS, type Raceway } from "../../src/raceway/raceway";
import { TRADE_SIZES, type TradeSize } from "../../src/raceway/tradeSize";
import { attempt } from "../components/attempt";
import { Choice } from "../components/Choice";
import { Entry } from "../components/Entry";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { unitOf } from "../components/unitOf";
import { useKept } from "../hooks/useKept";
import { useLedger } from "../hooks/useLedger";
import { useUnits } from "../hooks/useUnits";
import { Marks } from "../run/Marks";
import { strings } from "../strings";
import { Answer } from "./Answer";
import { BendDrawing } from "./BendDrawing";
import { KindPicker } from "./KindPicker";
import { BEND_KINDS, type BendChoice } from "./kinds";
import { PutInRun } from "./PutInRun";
import { PutInSheet } from "./PutInSheet";
import { readFields, routeSteps } from "./readFields";

const t = strings.bend;

/** One bend: choose its kind, say its dimensions, see it to scale with its marks, put it in the sheet. */
export function BendView() {
  const { state, tables } = useLedger();
  const units = useUnits();
  const [kindId, setKind] = useKept<BendChoice["id"]>("bend.kind", "stub-up");
  const kind = BEND_KINDS.find(({ id }) => id === kindId) ?? (BEND_KINDS[0] as BendChoice);
  const [texts, setTexts] = useKept<Record<string, string>>("bend.texts", {});
  const [raceway, setRaceway] = useKept<Raceway>("bend.raceway", "EMT");
  const [size, setSize] = useKept<TradeSize>("bend.size", "1/2");
  const shoes = tables.Shoes?.cells;
  const shoe = useMemo(() => attempt(() => readShoes(shoes).shoeFor(raceway, size)), [shoes, raceway, size]);
  const { values, problems } = readFields(kind, own(kind, texts), units.typed);
  const typedTexts = Object.fromEntries(
    kind.fields.map(({ key, kind: what }) => {
      const text = own(kind, texts)[key] ?? "";
      return [key, what === "length" ? units.typed(text) : text.replace(/\s*°$/, "")];
    }),
  );
  const route = values && routeSteps(kind, values).join(", ");
  const worked = useMemo(
    () => (route === undefined ? undefined : attempt(() => buildOneRun(route, raceway, size, shoes))),
    [route, raceway, size, shoes],
  );
  if (state === "loading") return <Spinner label={strings.common.reading} />;
  const built = worked?.value;
  const rows = built ? scheduleRun(built) : [];
  const notBuilt = shoe.problem ?? (worked?.problem ? inFields(worked.problem) : undefined);

  return (
    <>
      <KindPicker value={kind.id} onChange={setKind} />
      <Section title={kind.title}>
        <div className="rl-grid">
          <Choice<Raceway> label={t.raceway} value={raceway} options={BENT_KINDS} onChange={setRaceway} />
          <Choice<TradeSize> label={t.size} value={size} options={TRADE_SIZES} onChange={setSize} />
          {kind.fields.map((field) => (
            <Entry
              key={`${kind.id} ${field.key}`}
              label={field.label}
              unit={unitOf(field.kind, texts[`${kind.id} ${field.key}`] ?? field.first, units.style)}
              value={texts[`${kind.id} ${field.key}`] ?? field.first}
              problem={problems[field.key]}
              onChange={(text) => setTexts((before) => ({ ...before, [`${kind.id} ${field.key}`]: text }))}
            />
          ))}
        </div>
        {notBuilt && (
          <Notice intent="error" title={t.notBuilt}>
            {notBuilt}
          </Notice>
        )}
      </Section>
      {values && built && shoe.value && (
        <>
          <Answer rows={rows} />
          <PutInSheet kind={kind} values={values} raceway={raceway} size={size} built={built} rows={rows} />
          <PutInRun kind={kind} values={values} texts={typedTexts} raceway={raceway} size={size} />
          <div className="rl-beside">
            <BendDrawing kind={kind} values={values} built={built} rows={rows} />
            <Section title={t.marks}>
              <Marks rows={rows} />
            </Section>
          </div>
        </>
      )}
    </>
  );
}

/** Each kind keeps its own texts, so that trying another kind loses nothing. */
const own = (kind: BendChoice, texts: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(kind.fields.map(({ key, first }) => [key, texts[`${kind.id} ${key}`] ?? first]));

/** Steps mean nothing to a person who has typed none. */
const inFields = (problem: string): string => problem.replace(/\bsteps? \d+(?: and \d+)?: | in step \d+\b/g, "");
