/**
 * Objects of Excel's shape over a {@link FakeBook}, for the part of the API the pane uses. Like Excel they do nothing
 * before `context.sync()`, and refuse a property that was not loaded first.
 */
import { FakeBook, type Cell, type FakeSheet, type FakeTable } from "./fakeBook";
import { Context, loadable } from "./fakeContext";

interface Area {
  sheet: FakeSheet;
  row: number;
  column: number;
  rows: number;
  columns: number;
}

function rangeOf(context: Context, area: () => Area) {
  const read = (from: (sheet: FakeSheet, row: number, column: number) => unknown): unknown[][] => {
    const { sheet, row, column, rows, columns } = area();
    return Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (__, c) => from(sheet, row + r, column + c)),
    );
  };
  const cells = () => read((sheet, row, column) => sheet.at(row, column));
  const formats = () => read((sheet, row, column) => formatAt(sheet, row, column));
  const write = <T>(
    given: T[][],
    put: (sheet: FakeSheet, row: number, column: number, cell: NonNullable<T>) => void,
  ) => {
    const { sheet, row, column, rows, columns } = area();
    const value = Array.isArray(given) ? given : Array.from({ length: rows }, () => new Array<T>(columns).fill(given));
    if (value.length !== rows || value.some((line) => line.length !== columns)) {
      throw Object.assign(new Error("the array's size is not the range's"), { code: "InvalidArgument" });
    }
    value.forEach((line, r) =>
      line.forEach((cell, c) => cell === null || put(sheet, row + r, column + c, cell as NonNullable<T>)),
    );
  };
  const addRule = (rule: unknown) => {
    const { sheet, row, column, rows } = area();
    sheet.rules.push({ row, column, rows, rule });
  };
  return loadable(
    context,
    {
      worksheet: loadable(context, {}, () => ({ name: area().sheet.name })),
      select: () =>
        context.later(() => {
          const { sheet, row, column, rows, columns } = area();
          context.book.select(sheet, row, column, rows, columns);
        }),
      getEntireColumn: () => columnOf(context, () => ({ sheet: area().sheet, column: area().column })),
      format: {
        ...{ autofitColumns: () => undefined, font: fontOf(context, area), fill: {} },
        borders: { getItem: () => ({}) },
      },
      dataValidation: loadable(context, {}, () => ({}), {
        rule: addRule,
        errorAlert: () => undefined,
        prompt: () => undefined,
      }),
    },
    () => ({
      values: cells(),
      formulas: cells(),
      numberFormat: formats(),
      rowIndex: area().row,
      columnIndex: area().column,
      rowCount: area().rows,
      // Cells of 64 by 15 points, whatever is said of their size.
      left: 64 * area().column,
      top: 15 * area().row,
    }),
    {
      formulas: (value: Cell[][]) => {
        write(value, (sheet, row, column, cell) => sheet.put(row, column, cell));
        context.book.changeHandlers.forEach((handler) => void handler());
      },
      numberFormat: (value: string[][]) =>
        write(value, (sheet, row, column, format) => sheet.formats.set(`${row},${column}`, format)),
    },
  );
}

/** Bold by rows of a sheet: enough for what the pane does. Sizes are taken and forgotten. */
function fontOf(context: Context, area: () => Area) {
  const bold = (on: boolean) => {
    const { sheet, row } = area();
    if (on) sheet.bold.add(row);
    else sheet.bold.delete(row);
  };
  return loadable(context, {}, () => ({ bold: area().sheet.bold.has(area().row) }), {
    bold,
    size: () => undefined,
    name: () => undefined,
    color: () => undefined,
  });
}

/** A cell's number format: its own, else its column's. */
const formatAt = (sheet: FakeSheet, row: number, column: number): string =>
  sheet.formats.get(`${row},${column}`) ?? sheet.columnFormats.get(column) ?? "General";

/** A whole column: its format, width and whether it is out of sight. */
function columnOf(context: Context, area: () => { sheet: FakeSheet; column: number }) {
  const format = {
    font: {},
    set columnWidth(points: number) {
      context.later(() => area().sheet.columnWidths.set(area().column, points));
    },
  };
  return loadable(context, { format }, () => ({}), {
    numberFormat: (value: string) => area().sheet.columnFormats.set(area().column, value),
    columnHidden: (hidden: boolean) => {
      const { sheet, column } = area();
      if (hidden) sheet.hiddenColumns.add(column);
      else sheet.hiddenColumns.delete(column);
    },
  });
}

function sheetOf(context: Context, sheet: () => FakeSheet) {
  const range = (row: number, column: number, rows: number, columns: number) =>
    rangeOf(context, () => ({ sheet: sheet(), row, column, rows, columns }));
  return loadable(
    context,
    {
      activate: () => context.later(() => (context.book.active = sheet())),
      horizontalPageBreaks: { add: (cell: string) => context.later(() => sheet().pageBreaks.push(cell)) },
      pageLayout: {
        setPrintMargins: () => undefined,
        setPrintTitleRows: () => undefined,
        headersFooters: { defaultForAllPages: {} },
      },
      charts: { getCount: () => ({ value: 0 }) },
      shapes: {
        getCount: () => ({ value: sheet().pictures }),
        addImage: (png: string) => {
          const image: FakeSheet["images"][number] = { png };
          context.later(() => sheet().images.push(image));
          return image;
        },
      },
      freezePanes: { freezeAt: () => undefined, freezeRows: () => undefined },
      delete: () => context.later(() => context.book.sheets.splice(context.book.sheets.indexOf(sheet()), 1)),
      getRangeByIndexes: range,
      getRanges: () => ({ format: { font: {}, borders: { getItem: () => ({}) } } }),
      getRange: (address: string) => {
        const [, letter = "A", number = "1"] = /^([A-Z])(\d+)$/.exec(address) ?? [];
        return range(Number(number) - 1, letter.charCodeAt(0) - 65, 1, 1);
      },
      getUsedRangeOrNullObject: () =>
        loadable(context, {}, () => {
          const rows = [...sheet().cells.keys()].map((key) => Number(key.split(",")[0]));
          const rowIndex = Math.min(...rows);
          return {
            isNullObject: rows.length === 0,
            rowIndex,
            rowCount: Math.max(...rows) - rowIndex + 1,
            columnIndex: 0,
            columnCount: Math.max(...[...sheet().cells.keys()].map((key) => Number(key.split(",")[1]))) + 1,
          };
        }),
      tables: {
        add: (area: ReturnType<typeof rangeOf>) => {
          area.load("rowIndex,columnIndex,values");
          let made: FakeTable | undefined;
          context.later(() => {
            const values = area.values as Cell[][];
            const [row, column] = [area.rowIndex as number, area.columnIndex as number];
            const name = `Table${context.book.tables.length + 1}`;
            made = context.book.addTable(name, sheet(), row, column, values.length, values[0]?.length ?? 0);
          });
          return {
            set name(name: string) {
              context.later(() => {
                if (!made) throw new Error("no table was made");
                made.name = name;
              });
            },
          };
        },
      },
    },
    () => ({ name: sheet().name }),
    { tabColor: (color: string) => (sheet().tabColor = color) },
  );
}

function tableOf(context: Context, table: () => FakeTable) {
  const area = (rows: () => number) => rangeOf(context, () => ({ ...table(), rows: rows() }));
  return loadable(
    context,
    {
      worksheet: loadable(context, {}, () => ({ name: table().sheet.name })),
      getRange: () => area(() => table().rows),
      getHeaderRowRange: () => area(() => 1),
      rows: {
        add: (_?: undefined, lines: Cell[][] = [[]]) =>
          context.later(() => {
            const target = table();
            for (const line of lines) {
              line.forEach((cell, c) => target.sheet.put(target.row + target.rows, target.column + c, cell));
              target.rows++;
            }
            context.book.changeHandlers.forEach((handler) => void handler());
          }),
      },
    },
    () => ({ name: table().name }),
  );
}

function workbookOf(context: Context) {
  const { book } = context;
  /** A collection whose items come loaded with their names. */
  const items = <T extends object, M extends object>(make: () => T[], methods: M) =>
    loadable(context, methods, () => {
      const made = make();
      for (const item of made) if ("load" in item) (item as { load(names: string): unknown }).load("name");
      context.flush();
      return { items: made };
    });
  const events = (handlers: Set<() => unknown>) => ({
    add: (handler: () => unknown) => {
      context.later(() => handlers.add(handler));
      return { context, remove: () => handlers.delete(handler) };
    },
  });
  return {
    worksheets: items(() => book.sheets.map((sheet) => sheetOf(context, () => sheet)), {
      getItem: (name: string) => sheetOf(context, () => book.sheet(name)),
      getActiveWorksheet: () => sheetOf(context, () => book.active),
      add: (name: string) => {
        context.later(() => book.addSheet(name));
        return sheetOf(context, () => book.sheet(name));
      },
      onChanged: events(book.changeHandlers),
    }),
    tables: items(() => book.tables.map((table) => tableOf(context, () => table)), {
      getItem: (name: string) => tableOf(context, () => book.table(name)),
    }),
    names: items(() => book.names.map((name) => ({ name })), {}),
    settings: items(() => [...book.settings].map(([key, value]) => ({ key, value })), {
      add: (key: string, value: unknown) =>
        context.later(() => book.settings.set(key, JSON.parse(JSON.stringify(value)))),
    }),
    getSelectedRange: () => rangeOf(context, () => book.selected),
    onSelectionChanged: events(book.selectionHandlers),
  };
}

/** Puts a fake Excel in place of the global one. */
export function useFakeExcel(book = new FakeBook()): FakeBook {
  const run = async (first: unknown, second?: (context: Context) => Promise<unknown>) => {
    const body = (second ?? first) as (context: Context) => Promise<unknown>;
    const context = new Context(book, (first as Excel.RunOptions).delayForCellEdit);
    return body(Object.assign(context, { workbook: workbookOf(context) }));
  };
  Object.assign(globalThis, { Excel: { run } });
  return book;
}
