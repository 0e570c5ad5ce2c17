import type { Book } from "../../../workbench/engine";
import { openOffice } from "./openOffice";

const keep = (key: string, value: unknown): Promise<void> =>
  Excel.run(async (context) => {
    context.workbook.settings.add(key, value);
    await context.sync();
  });

const read = (): Promise<[string, unknown][]> =>
  Excel.run(async (context) => {
    const { settings } = context.workbook;
    settings.load("items/key,items/value");
    await context.sync();
    return settings.items.map(({ key, value }) => [key, value as unknown]);
  });

test("settings are in the workbook: they are there when it opens again", async () => {
  const book = await openOffice();
  await keep("unit", "mm");
  await keep("names", { Runs: "Feeders", count: 2 });
  await keep("unit", "feet");
  const saved = JSON.parse(JSON.stringify(book.snapshot())) as ReturnType<Book["snapshot"]>;
  await openOffice(saved);
  expect((await read()).sort()).toEqual([
    ["names", { Runs: "Feeders", count: 2 }],
    ["unit", "feet"],
  ]);
});

test("a setting that changes counts as a change of the workbook, so that it is saved", async () => {
  const book = await openOffice();
  let changes = 0;
  book.onChange(() => changes++);
  await keep("unit", "mm");
  expect(changes).toBe(1);
});

test("undo leaves settings as they are", async () => {
  const book = await openOffice();
  book.range("Sheet1!A1").setValues([["mine"]]);
  await keep("unit", "mm");
  await book.undo();
  expect(await read()).toEqual([["unit", "mm"]]);
  expect(book.range("Sheet1!A1").values).toEqual([[null]]);
});

test("a setting can be changed, taken away, and what is handed in later changes nothing", async () => {
  await openOffice();
  const value = { a: 1 };
  await keep("kept", value);
  value.a = 2;
  await keep("gone", true);
  await Excel.run(async (context) => {
    context.workbook.settings.getItem("gone").delete();
    await context.sync();
  });
  expect(await read()).toEqual([["kept", { a: 1 }]]);
});
