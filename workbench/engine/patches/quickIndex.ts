import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

type Key = unknown;
type Rows = Set<number>;
type Index = typeof CELL_INVERTED_INDEX_CACHE;

/**
 * The engine notes each result's row under its value, and looks through every value of the column to take out the
 * row's old note. For a long spilled table that grows with the square of its length: minutes for 20,000 rows. This
 * remembers where each row was noted, so one note costs the same however long the column is. Results in a column that
 * nobody has looked through in this calculation are not noted at all: who does so later notes every row of it first.
 */
export function noteResultsQuickly(): void {
  const index = CELL_INVERTED_INDEX_CACHE;
  const { _cache: units, _continueBuildingCache: lookedThrough } = index as unknown as {
    _cache: Map<string, Map<string, Map<number, Map<Key, Rows>>>>;
    _continueBuildingCache: Map<string, Map<string, Map<number, unknown>>>;
  };
  if (Object.hasOwn(index, "set")) return;
  const places = new WeakMap<Map<Key, Rows>, Map<number, Rows>>();
  const keyOf = keyReader(index);

  index.set = (unitId, sheetId, column, value, row, force = false) => {
    if (force && !lookedThrough.get(unitId)?.get(sheetId)?.has(column)) return;
    if (!force && !index.shouldContinueBuildingCache(unitId, sheetId, column, row)) return;
    const sheets = entryOf(units, unitId, () => new Map<string, Map<number, Map<Key, Rows>>>());
    const columns = entryOf(sheets, sheetId, () => new Map<number, Map<Key, Rows>>());
    const values = entryOf(columns, column, () => new Map<Key, Rows>());
    let noted = places.get(values);
    if (!noted) places.set(values, (noted = new Map<number, Rows>()));
    if (force) noted.get(row)?.delete(row);
    const rows = entryOf(values, keyOf(value), () => new Set<number>());
    rows.add(row);
    noted.set(row, rows);
  };
}

/** The engine's own key of a value, learned by noting the value in an index made for that. */
function keyReader(index: Index): (value: Parameters<Index["set"]>[3]) => Key {
  const scratch = new (index.constructor as new () => Index)();
  return (value) => {
    scratch.set("", "", 0, value, 0, true);
    const values = scratch.getCellValuePositions("", "", 0)!;
    const key: Key = values.keys().next().value;
    values.clear();
    return key;
  };
}

function entryOf<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let entry = map.get(key);
  if (entry === undefined) map.set(key, (entry = make()));
  return entry;
}
