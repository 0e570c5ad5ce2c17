import { Entry } from "../components/Entry";
import { useCurrency } from "../hooks/useCurrency";
import { strings } from "../strings";

const t = strings.start.currency;

/** What prices are in; the choice stays in the workbook. */
export function CurrencyEntry() {
  const { currency, setCurrency } = useCurrency();
  return <Entry label={t.about} value={currency} onChange={setCurrency} />;
}
