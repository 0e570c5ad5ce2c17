import type { NewSheet } from "../../workbook/design/newSheets";
import { LIST_ROOM } from "../../workbook/design/newSheets";
import { strings } from "../../strings";
import { batch, ExcelProblem } from "../batch";
import { HEADING_HEIGHT, layOutForPrint, paint, POINTS } from "./dressSheet";
import { ifThere } from "../ifThere";
import { sameName } from "../rows/readTables";
import { begunSetting, NOTHING_BEGUN } from "./begun";
import { lookAtBegun, stillToWrite, type Standing } from "./goOn";
import { withoutHalves } from "./takeAway";

/** What else a set-up does. */
export interface AlsoSetUp {
  /** An empty sheet to take away, such as the one a new workbook begins with. */
  leftOver?: string | undefined;
  /** Settings of the workbook to store once everything stands. */
  settings?: Readonly<Record<string, unknown>>;
  /** The person stays on the sheet where they are. */
  stay?: boolean;
  /**
   * Sheets among those to make that an earlier set-up has begun, or none: this set-up can then be gone on with, too. What
   * they lack is made, and no cell of theirs that holds something is written over.
   */
  begun?: readonly string[];
}

/**
 * Makes sheets that do not exist yet, all of them in one round trip, and stores settings last. Every table gets its name
 * before any cell gets a formula: Excel refuses a formula that names a table it does not know. When it breaks half way,
 * what was made is taken away again, so that it can be begun anew.
 */
export async function setUp(
  sheets: readonly NewSheet[],
  { leftOver, settings = {}, stay = false, begun }: AlsoSetUp = {},
): Promise<void> {
  let half: string[] = [];
  try {
    await batch(async (context, commit) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      const there = sheets.filter(({ sheet }) => worksheets.items.some(({ name }) => sameName(name, sheet)));
      const taken = there.find(({ sheet }) => !begun?.includes(sheet));
      if (taken) throw new ExcelProblem(strings.start.names.sheetTaken(taken.sheet));
      const standing = await lookAtBegun(context, there);
      const names = sheets.map(({ sheet }) => sheet);
      half = sheets.filter((item) => !standing.has(item)).map(({ sheet }) => sheet);
      const keep = (key: string, value: unknown) => context.workbook.settings.add(key, value);
      if (begun) keep(...begunSetting({ sheets: names, settings }));
      make(context, sheets, standing);
      if (!stay) show(context, sheets[0]);
      for (const [key, value] of Object.entries(settings)) keep(key, value);
      if (begun) keep(...NOTHING_BEGUN);
      await commit();
      half = [];
      if (leftOver === undefined || sheets.length === 0) return;
      ifThere(() => worksheets.getItem(leftOver).delete());
      // An empty sheet that stays does no harm.
      await commit().catch(() => undefined);
    });
  } catch (error) {
    const { takenAway: gone, halfSetUp: left, goOn } = strings.excel;
    const isNew = begun?.length === 0;
    throw await withoutHalves(
      half,
      error,
      begun && (isNew ? { gone, left, isBegun: true } : { gone: goOn, left: goOn }),
    );
  }
}

function make(
  { workbook: { worksheets } }: Excel.RequestContext,
  sheets: readonly NewSheet[],
  standing: ReadonlyMap<NewSheet, Standing>,
): void {
  const made = sheets.map((item) => {
    const there = standing.get(item);
    return { item, there, sheet: there ? worksheets.getItem(item.sheet) : worksheets.add(item.sheet) };
  });
  for (const { item, sheet, there } of made) {
    dress(sheet, item);
    if (item.table !== undefined) addTable(sheet, item, there);
  }
  for (const { item, sheet, there } of made) fill(sheet, item, there);
}

function show(context: Excel.RequestContext, item: NewSheet | undefined): void {
  if (!item) return;
  const sheet = context.workbook.worksheets.getItem(item.sheet);
  sheet.activate();
  sheet.getRange("A2").select();
}

function dress(sheet: Excel.Worksheet, { columns, tab, frozenColumns, cells }: NewSheet): void {
  columns.forEach(({ width, look, hidden }, place) => {
    const column = sheet.getRangeByIndexes(0, place, 1, 1).getEntireColumn();
    paint(column, look);
    ifThere(() => (column.format.columnWidth = width * POINTS));
    if (hidden) ifThere(() => (column.columnHidden = true));
  });
  ifThere(() => (sheet.tabColor = `#${tab}`));
  ifThere(() => {
    if (frozenColumns > 0) sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, 1, frozenColumns));
    else sheet.freezePanes.freezeRows(1);
  });
  ifThere(() => layOutForPrint(sheet));
  columns.forEach(({ header, list, note }, place) => {
    if (list) {
      const body = sheet.getRangeByIndexes(1, place, cells.length - 1 + LIST_ROOM, 1).dataValidation;
      body.rule = { list: { inCellDropDown: true, source: list.join(",") } };
      // The functions read many spellings: another value is taken.
      body.errorAlert = { showAlert: false, message: "", title: "", style: "Information" };
    }
    if (note !== undefined) {
      ifThere(() => {
        sheet.getRangeByIndexes(0, place, 1, 1).dataValidation.prompt = {
          showPrompt: true,
          title: header,
          message: note,
        };
      });
    }
  });
}

function addTable(sheet: Excel.Worksheet, { table, cells, columns }: NewSheet, there?: Standing): void {
  const name = table as string;
  const [known] = there?.tables ?? [];
  if (known !== undefined) {
    // The table itself was made before it had its name.
    if (!sameName(known, name)) sheet.tables.getItem(known).name = name;
    return;
  }
  sheet.getRangeByIndexes(0, 0, 1, columns.length).formulas = stillToWrite(cells.slice(0, 1), there?.formulas ?? []);
  sheet.tables.add(sheet.getRangeByIndexes(0, 0, cells.length, columns.length), true).name = name;
}

function fill(sheet: Excel.Worksheet, { cells, headings, beside }: NewSheet, there?: Standing): void {
  const range = sheet.getRangeByIndexes(0, 0, cells.length, cells[0]?.length ?? 1);
  range.formulas = there ? stillToWrite(cells, there.formulas) : cells;
  beside?.cells.forEach((cell, row) => {
    if (!there?.beside[row]?.[0]) sheet.getRangeByIndexes(row, beside.column, 1, 1).formulas = [[cell]];
  });
  headings.forEach((look, place) => paint(sheet.getRangeByIndexes(0, place, 1, 1), look));
  ifThere(() => (sheet.getRangeByIndexes(0, 0, 1, 1).format.rowHeight = HEADING_HEIGHT));
}
