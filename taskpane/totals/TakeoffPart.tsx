import { Fragment, useMemo, useState } from "react";
import { takeoff } from "../../src/takeoff/lines/takeoff";
import { LACKING } from "../../src/takeoff/lines/takeoffTable";
import { attempt } from "../components/attempt";
import { Choice } from "../components/Choice";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useKept } from "../hooks/useKept";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { recordsOf } from "../workbook/recordsOf";
import { FillLists } from "./FillLists";
import { orderTables } from "./orderTables";
import { TakeoffLine, type OrderLine } from "./TakeoffLine";
import { isTotal, TakeoffTotal } from "./TakeoffTotal";

const t = strings.totals.takeoff;
const BY = ["Job", "Area", "Crew", "Date"] as const;
type By = (typeof BY)[number] | "";

/** What to order, line by line, with its price and hours; a line opens to the runs behind its number. */
export function TakeoffPart() {
  const { tables } = useLedger();
  const [by, setBy] = useKept<By>("totals.by", "");
  const [open, setOpen] = useState("");
  const found = useMemo(
    () => attempt(() => recordsOf(takeoff(tables.Runs?.cells, orderTables(tables, by)))),
    [tables, by],
  );
  const lines = found.value ?? [];
  const total = lines.find(isTotal);
  const columns = ["Extension", "Hours"].filter((column) => lines[0] && column in lines[0]);
  // What the total lacks stands under it.
  const rows = lines.filter((line) => line !== total && !isLacking(line));
  return (
    <Section title={t.title}>
      <Choice<By>
        label={t.by}
        value={by}
        options={[{ value: "", text: t.noGroups }, ...BY]}
        onChange={setBy}
        hint={by === "" ? undefined : t.ownSticks}
      />
      {found.problem && <Notice intent="error">{found.problem}</Notice>}
      {total && <TakeoffTotal line={total} />}
      <FillLists />
      <table className="rl-table">
        <thead>
          <tr>
            <th scope="col">{t.item}</th>
            {["Quantity", ...columns].map((column) => (
              <th key={column} scope="col" className="rl-number">
                {t.columns[column]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((line, index) => {
            const key = `${groupOf(line, by)}\n${line.Item}`;
            return (
              <Fragment key={index}>
                {by !== "" && isCounted(line) && groupOf(line, by) !== groupOf(rows[index - 1], by) && (
                  <tr>
                    <th scope="rowgroup" className="rl-group" colSpan={2 + columns.length}>
                      {groupOf(line, by) || t.unnamed(by)}
                    </th>
                  </tr>
                )}
                <TakeoffLine
                  line={line}
                  by={by}
                  columns={columns}
                  open={open === key}
                  onOpen={() => setOpen(open === key ? "" : key)}
                />
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </Section>
  );
}

const isLacking = ({ Item }: OrderLine): boolean =>
  Object.values(LACKING).some((words) => String(Item).startsWith(`${words}:`));

const isCounted = (line: OrderLine): boolean => typeof line.Quantity === "number";

/** The line's group; undefined for no line, so that the first one begins a group. */
const groupOf = (line: OrderLine | undefined, by: By): string | undefined =>
  line && (by === "" ? "" : String(line[by] ?? ""));
