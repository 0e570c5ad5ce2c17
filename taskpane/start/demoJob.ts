import { TABLES, type Cell, type TableName } from "../workbook/items";
import type { Rows } from "../workbook/design/startRows";

/** Rows for each table the demo job fills. */
export type DemoRows = Partial<Record<TableName, Rows>>;

/** The demo job's tables. The file lies beside the pane; nothing is fetched from elsewhere. */
export async function readDemoJob(): Promise<DemoRows> {
  const response = await fetch("demo.json");
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  const tables = (await response.json()) as Partial<Record<TableName, (Cell | null)[][]>>;
  return Object.fromEntries(
    TABLES.flatMap((name) => {
      const [headers = [], ...rows] = tables[name] ?? [];
      if (rows.length === 0) return [];
      return [
        [
          name,
          rows.map((row) => Object.fromEntries(headers.map((header, place) => [String(header), row[place] ?? ""]))),
        ],
      ];
    }),
  );
}
