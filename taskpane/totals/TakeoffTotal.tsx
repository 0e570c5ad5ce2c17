import { show } from "../../src/units/show";
import { strings } from "../strings";
import { cents, type OrderLine } from "./TakeoffLine";

const t = strings.totals.takeoff;

/** Only the line that adds up has money or hours without a quantity. */
export const isTotal = (line: OrderLine): boolean =>
  line.Quantity === "" && (typeof line.Extension === "number" || typeof line.Hours === "number");

/** What the whole order comes to; what is not in the sum stands behind a line that opens. */
export function TakeoffTotal({ line }: { line: OrderLine }) {
  const sums = [
    ...(typeof line.Extension === "number" ? [cents(line.Extension)] : []),
    ...(typeof line.Hours === "number" ? [t.hours(show(line.Hours, 1))] : []),
  ];
  const left = String(line.Note);
  return (
    <div className="rl-total">
      <strong>{t.total}</strong> <span className="rl-sum">{sums.join(" · ")}</span>
      {left !== "" && (
        <details className="rl-words">
          <summary>{t.notInTotal}</summary>
          <ul className="rl-behind">
            {left.split("; ").map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
