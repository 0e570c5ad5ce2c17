import { fromFileFormula, toFileFormula } from "../../../workbench/workbook/file/fileFormula";

const functions = ["CONDUIT.JOB.SCHEDULE", "CONDUIT.OFFSET.SPACING"];

/** `_xldudf_` with dots as underscores, and which built-ins carry `_xlfn.`: seen in files Excel wrote, from memory. */
const pairs: [formula: string, inFile: string][] = [
  ["=CONDUIT.JOB.SCHEDULE(Runs[#All])", "_xldudf_CONDUIT_JOB_SCHEDULE(Runs[#All])"],
  ["=SORT(CONDUIT.JOB.SCHEDULE(Runs!A:J),2)", "_xlfn._xlws.SORT(_xldudf_CONDUIT_JOB_SCHEDULE(Runs!A:J),2)"],
  ["=SUM(A1:A9)+XLOOKUP(B1,C:C,D:D)", "SUM(A1:A9)+_xlfn.XLOOKUP(B1,C:C,D:D)"],
  ['="CONDUIT.JOB.SCHEDULE("&A1&"SORT("', '"CONDUIT.JOB.SCHEDULE("&A1&"SORT("'],
  ["='SORT(x)'!A1+Runs[[#This Row],[LET(1)]]", "'SORT(x)'!A1+Runs[[#This Row],[LET(1)]]"],
  ['=CONDUIT.OFFSET.SPACING("say ""SORT(""",30)', '_xldudf_CONDUIT_OFFSET_SPACING("say ""SORT(""",30)'],
];

test.each(pairs)("%s stands in a file as %s, and comes back", (formula, inFile) => {
  expect(toFileFormula(formula, "CONDUIT")).toBe(inFile);
  expect(fromFileFormula(inFile, functions)).toBe(formula);
});

test("a formula typed in small letters is found", () => {
  expect(toFileFormula("=conduit.offset.spacing(6,30)", "CONDUIT")).toBe("_xldudf_CONDUIT_OFFSET_SPACING(6,30)");
});

test("another add-in's function stays as it is", () => {
  expect(fromFileFormula("_xldudf_OTHER_THING(1)", functions)).toBe("=_xldudf_OTHER_THING(1)");
});
