/** What the scripts load from dist/ once it is built, and what the local page offers to them. */
declare module "*/dist/tools/engine.cjs";
declare module "*/dist/tools/workbook.cjs";

interface Window {
  /** The page's open workbook, for tests and pictures. */
  ledgerBook: {
    settled(): Promise<void>;
    range(address: string): { select(): void; values: unknown[][]; setValues(values: unknown[][]): void };
    sheet(name: string): unknown;
    snapshot(): unknown;
  };
  /** How long tasks held the page up [ms]; noted by its bench. */
  longTasks: number[];
}
