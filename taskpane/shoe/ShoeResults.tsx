import type { Calibrated } from "../../src/bends/testBends/calibrate";
import { showDegrees, showInches } from "../../src/units/show";
import { strings } from "../strings";

/** Everything the test bend tells, each with what the tape may be off. */
export function ShoeResults({ lines }: { lines: readonly Calibrated[] }) {
  const show = (value: number, unit: string) => (unit === "°" ? showDegrees(value, 1) : showInches(value, 3));
  return (
    <table className="rl-table">
      <caption className="rl-hint">{strings.shoe.exact}</caption>
      <thead>
        <tr>
          <th scope="col">{strings.shoe.quantity}</th>
          <th scope="col" className="rl-number">
            {strings.shoe.value}
          </th>
          <th scope="col" className="rl-number">
            {strings.shoe.off}
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ quantity, value, worst, unit, meaning }) => (
          <tr key={quantity}>
            <th scope="row">
              {quantity}
              <div className="rl-hint">{meaning}</div>
            </th>
            <td className="rl-number">{show(value, unit)}</td>
            <td className="rl-number">± {show(worst, unit)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
