import { reading } from "./batch";

/** Calls back whenever the person selects something else. Resolves to the way to stop. */
export const onSelection = (handler: () => void): Promise<() => Promise<void>> =>
  listen((workbook) =>
    workbook.onSelectionChanged.add(async () => {
      handler();
    }),
  );

/** Calls back whenever cells of any sheet change. Resolves to the way to stop. */
export const onChange = (handler: () => void): Promise<() => Promise<void>> =>
  listen((workbook) =>
    workbook.worksheets.onChanged.add(async () => {
      handler();
    }),
  );

async function listen<T>(
  add: (workbook: Excel.Workbook) => OfficeExtension.EventHandlerResult<T>,
): Promise<() => Promise<void>> {
  const registered = await reading(async (context) => {
    const result = add(context.workbook);
    await context.sync();
    return result;
  });
  return () =>
    Excel.run(registered.context as Excel.RequestContext, async (context) => {
      registered.remove();
      await context.sync();
    });
}
