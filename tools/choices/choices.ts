// Lists that Excel offers while an argument is typed ("custom enums", CustomFunctionsRuntime 1.5): put into functions.json
// when it is built. Older versions of Excel know nothing of them, and every argument takes what it took before.
import { EDITIONS } from "../../src/raceway/code/edition";
import { BENT_KINDS, RACEWAYS } from "../../src/raceway/raceway";
import { TRADE_SIZES } from "../../src/raceway/tradeSize";

interface Parameter {
  name: string;
  description?: string;
  customEnumId?: string;
}

interface Described {
  id: string;
  parameters: Parameter[];
}

/** A list as functions.json has it (Microsoft, "Manually create JSON metadata for custom functions", enums). */
export interface Choices {
  id: string;
  type: "string" | "number";
  values: ({ name: string; tooltip: string } & ({ stringValue: string } | { numberValue: number }))[];
}

/** Columns of Runs that take-offs, hours and bids are grouped by; any other one will do, and several with commas. */
const GROUPS = ["Job", "Area", "Phase", "Floor"];

/** The text of functions.json with its lists, and each argument that has one naming it. */
export function withChoices(metadata: string): string {
  const { functions, ...rest } = JSON.parse(metadata) as { functions: Described[] };
  const lists = new Map<string, Choices>();
  const named = functions.map((each) => ({
    ...each,
    parameters: each.parameters.map((parameter) => {
      const list = choicesOf(each.id, parameter);
      if (!list) return parameter;
      lists.set(list.id, list);
      return { ...parameter, customEnumId: list.id };
    }),
  }));
  return JSON.stringify({ ...rest, functions: named, enums: [...lists.values()] }, undefined, 4);
}

function choicesOf(id: string, { name, description = "" }: Parameter): Choices | undefined {
  switch (name) {
    case "raceway":
      return /^(RUN|BEND|PULL)\./.test(id)
        ? texts("BENT_RACEWAYS", BENT_KINDS, "raceway that is bent in the shop")
        : texts("RACEWAYS", RACEWAYS, "raceway");
    case "size":
      return description.startsWith("trade size") ? texts("TRADE_SIZES", TRADE_SIZES, "trade size") : undefined;
    case "edition":
      return {
        id: "EDITIONS",
        type: "number",
        values: Object.keys(EDITIONS).map((year) => ({
          ...{ name: year, numberValue: Number(year), tooltip: `NEC ${year}` },
        })),
      };
    case "table":
    case "item":
    case "by":
    case "place": {
      const listed = name === "by" && /for example/.test(description) ? GROUPS : listedIn(description);
      return listed.length > 0 ? texts(`${id}_${name}`.replace(/\W/g, "_").toUpperCase(), listed, name) : undefined;
    }
    default:
      return undefined;
  }
}

const texts = (id: string, names: readonly string[], tooltip: string): Choices => ({
  ...{ id, type: "string" },
  values: names.map((name) => ({ name, stringValue: name, tooltip })),
});

/** The words that an argument's description lists: "ratio, limit, area [in²], fits or rule; omitted: ratio". */
export function listedIn(description: string): string[] {
  if (/for example|name of the item/.test(description)) return [];
  const word = /^the word (\w+)/.exec(description)?.[1];
  if (word) return [word];
  const [list = ""] = description.replace(/\s*[[(][^\])]*[\])]/g, "").split(";");
  const [before = "", after] = list.split(/:\s*/);
  return (/^columns/.test(before) && after !== undefined ? after : before)
    .split(/,\s*(?:or\s+)?|\s+or\s+/)
    .map((each) => each.trim())
    .filter((each) => each !== "");
}
