import type { TakeoffPart } from "../../src/takeoff/lines/takeoffParts";
import { strings } from "../strings";
import { cents } from "./TakeoffLine";

const t = strings.totals.takeoff;

/** The heading of a part of the take-off, with what the lines under it come to. */
export function TakeoffHeading({
  part: { heading, extension, hours, lacking },
  unnamed,
  columns,
}: {
  part: TakeoffPart;
  /** What stands for an empty heading. */
  unnamed: string;
  columns: readonly string[];
}) {
  const sums: Record<string, string> = {
    Extension: extension === null ? "" : cents(extension),
    Hours: hours === null ? "" : hours.toFixed(2),
  };
  const summed = columns.some((column) => sums[column] !== "");
  return (
    <tr className="rl-group">
      <th scope="rowgroup" colSpan={2}>
        {heading || unnamed}
        {summed && lacking > 0 && <div className="rl-hint">{t.lacking(lacking)}</div>}
      </th>
      {columns.map((column) => (
        <td key={column} className="rl-number">
          {sums[column]}
        </td>
      ))}
    </tr>
  );
}
