import { ObjectMatrix, type IRange, type Injector } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import fc from "fast-check";
import { keepSpillsQuickly } from "../../../workbench/engine/patches/spillStore";

type Own = Pick<
  FormulaDataModel,
  | "clearPreviousArrayFormulaCellData"
  | "mergeArrayFormulaCellData"
  | "mergeArrayFormulaRange"
  | "getArrayFormulaCellData"
  | "getArrayFormulaRange"
>;

/** The engine's own store of spilled cells, alone. */
function engineStore(): Own {
  const store = Object.create(FormulaDataModel.prototype) as Own;
  return Object.assign(store, { _arrayFormulaRange: {}, _arrayFormulaCellData: {} });
}

function quickStore(): Own {
  const store = engineStore();
  keepSpillsQuickly({ get: () => store } as unknown as Injector);
  return store;
}

/** A formula at one of two places answers a table, or no longer spills. */
const answer = fc.record({
  row: fc.constantFrom(0, 6),
  height: fc.nat(5),
  width: fc.integer({ min: 1, max: 3 }),
  value: fc.constantFrom("a", 1, ""),
});

function apply(store: Own, { row, height, width, value }: typeof answer extends fc.Arbitrary<infer T> ? T : never) {
  const inSheet = (matrix: ObjectMatrix<object>) => ({ book: { sheet: matrix } }) as never;
  const single = new ObjectMatrix<object>();
  const spilled = new ObjectMatrix<object>();
  const ranges = new ObjectMatrix<IRange>();
  if (height === 0) single.setValue(row, 1, { v: value });
  else {
    ranges.setValue(row, 1, { startRow: row, startColumn: 1, endRow: row + height - 1, endColumn: width });
    for (let down = 0; down < height; down++) {
      for (let right = 0; right < width; right++) spilled.setValue(row + down, 1 + right, { v: value, t: 1 });
    }
  }
  store.clearPreviousArrayFormulaCellData(inSheet(single));
  store.mergeArrayFormulaCellData(inSheet(spilled));
  store.mergeArrayFormulaRange({ book: { sheet: ranges.getMatrix() } } as never);
}

/** Rows with nothing in them say nothing. */
function held(store: Own): string {
  const cells = store.getArrayFormulaCellData().book?.sheet ?? {};
  const rows = Object.entries(cells as Record<string, object>).filter(([, row]) => Object.keys(row).length > 0);
  return JSON.stringify([rows, store.getArrayFormulaRange()]);
}

test("spilled cells are kept as the engine's own store keeps them, whatever grows, shrinks or stops spilling", () => {
  fc.assert(
    fc.property(fc.array(answer, { minLength: 1, maxLength: 12 }), (answers) => {
      const [own, quick] = [engineStore(), quickStore()];
      for (const each of answers) {
        apply(own, each);
        apply(quick, each);
        expect(held(quick)).toBe(held(own));
      }
    }),
  );
});
