import { useMemo, useState } from "react";
import { groupedParts } from "../../src/bid/takeoffInGroups";
import type { TakeoffPart as Headed } from "../../src/takeoff/lines/takeoffParts";
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
import { TakeoffHeading } from "./TakeoffHeading";
import { TakeoffLine, type OrderLine } from "./TakeoffLine";
import { isTotal, TakeoffTotal } from "./TakeoffTotal";

const t = strings.totals.takeoff;
const BY = ["Job", "Area", "Area, Phase", "Phase", "Crew", "Date"] as const;
type By = (typeof BY)[number] | "";

/** What to order, line by line, with its price and hours; a line opens to the runs behind its number. */
export function TakeoffPart() {
  const { tables } = useLedger();
  const [by, setBy] = useKept<By>("totals.by", "");
  const [open, setOpen] = useState("");
  const found = useMemo(() => attempt(() => groupedParts(tables.Runs?.cells, orderTables(tables, by))), [tables, by]);
  const lines = recordsOf(found.value?.table ?? []);
  const total = lines.find(isTotal);
  const { sections, rest } = inSections(
    lines.filter((line) => line !== total && !isLacking(line)),
    found.value?.parts,
  );
  const columns = ["Extension", "Hours"].filter((column) => lines[0] && column in lines[0]);
  const lineOf = (line: OrderLine, heading: string, index: number) => {
    const key = `${heading}\n${line.Item}`;
    return (
      <TakeoffLine
        key={`${key} ${index}`}
        line={line}
        by={by}
        columns={columns}
        open={open === key}
        onOpen={() => setOpen(open === key ? "" : key)}
      />
    );
  };
  return (
    <Section title={t.title}>
      <Choice<By>
        label={t.by}
        value={by}
        options={[{ value: "", text: t.noGroups }, ...BY]}
        onChange={setBy}
        hint={by === "" ? undefined : t.oneOrder}
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
        {sections.map(({ part, lines: own }, place) => (
          <tbody key={place}>
            <TakeoffHeading
              part={part}
              unnamed={by === "" ? t.ofNoSize : t.unnamed(by.split(", ").join(" or "))}
              columns={columns}
            />
            {own.map((line, index) => lineOf(line, part.heading, index))}
          </tbody>
        ))}
        {rest.length > 0 && <tbody>{rest.map((line, index) => lineOf(line, "", index))}</tbody>}
      </table>
    </Section>
  );
}

const isLacking = ({ Item }: OrderLine): boolean =>
  Object.values(LACKING).some((words) => String(Item).startsWith(`${words}:`));

/** The lines under the heading of each part, and what stands below them all: what was not counted or not read. */
function inSections(lines: readonly OrderLine[], parts: readonly Headed[] = []) {
  let from = 0;
  const sections = parts.map((part) => ({ part, lines: lines.slice(from, (from += part.count)) }));
  return { sections, rest: lines.slice(from) };
}
