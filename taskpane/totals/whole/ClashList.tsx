import type { Clash } from "../../../src/shop/checks/clashes";
import { Section } from "../../components/Section";
import { useUnits } from "../../hooks/useUnits";
import { RowLinks } from "../RowLinks";
import { wholeStrings as t } from "./wholeStrings";

/** Runs that take the same place, numbered as in the picture. */
export function ClashList({ clashes, isAll }: { clashes: readonly Clash[]; isAll: boolean }) {
  const { show } = useUnits();
  if (clashes.length === 0) return <p>{t.clashes(0)}</p>;
  return (
    <Section title={t.clashes(clashes.length)}>
      <ol className="rl-plan">
        {clashes.map(({ one, other, alongOne, alongOther, apart, needed, point }) => (
          <li key={`${one.run.name} ${other.run.name} ${alongOne}`}>
            <RowLinks names={[one.run.name, other.run.name]} /> {t.clash(show(apart), show(needed))}
            <div className="rl-hint">
              {t.where(show(alongOne), one.run.name, show(alongOther), point.map(show).join(", "))}
            </div>
          </li>
        ))}
      </ol>
      {!isAll && <p>{t.more}</p>}
    </Section>
  );
}
