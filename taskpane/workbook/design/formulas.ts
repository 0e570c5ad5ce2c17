import { MADE_COLUMNS } from "../../../src/made/records/madeTable";
import { RUN_COLUMNS } from "../../../src/shop/run/runsTable";
import { SHOE_COLUMNS } from "../../../src/shop/shoe/readShoe";
import type { ResultName, TableName } from "../items";
import { asEntered, isOurs } from "./spelling";
import { columnsOfTable, ownCell, type NamedTable } from "./references";

/** The tables that formulas read, by our name of them, as they are in this workbook. */
export type NamedTables = Readonly<Record<TableName, NamedTable>>;

/** Columns of a new Runs table that follow by formula, and the function behind each. */
export const RUN_FORMULAS = { "Length in.": "LENGTH", Bends: "BENDS", Degrees: "DEGREES", Check: "CHECK" } as const;

/** Headers that workbooks made before have for the same. */
const OLDER: Readonly<Record<string, keyof typeof RUN_FORMULAS>> = { Length: "Length in." };

/** What a run's length reads of its shoe, and of the rules. */
const SHAPE_COLUMNS = SHOE_COLUMNS.filter(({ name }) =>
  ["Raceway", "Size", "Made for", "Radius", "Deduct"].includes(name),
);
const RULE_COLUMNS = [{ name: "Rule" }, { name: "Value" }];

const runs = ({ Runs }: NamedTables, part?: string): string => columnsOfTable(Runs, RUN_COLUMNS, part);
const rules = ({ Rules }: NamedTables): string => columnsOfTable(Rules, RULE_COLUMNS);

/**
 * The formula of a computed column of Runs in any of its rows; undefined for a column that is none of ours. It is given
 * no more than it reads, for a range is handed over once for each row.
 */
export function runFormula(header: string, tables: NamedTables): string | undefined {
  const name = RUN_FORMULAS[(OLDER[header] ?? header) as keyof typeof RUN_FORMULAS];
  if (!name) return undefined;
  const own = (column: string) => ownCell(tables.Runs, { name: column }, RUN_COLUMNS);
  const run = [own("Route"), own("Raceway"), own("Size")].join(",");
  if (name === "CHECK") {
    const row = runs(tables, "#This Row");
    const check = `CONDUIT.RUN.CHECK(${run},${tables.Shoes.name}[#All],,${rules(tables)},${runs(tables, "#Headers")},${row})`;
    return `=IF(COUNTA(${row})=0,"",${check})`;
  }
  const shoes = columnsOfTable(tables.Shoes, SHAPE_COLUMNS);
  return `=IF(${own("Route")}="","",CONDUIT.RUN.${name}(${run},${shoes},${rules(tables)}))`;
}

/** A formula that waits for a table to hold something, and says what to do until then. */
const onceIn = (table: NamedTable, column: string, words: string, formula: string): string =>
  `=IF(COUNTA(${table.name}[${column}])=0,"${words}",${formula})`;

const MADE_WORDS = "Write what was made into Made, a row for each time: it is counted here.";

const TRACE_WORDS = "Write an item into H2 as Takeoff names it: the runs behind it are told here.";

/** The formula behind each result sheet; it reads input columns alone, so that nothing it gives can be its own input. */
export function resultFormula(result: ResultName, tables: NamedTables): string {
  const all = (table: TableName) => `${tables[table].name}[#All]`;
  const own = runs(tables);
  const made = columnsOfTable(tables.Made, MADE_COLUMNS);
  const issued = columnsOfTable(tables.Issued, RUN_COLUMNS);
  const counts = all("Counts");
  const [shoes, rules, labor, prices, stock] = [all("Shoes"), all("Rules"), all("Labor"), all("Prices"), all("Stock")];
  const job = (name: string, ...given: string[]) => `CONDUIT.JOB.${name}(${given.join(",")})`;
  const takeoff = (...by: string[]) =>
    job("TAKEOFF", own, prices, shoes, by[0] ?? "", labor, rules, stock, "", counts, by[1] ?? "", all("Allowances"));
  const recap = (by: string) =>
    job(
      "RECAP",
      own,
      all("Bid"),
      prices,
      labor,
      shoes,
      rules,
      stock,
      by,
      all("Costs"),
      all("Factors"),
      counts,
      all("Allowances"),
    );
  const isIssued = `COUNTA(${tables.Issued.name}[Run])=0`;
  switch (result) {
    case "Checks":
      return `=${job("CHECKS", own, shoes, "", rules)}`;
    case "Circuits":
      return `=${job("CIRCUITS", own, shoes, "", rules)}`;
    case "Schedule":
      return `=${job("SCHEDULE", own, shoes, rules)}`;
    case "Set-up":
      return `=${job("SETUP", own, shoes, all("Bench"), rules)}`;
    case "Cutting plan":
      return `=${job("CUTS", own, stock, shoes, "", "", rules, "", prices)}`;
    case "Takeoff":
      return `=${takeoff()}`;
    case "Missing":
      return `=${job("MISSING", own, prices, labor, shoes, rules, stock, counts)}`;
    case "Takeoff by area":
      return `=${takeoff('"Area, Phase"', "TRUE")}`;
    case "Order":
      return `=${job("ORDER", own, prices, shoes, rules, stock, counts, all("Allowances"), "", all("Bid"))}`;
    case "Labor hours":
      return `=${job("HOURS", own, labor, all("Factors"), '"Area"', shoes, rules, stock, counts)}`;
    case "Recap":
      return `=${recap("")}`;
    case "Recap by area":
      return `=${recap('"Area"')}`;
    case "Overview": {
      const lists = [shoes, rules, stock, counts, all("Allowances"), all("Factors"), made, all("Bid"), all("Costs")];
      return `=${job("OVERVIEW", own, prices, labor, ...lists)}`;
    }
    case "Traced":
      return `=IF($H$2="","${TRACE_WORDS}",${job("TRACE", own, "$H$2", shoes, rules, "", stock, counts)})`;
    case "Bend counts":
      return `=${job("BENDS", own, '"Area, Raceway, Size, Kind"', shoes, labor, rules)}`;
    case "Shop load":
      return `=${job("BENDS", own, '"Date, Crew, Raceway, Size"', shoes, labor, rules)}`;
    case "Progress":
      return onceIn(tables.Made, "Piece", MADE_WORDS, job("PROGRESS", own, made, "", shoes, rules, labor));
    case "Daily":
      return onceIn(tables.Made, "Piece", MADE_WORDS, job("DAILY", own, made, shoes, rules));
    case "Standing": {
      const asIssued = `IF(${isIssued},${own},${issued})`;
      return onceIn(tables.Made, "Piece", MADE_WORDS, job("STANDING", own, made, asIssued, shoes, rules));
    }
    case "Changes": {
      const words = "Copy the rows of Runs into Issued when you issue them: what changes after that is told here.";
      return onceIn(tables.Issued, "Run", words, job("CHANGES", issued, own, shoes, rules, stock));
    }
    case "Change order": {
      const words = "Copy the rows of Runs into Issued when you issue them: what changes after that is priced here.";
      const lists = [prices, labor, shoes, rules, stock, all("Costs"), all("Factors"), "", counts, all("Allowances")];
      return onceIn(tables.Issued, "Run", words, job("CHANGE.ORDER", issued, own, all("Bid"), ...lists, made));
    }
    case "Rules in force":
      return `=${job("RULES", rules)}`;
  }
}

/** Cells beside a result that its formula looks at, by row from the first; they stand in column H. */
export const besideResult = (result: ResultName, traced = ""): readonly string[] =>
  result === "Traced" ? ["Item of Takeoff to trace", traced] : [];

/** True for the formula of a result sheet, however the host spells an add-in's functions. */
export const isResultFormula = (formula: string): boolean =>
  isOurs(formula) && /CONDUIT\.JOB\./i.test(asEntered(formula));
