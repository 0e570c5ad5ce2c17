import { Button } from "@fluentui/react-components";
import { ChevronDownRegular, ChevronRightRegular } from "@fluentui/react-icons";
import { trace } from "../../src/takeoff/reports/trace";
import { showMoney } from "../../src/units/money";
import { show } from "../../src/units/show";
import { attempt } from "../components/attempt";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { recordsOf } from "../workbook/recordsOf";
import { orderTables } from "./orderTables";
import { RowLinks } from "./RowLinks";

const t = strings.totals.takeoff;

/** A line of the take-off by its headers. */
export type OrderLine = Readonly<Record<string, string | number>>;

interface LineProps {
  line: OrderLine;
  /** Columns the order is grouped by, parted by commas; empty for none. */
  by: string;
  /** Columns after Quantity. */
  columns: readonly string[];
  open: boolean;
  onOpen(): void;
}

export function TakeoffLine({ line, by, columns, open, onOpen }: LineProps) {
  const item = String(line.Item);
  const counted = typeof line.Quantity === "number";
  const note = String(line.Note)
    .split("; ")
    .filter((words) => words !== `no price for ${item}`)
    .join("; ");
  return (
    <>
      <tr>
        <th scope="row">
          {counted ? (
            <Button
              size="small"
              appearance="transparent"
              className="rl-open"
              icon={open ? <ChevronDownRegular /> : <ChevronRightRegular />}
              aria-expanded={open}
              onClick={onOpen}
            >
              {item}
            </Button>
          ) : (
            item
          )}
          {note !== "" && <div className="rl-hint">{note}</div>}
        </th>
        <td className="rl-number">{counted && `${show(Number(line.Quantity), 1)} ${line.Unit}`}</td>
        {columns.map((column) => (
          <td key={column} className="rl-number">
            {column === "Hours" ? hours(line) : price(line)}
          </td>
        ))}
      </tr>
      {open && (
        <tr>
          <td colSpan={2 + columns.length}>
            <Behind line={line} by={by} />
          </td>
        </tr>
      )}
    </>
  );
}

/** The runs behind a line, with what each takes; behind a share of a whole, the runs behind the whole. */
function Behind({ line, by }: { line: OrderLine; by: string }) {
  const { tables } = useLedger();
  const item = String(line.Item);
  const columns = by === "" ? [] : by.split(", ");
  const tell = (grouped: string) =>
    attempt(() => recordsOf(trace(tables.Runs?.cells, item, orderTables(tables, grouped))));
  const own = tell(by);
  const rows = own.value?.filter((row) => isPart(row) && columns.every((column) => row[column] === line[column])) ?? [];
  const isShare = by !== "" && Math.abs(sumOf(rows) - Number(line.Quantity)) > NONE;
  const told = isShare ? tell("") : own;
  if (!told.value) return <p className="rl-hint">{told.problem}</p>;
  return (
    <>
      {isShare && <p className="rl-hint">{t.share}</p>}
      <ul className="rl-behind" aria-label={t.behind(item)}>
        {(isShare ? told.value.filter(isPart) : rows).map((row, index) => (
          <li key={index}>
            <RowLinks names={String(row.Run).split(", ")} /> <span className="rl-number">{amount(row)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** Less of a quantity than this is none [ft or pieces]. */
const NONE = 1e-6;

const isPart = (row: OrderLine): boolean => typeof row.Each === "number";
const sumOf = (rows: readonly OrderLine[]): number => rows.reduce((sum, { Amount }) => sum + Number(Amount), 0);

const amount = (row: OrderLine): string =>
  `${show(Number(row.Each), 1)} × ${row.Times} = ${show(Number(row.Amount), 1)}`;

/** Money to the cent. */
export const cents = (amount: number): string => showMoney(Number(amount.toFixed(2)));

const price = ({ Extension, ...line }: OrderLine) => {
  if (typeof Extension === "number") return cents(Extension);
  return line["Unit price"] === "no price" ? <span className="rl-hint">{t.noPrice}</span> : "";
};

const hours = ({ Hours }: OrderLine): string => (typeof Hours === "number" ? Hours.toFixed(2) : "");
