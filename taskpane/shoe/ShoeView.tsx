import { Spinner } from "@fluentui/react-components";
import { BENT_KINDS, type Raceway } from "../../src/raceway/raceway";
import { TRADE_SIZES, type TradeSize } from "../../src/raceway/tradeSize";
import { measuredWords } from "../../src/shop/shoe/measured";
import { readShoes } from "../../src/shop/shoe/shoeBook";
import { attempt } from "../components/attempt";
import { Choice } from "../components/Choice";
import { Entry } from "../components/Entry";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { unitOf } from "../components/unitOf";
import { useKept } from "../hooks/useKept";
import { useLedger } from "../hooks/useLedger";
import { useUnits } from "../hooks/useUnits";
import { strings } from "../strings";
import { testBendLengths } from "../../src/shop/shoe/testBendAdvice";
import { measure, MEASURES, SECOND, type Texts } from "./measures";
import { BentPicture, StickPicture } from "./MeasurePictures";
import { SaveShoe } from "./SaveShoe";
import { ShoeDrawing } from "./ShoeDrawing";
import { ShoeResults } from "./ShoeResults";

const t = strings.shoe;

/** Measures a shoe by one or two test bends, step by step, and keeps it in the Shoes table. */
export function ShoeView() {
  const { state, tables } = useLedger();
  const units = useUnits();
  const [raceway, setRaceway] = useKept<Raceway>("shoe.raceway", "EMT");
  const [size, setSize] = useKept<TradeSize>("shoe.size", "1/2");
  const [texts, setTexts] = useKept<Texts>("shoe.texts", {});
  if (state === "loading") return <Spinner label={strings.common.reading} />;
  const shoe = attempt(() => readShoes(tables.Shoes?.cells).shoeFor(raceway, size));
  const measured = measure(texts, raceway, size, units.typed);
  const advice = testBendLengths(raceway, size);
  const step = (keys: readonly string[]) =>
    [...MEASURES, ...SECOND]
      .filter(({ key }) => keys.includes(key))
      .map(({ key, label, kind }) => (
        <Entry
          key={key}
          label={label}
          unit={unitOf(kind, texts[key] ?? "", units.style)}
          value={texts[key] ?? ""}
          problem={measured.problems[key]}
          onChange={(text) => setTexts((before) => ({ ...before, [key]: text }))}
        />
      ));
  return (
    <>
      <div className="rl-grid">
        <Choice<Raceway> label={t.raceway} value={raceway} options={BENT_KINDS} onChange={setRaceway} />
        <Choice<TradeSize> label={t.size} value={size} options={TRADE_SIZES} onChange={setSize} />
      </div>
      <Section title={t.now}>
        {shoe.value ? (
          <>
            <ShoeDrawing shoe={shoe.value} />
            <p className="rl-hint">{t.standing(measuredWords(shoe.value), shoe.value.source)}</p>
          </>
        ) : (
          <Notice intent="warning">{shoe.problem}</Notice>
        )}
      </Section>
      <Section title={t.test.title}>
        <p>{t.test.why}</p>
        <ol className="rl-todo">
          <li>
            {t.test.mark(units.show(advice.cut), units.show(advice.mark))}
            <StickPicture />
            <div className="rl-grid">{step(["cutLength", "mark"])}</div>
          </li>
          <li>
            {t.test.bend}
            <div className="rl-grid">{step(["dialReached"])}</div>
          </li>
          <li>
            {t.test.measure}
            <BentPicture />
            <div className="rl-grid">{step(["angle", "stub", "leg"])}</div>
          </li>
          <li>
            {t.test.second}
            <div className="rl-grid">{step(["secondDial", "secondAngle"])}</div>
          </li>
        </ol>
        {measured.problem && (
          <Notice intent="error" title={t.doesNotFit}>
            {measured.problem}
          </Notice>
        )}
        {measured.open.length > 0 && <p className="rl-hint">{t.stillOpen(measured.open.length)}</p>}
      </Section>
      {measured.lines && measured.springback && (
        <Section title={t.result}>
          <ShoeResults lines={measured.lines} />
          {measured.doubts.length > 0 && (
            <Notice intent="warning" title={t.doubts}>
              {measured.doubts.join(" ")}
            </Notice>
          )}
          <SaveShoe raceway={raceway} size={size} lines={measured.lines} springback={measured.springback} />
        </Section>
      )}
    </>
  );
}
