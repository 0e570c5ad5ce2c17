import { Entry } from "../components/Entry";
import { strings } from "../strings";
import { sheetNameProblem, type PlanItem } from "../workbook/plan";
import type { SetUp } from "./useSetUp";

const t = strings.start;

/** What will be made, and under which name; a name that is taken can be changed here. */
export function PlanList({ setUp, items }: { setUp: SetUp; items: readonly PlanItem[] }) {
  const { plan, contents, setPlan } = setUp;
  if (!contents) return null;
  const rename = (item: string, sheet: string) =>
    setPlan(plan.map((each) => (each.item === item ? { ...each, sheet } : each)));
  return (
    <ul className="rl-plan">
      {items.map((each) => (
        <li key={each.item}>
          <div>
            <strong>{each.item}</strong> <span className="rl-hint">{t.about[each.item]}</span>
          </div>
          {each.taken && (
            <Entry
              label={t.names.label(each.item)}
              value={each.sheet}
              problem={sheetNameProblem(each, plan, contents)}
              onChange={(sheet) => rename(each.item, sheet)}
            />
          )}
        </li>
      ))}
    </ul>
  );
}
