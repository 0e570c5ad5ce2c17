import { Button } from "@fluentui/react-components";
import { ChevronDownRegular, ChevronRightRegular } from "@fluentui/react-icons";
import { useMemo, useState } from "react";
import { show } from "../../src/units/show";
import { takeoff } from "../../src/takeoff/takeoff";
import { trace } from "../../src/takeoff/trace";
import { attempt } from "../components/attempt";
import { Notice } from "../components/Notice";
import { Section } from "../components/Section";
import { useLedger } from "../hooks/useLedger";
import { strings } from "../strings";
import { recordsOf } from "../workbook/recordsOf";
import { RowLinks } from "./RowLinks";

const t = strings.totals.takeoff;

/** What to order, line by line; a line opens to the runs behind its number. */
export function TakeoffPart() {
  const { tables } = useLedger();
  const [open, setOpen] = useState("");
  const lines = useMemo(
    () =>
      attempt(() =>
        recordsOf(
          takeoff(tables.Runs?.cells, {
            shoes: tables.Shoes?.cells,
            prices: hasRows(tables.Prices?.cells) ? tables.Prices?.cells : undefined,
          }),
        ),
      ),
    [tables],
  );
  const priced = lines.value?.some((line) => "Extension" in line) ?? false;
  return (
    <Section title={t.title}>
      {lines.problem && <Notice intent="error">{lines.problem}</Notice>}
      <table className="rl-table">
        <thead>
          <tr>
            <th scope="col">{t.item}</th>
            <th scope="col" className="rl-number">
              {t.quantity}
            </th>
            {priced && (
              <th scope="col" className="rl-number">
                {t.price}
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {lines.value?.map((line, index) => (
            <Line key={index} line={line} priced={priced} open={open === line.Item} onOpen={setOpen} />
          ))}
        </tbody>
      </table>
    </Section>
  );
}

interface LineProps {
  line: Readonly<Record<string, string | number>>;
  priced: boolean;
  open: boolean;
  onOpen(item: string): void;
}

function Line({ line, priced, open, onOpen }: LineProps) {
  const item = String(line.Item);
  const counted = typeof line.Quantity === "number";
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
              onClick={() => onOpen(open ? "" : item)}
            >
              {item}
            </Button>
          ) : (
            item
          )}
          {line.Note !== "" && <div className="rl-hint">{line.Note}</div>}
        </th>
        <td className="rl-number">{counted && `${show(Number(line.Quantity), 1)} ${line.Unit}`}</td>
        {priced && <td className="rl-number">{money(line.Extension)}</td>}
      </tr>
      {open && (
        <tr>
          <td colSpan={priced ? 3 : 2}>
            <Behind item={item} />
          </td>
        </tr>
      )}
    </>
  );
}

/** The runs behind a line, with what each takes. */
function Behind({ item }: { item: string }) {
  const { tables } = useLedger();
  const rows = attempt(() => recordsOf(trace(tables.Runs?.cells, item, tables.Shoes?.cells)));
  if (!rows.value) return <p className="rl-hint">{rows.problem}</p>;
  return (
    <ul className="rl-behind" aria-label={t.behind(item)}>
      {rows.value
        .filter((row) => row.Run !== "Total" && !String(row.Run).startsWith("not counted"))
        .map((row, index) => (
          <li key={index}>
            <RowLinks names={String(row.Run).split(", ")} /> <span className="rl-number">{amount(row)}</span>
          </li>
        ))}
    </ul>
  );
}

const amount = (row: Readonly<Record<string, string | number>>): string =>
  `${show(Number(row.Each), 1)} × ${row.Times} = ${show(Number(row.Amount), 1)}`;

const money = (value: string | number | undefined): string => (typeof value === "number" ? value.toFixed(2) : "");

const hasRows = (cells: readonly (readonly unknown[])[] | undefined): boolean =>
  cells?.slice(1).some((row) => row.some((cell) => cell !== "")) ?? false;
