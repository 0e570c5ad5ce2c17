import { readRules, rulesTable, type RuleName } from "../../src/rules/rules";
import { readRuleValue } from "../../src/rules/ruleValue";

const rulesOf = (...rows: (string | number | null)[][]) => readRules([["Rule", "Value"], ...rows]);

test("a rule of the user's takes the place of the built-in one", () => {
  expect(readRules(null).number("Straps per support")).toBe(1);
  const book = rulesOf(["straps per SUPPORT", 2]);
  expect(book.number("Straps per support")).toBe(2);
  expect(rulesTable(book)).toContainEqual(["Straps per support", 2, "each", "rules row 2"]);
});

test("a rule in inches may be written as a length", () => {
  expect(rulesOf(["Saw kerf", "1/8"]).number("Saw kerf")).toBe(0.125);
  expect(rulesOf(["Conductor make-up at each end", "3' 6\""]).number("Conductor make-up at each end")).toBe(42);
  expect(rulesOf(["Saw kerf", -1]).problems).toEqual(['rules row 2: "Saw kerf" must be at least 0 in.; got -1 in.']);
});

test("every rule says where it comes from", () => {
  for (const { rule, source } of readRules(null).all)
    expect([rule, source]).toEqual([rule, expect.stringMatching(/\w{4}/)]);
});

test.each([
  ["Straps per supports", 2, 'no rule is called "Straps per supports"; JOB.RULES lists the rules.'],
  ["Straps per support", -1, '"Straps per support" must be a whole number at least 0; got -1.'],
  ["Saw kerf", -1, '"Saw kerf" must be at least 0 in.; got -1 in.'],
  ["Expansion temperature change", -1, '"Expansion temperature change" must be at least 0; got -1.'],
  ["Straps per support", null, '"Straps per support" must be a number; got an empty cell.'],
  ["Expansion fitting travel", 0, '"Expansion fitting travel" must be above 0; got 0.'],
  ["Support edition", 2019, '"Support edition" must be 2020 or 2023; got 2019.'],
  [
    "Factory elbows above size, metal",
    "big",
    '"Factory elbows above size, metal" must be none, all, no shoe or a trade size; got "big".',
  ],
  ["Factory elbow angles", "90, 45, x", '"Factory elbow angles" must be angles parted by commas; got "90, 45, x".'],
])("a rule that cannot be used leaves the built-in one: %s %s", (rule, value, message) => {
  const book = rulesOf([rule, value], ["Conductor make-up at each end", 18]);
  expect(book.problems).toEqual([`rules row 2: ${message}`]);
  expect(book.number("Conductor make-up at each end")).toBe(18);
  expect(book.number("Straps per support")).toBe(1);
});

test("what could not be read stands at the end of the table of rules", () => {
  const table = rulesTable(rulesOf(["Staples", 2]));
  expect(table[table.length - 1]).toEqual([
    ...["not read", "", ""],
    'rules row 2: no rule is called "Staples"; JOB.RULES lists the rules.',
  ]);
});

test("a rule that stands twice is told", () => {
  expect(rulesOf(["Straps per support", 2], ["Straps per support", 3]).problems).toEqual([
    'rules row 3: "Straps per support" stands twice; keep one row for each rule.',
  ]);
});

test("the table of rules has its headers", () => {
  expect(rulesTable(readRules(null))[0]).toEqual(["Rule", "Value", "Unit", "Source"]);
  expect(() => readRules([["Rule"]])).toThrow('rules must have the column "Value"');
  expect(() => readRules([["Value"]])).toThrow('rules must have the column "Rule"');
});

test.each([
  ["Factory elbows above size, metal", " ALL ", "all"],
  ["Factory elbows above size, metal", "None", "none"],
  ["Factory elbows above size, metal", "1-1/4", "1-1/4"],
  ["Factory elbow angles", "90 ; 45,22.5", "90, 45, 22.5"],
  ["Factory elbow angles", 90, "90"],
  ["Ends that are no boxes", 0, ""],
  ["Ends that are no boxes", null, ""],
  ["Ends that are no boxes", " pump, fan ", "pump, fan"],
] as [RuleName, string | number | null, string][])("%s may be %p", (rule, value, read) => {
  const book = rulesOf([rule, value]);
  expect(book.problems).toEqual([]);
  expect(book.text(rule)).toBe(read);
});

test.each([["90, 0"], ["0"], ["-45"], [null]])("elbow angles cannot be %p", (value) => {
  expect(rulesOf(["Factory elbow angles", value]).problems).toEqual([
    expect.stringContaining('"Factory elbow angles" must be angles parted by commas; got '),
  ]);
});

test("a rule that is not there, or of a unit that nothing reads, is a fault of ours", () => {
  expect(() => readRules(null).number("Staples" as RuleName)).toThrow(new RangeError('no rule "Staples"'));
  expect(() => readRuleValue(1, { rule: "Staples", unit: "boxes" })).toThrow(
    new RangeError("no reader for the unit boxes of rule Staples"),
  );
});

test("a copy of a built-in rule is not the user's own; another value or another source is, and so is a row without one", () => {
  const { value, source } = readRules(null).all.find(({ rule }) => rule === "Pulling friction")!;
  const isOwn = (...row: unknown[]) =>
    readRules([
      ["Rule", "Value", "Source"],
      ["Pulling friction", ...row],
    ]).isOwn("Pulling friction");
  expect(readRules(null).isOwn("Pulling friction")).toBe(false);
  expect(isOwn(value, source)).toBe(false);
  expect(isOwn(String(value), source)).toBe(false);
  expect([isOwn(0.35, source), isOwn(value, "cable maker, sheet 12"), isOwn(value, "")]).toEqual([true, true, true]);
  expect(
    readRules([
      ["Rule", "Value"],
      ["Pulling friction", value],
    ]).isOwn("Pulling friction"),
  ).toBe(true);
  expect(
    readRules(rulesTable(readRules(null))).all.filter(({ rule }) =>
      readRules(rulesTable(readRules(null))).isOwn(rule as never),
    ),
  ).toEqual([]);
});
