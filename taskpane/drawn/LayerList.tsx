import { Checkbox, Select } from "@fluentui/react-components";
import type { LayerPlan } from "../../src/drawn/layers";
import { RACEWAYS } from "../../src/raceway/raceway";
import { TRADE_SIZES } from "../../src/raceway/tradeSize";
import { drawnStrings as t } from "./drawnStrings";

/** The layers that lines lie on: take them or not, and as what. */
export function LayerList({ layers, onChange }: { layers: readonly LayerPlan[]; onChange(layers: LayerPlan[]): void }) {
  const change = (layer: string, part: Partial<LayerPlan>) =>
    onChange(layers.map((plan) => (plan.layer === layer ? { ...plan, ...part } : plan)));
  return (
    <ul className="rl-layers">
      {layers.map((plan) => (
        <li key={plan.layer}>
          <Checkbox
            checked={plan.take}
            onChange={(_, { checked }) => change(plan.layer, { take: checked === true })}
            label={`${plan.layer} (${t.lines(plan.lines)})`}
            aria-label={t.take(plan.layer)}
          />
          <Select
            size="small"
            aria-label={t.raceway(plan.layer)}
            value={plan.raceway}
            onChange={(_, { value }) => change(plan.layer, { raceway: value as LayerPlan["raceway"] })}
          >
            <option value="">{t.noRaceway}</option>
            {RACEWAYS.map((raceway) => (
              <option key={raceway}>{raceway}</option>
            ))}
          </Select>
          <Select
            size="small"
            aria-label={t.size(plan.layer)}
            value={plan.size}
            onChange={(_, { value }) => change(plan.layer, { size: value as LayerPlan["size"] })}
          >
            <option value="">{t.noSize}</option>
            {TRADE_SIZES.map((size) => (
              <option key={size}>{size}</option>
            ))}
          </Select>
        </li>
      ))}
    </ul>
  );
}
