/** Cards: their shape by Microsoft's rules, their fields against the other functions and by hand, the value without cards. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { bendDial, bendGainOf } from "../../functions/bend/bends";
import { bendCard, runCard } from "../../functions/bend/cards";
import { cutPlanOf } from "../../functions/job/cuts";
import { lengthInches, lengthText } from "../../functions/bend/lengths";
import { offsetShrinkOf, offsetSpacingOf } from "../../functions/bend/offsets";
import { plainArgument } from "../../functions/cell/plainValues";
import { runBendsOf, runCheck, runDegreesOf, runLengthOf, runMarks } from "../../functions/job/runs";
import { saddleFour, saddleShrinkOf } from "../../functions/bend/saddles";
import { cellError } from "../support/cellError";
import { expectNear } from "../support/nearVectors";

/** A card that is spoilt on purpose has no type. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
type Loose = any;
type Sets = Readonly<Record<string, string>>;
const BOTH: Sets = { ExcelApi: "1.16", CustomFunctionsRuntime: "1.4" };

/** An Office that has just these sets. */
function office(sets: Sets | undefined): void {
  const isSetSupported = (set: string, version: string) => sets?.[set] === version;
  const context = sets ? { requirements: { isSetSupported } } : undefined;
  Object.assign(globalThis, { Office: { context } });
}

beforeEach(() => office(BOTH));
afterEach(() => Reflect.deleteProperty(globalThis, "Office"));

const ROUTE = "up 36, east 60, offset 6 up at 30, ahead 40";
const OFFSET = ["east 24, offset 6 up at 30, ahead 36", "EMT", "1/2"] as const;
const SHOES = [
  ["Raceway", "Size", "Radius", "Deduct", "Springback", "Dial start"],
  ["EMT", "1/2", 4, 5, 2.5, -5],
];

const cards: [what: string, card: () => unknown][] = [
  ["an offset", () => bendCard(...OFFSET)],
  ["a stub-up with a shoe of the shop", () => bendCard(ROUTE, "EMT", "1/2", SHOES)],
  ["a three-bend saddle", () => bendCard("east 40, saddle 4 up at 45, ahead 40", "EMT", "1/2")],
  ["a sweep", () => bendCard("up 60, sweep 24, east 60", "EMT", "1/2")],
  ["a run", () => runCard(ROUTE, "EMT", "1/2", SHOES)],
  ["a run without bends", () => runCard("up 36", "EMT", "1/2")],
];

const ELBOWS: (typeof cards)[number] = ["a run with factory elbows", () => runCard("up 36, east 60", "PVC 40", "1")];

/** What each type of value needs besides its type: Microsoft, Excel.CellValue, ExcelApi 1.16. */
const NEEDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  String: { basicValue: "string" },
  Double: { basicValue: "number" },
  FormattedNumber: { basicValue: "number", numberFormat: "string" },
  Array: { elements: "object" },
};

/** Breaks of the documented rules of an entity and its card. */
function breaks(card: Loose): string[] {
  const names = Object.keys(card.properties);
  const layout = card.layouts.card;
  const fields: Loose[] = Object.values(card.properties);
  const cells = fields.flatMap((field) => (field.type === "Array" ? [field, ...field.elements.flat()] : [field]));
  const shown: string[] = layout.sections.flatMap((section: Loose) => section.properties);
  return [
    ...(card.type === "Entity" && typeof card.text === "string" && card.text !== "" ? [] : ["no entity"]),
    ...Object.keys(card).filter((key) => !/^(type|text|properties|layouts|provider)$/.test(key)),
    ...Object.keys(layout).filter((key) => !/^(title|sections)$/.test(key)),
    ...(typeof layout.title === "string" ? [] : ["no title"]),
    ...layout.sections.flatMap((section: Loose) => (section.layout === "List" ? [] : [`layout ${section.layout}`])),
    ...shown.filter((name) => !names.includes(name)).map((name) => `${name} is shown but is no field`),
    ...shown.filter((name, at) => shown.indexOf(name) !== at).map((name) => `${name} is shown twice`),
    ...names.filter((name) => !/^[A-Z][a-z]*( [a-z]+)*$/.test(name)).map((name) => `the name ${name}`),
    ...cells.flatMap((cell) => {
      const needs = { type: "string", ...(NEEDS[cell.type] ?? { known: "string" }) };
      const wrong = Object.entries(needs).filter(([key, type]) => typeof cell[key] !== type || Number.isNaN(cell[key]));
      const extra = Object.keys(cell).filter((key) => !(key in needs));
      return [...wrong.map(([key]) => key), ...extra].map((key) => `${cell.type} ${key}`);
    }),
    ...fields.flatMap(({ type, elements }) => {
      const flat = type !== "Array" || elements.every((row: unknown[]) => row.length === elements[0].length);
      return flat && !(type === "Array" && elements.flat().some((cell: Loose) => cell.type === "Array"))
        ? []
        : ["an uneven or nested array"];
    }),
  ];
}

test.each(cards)("the card of %s keeps to the documented shape, and asks for nothing from elsewhere", (_, make) => {
  const card = make();
  expect(breaks(card)).toEqual([]);
  expect(JSON.parse(JSON.stringify(card))).toEqual(card);
  expect(JSON.stringify(card)).not.toMatch(/https?:|null/);
});

test("the check of the shape sees what it should", () => {
  const spoilt = (spoil: (card: Loose) => void) => {
    const card = bendCard(...OFFSET);
    spoil(card);
    return breaks(card);
  };
  expect(spoilt((card) => delete card.properties.Gain)).toEqual(["Gain is shown but is no field"]);
  expect(spoilt((card) => (card.properties.Gain.basicValue = NaN))).toEqual(["FormattedNumber basicValue"]);
  expect(spoilt((card) => (card.properties.Marks.elements[1][0].type = "Mark"))).toContain("Mark known");
  expect(spoilt((card) => card.properties.Marks.elements[0].push(card.properties.Gain))).toEqual([
    "an uneven or nested array",
  ]);
});

const field = (card: Loose, name: string): Loose => plainArgument(card.properties[name]);

test("the fields of an offset are what the other functions give", () => {
  const card = bendCard(...OFFSET, SHOES);
  // By hand: the first bend starts a setback before its corner, 24 − 4·tan 15°, and the arrow stands 5 − (4 + 0.353) before it.
  const first = 24 - 4 * Math.tan(Math.PI / 12) - 0.647;
  expectNear(field(card, "Marks"), [first, first + offsetSpacingOf(6, 30, 4)]);
  expectNear(
    field(card, "Marks"),
    runMarks(...OFFSET, SHOES)
      .slice(1)
      .map((row) => row[5]),
  );
  expect(field(card, "Dials")).toEqual([[bendDial(30, 2.5 / 3, -5)], [30 + 2.5 / 3 - 5]]);
  expect(field(card, "Angles")).toEqual([[30], [30]]);
  expect([field(card, "Line up"), field(card, "Hook")]).toEqual([[["arrow"], ["arrow"]], [["datum"], ["datum"]]]); // prettier-ignore
  expectNear([field(card, "Gain"), field(card, "Shrink")], [2 * bendGainOf(30, 4), offsetShrinkOf(6, 30, 4)]);
  expect(["Radius", "Deduct", "Springback", "Source"].map((name) => field(card, name))).toEqual([4, 5, 2.5, "shoes row 2"]); // prettier-ignore
});

test("shrink is over the whole bend, as its own function has it", () => {
  const shrink = (step: string) => field(bendCard(`east 60, ${step}, ahead 60`, "EMT", "1/2"), "Shrink");
  expectNear(
    [
      shrink("offset 8 up 6 north at 30"),
      shrink("saddle 4 up at 45"),
      shrink("saddle 4 up over 12 at 30"),
      // By hand, three bends: 2·(4.3296·tan 11.25° − g(22.5°) − g(45°)/2).
      shrink("saddle 4 up at 45"),
    ],
    [
      offsetShrinkOf(10, 30, 4),
      2 * saddleShrinkOf(4, 45, 4),
      saddleFour(4, 12, 30, 4).at(-1)!.at(-1),
      2 * ((4 + 4 * (1 / Math.cos(Math.PI / 8) - 1)) * Math.tan(Math.PI / 16) - bendGainOf(22.5, 4) - bendGainOf(45, 4) / 2), // prettier-ignore
    ],
  );
});

test("a bend that changes direction has one mark and no shrink", () => {
  const card = bendCard("up 10, east 40", "EMT", "1/2");
  expect([field(card, "Kind"), field(card, "Dials")]).toEqual(["stub-up", 90]);
  // A stub of 10 to the corner is one of 10.353 to the back, and its mark stands 5 before that.
  expectNear([field(card, "Marks"), field(card, "Gain")], [5.353, bendGainOf(90, 4)]);
  expect(Object.keys(card.properties)).not.toContain("Shrink");
});

test("bends are counted through the run and its boxes, an offset as one", () => {
  const route = "up 36, east 60, offset 6 up at 30, ahead 40, box, south 48, down 36";
  const marks = runMarks(route, "EMT", "1/2").filter((row) => typeof row[5] === "number");
  const card = (bend: number) => bendCard(route, "EMT", "1/2", undefined, bend);
  expect([1, 2, 3].map((bend) => field(card(bend), "Kind"))).toEqual(["stub-up", "offset", "stub-up"]);
  expect([1, 2, 3].flatMap((bend) => [field(card(bend), "Marks")].flat(2))).toEqual(marks.map((row) => row[5]));
  expect(cellError(() => card(4))).toBe(
    "#VALUE! bend must be the number of a bend of the run, and the run has 3; got 4.",
  );
  expect(cellError(() => bendCard("up 36", "EMT", "1/2"))).toBe(
    "#VALUE! bend must be the number of a bend of the run, and the run has none; got 1.",
  );
});

test("the fields of a run are what the RUN functions give", () => {
  const run = [ROUTE, "EMT", "1/2", SHOES] as const;
  const card = runCard(...run);
  const names = ["Value", "Length", "Bends", "Degrees", "Check", "Pieces", "Route", "Raceway", "Size"];
  expect(names.map((name) => field(card, name))).toEqual([
    ...[runLengthOf(...run), lengthText(runLengthOf(...run)), runBendsOf(...run), runDegreesOf(...run)],
    ...[runCheck(...run), 2, ROUTE, "EMT", "1/2"],
  ]);
  const cuts = new Map(runMarks(...run).slice(1).map((row) => [row[1], [row[2]]])); // prettier-ignore
  expect(field(card, "Cut lengths")).toEqual([...cuts.values()]);
  expectNear([field(card, "Gain")], [bendGainOf(90, 4) + 2 * bendGainOf(30, 4)]);
  expect(field(runCard("up 36, east 60, south 60, up 30, west 60, up 40", "EMT", "1/2"), "Check")).toMatch(/360/);
});

/** Fields that the help of a card names: what the metadata has no place for. */
function fieldsInHelp(name: string): string[] {
  const help = readFileSync(join(__dirname, "../../docs/help", `${name.toLowerCase()}.html`), "utf8");
  const [, told] = /Fields are ([^.;]*)[.;]/.exec(help.replace(/<[^>]+>/g, "").replace(/\s+/g, " "))!;
  return told!
    .replace(/\([^)]*\)/g, "")
    .split(/,| and /)
    .map((field) => field.trim());
}

test.each([
  ["BEND.CARD", cards.filter(([what]) => !what.includes("run"))],
  ["RUN.CARD", [...cards.filter(([what]) => what.includes("run")), ELBOWS]],
])("the help of %s names every field that a card has, and no other", (name, made) => {
  const all = made.map(([, make]) => Object.keys((make() as Loose).properties));
  const told = fieldsInHelp(name);
  expect([...told].sort()).toEqual([...new Set(all.flat())].sort());
});

test("a card is a result that Excel takes as it is: its function may give any type of value", () => {
  const { functions } = JSON.parse(readFileSync(join(__dirname, "../../dist/functions.json"), "utf8")) as {
    functions: { id: string; result: Record<string, unknown>; allowCustomDataForDataTypeAny?: boolean }[];
  };
  const cardFunctions = functions.filter(({ id }) => id.endsWith(".CARD"));
  expect(cardFunctions.map(({ id }) => id).sort()).toEqual(["BEND.CARD", "RUN.CARD"]);
  for (const { result } of cardFunctions) expect([undefined, "any"]).toContain(result.type);
});

test("without cards a bend is words and a run its length", () => {
  const plain = () => [bendCard(...OFFSET), runCard("up 36, east 60", "EMT", "1/2")];
  const expected = [`offset 30°: 1' 10-1/4", 2' 10-1/4"`, 36 + 60 - bendGainOf(90, 4)];
  for (const sets of [{}, { ExcelApi: "1.16" }, { CustomFunctionsRuntime: "1.4" }, undefined] as (Sets | undefined)[]) {
    office(sets);
    expectNear([plain()[1]], [expected[1]]);
    expect(plain()[0]).toBe(expected[0]);
  }
  Reflect.deleteProperty(globalThis, "Office");
  expect(plain()[0]).toBe(expected[0]);
});

/** A card as Excel hands it over again: it adds what an older Excel would show. */
const returned = (card: Loose): Loose => ({ ...card, basicType: "Error", basicValue: "#VALUE!" });

test("a card given to another function counts as the value it stands for", () => {
  const card = returned(runCard("up 36, east 60", "EMT", "1/2"));
  const length = runLengthOf("up 36, east 60", "EMT", "1/2");
  expect(lengthInches(card)).toBe(length);
  expect(lengthText(card)).toBe(lengthText(length));
  expect(cutPlanOf([[card.text], [36]])).toEqual(cutPlanOf([[lengthText(length)], [36]]));
  const bend = returned(bendCard(...OFFSET));
  expect(plainArgument(bend)).toBe(`offset 30°: 1' 10-1/4", 2' 10-1/4"`);
  expect(cellError(() => lengthInches(bend))).toMatch(/got "offset 30°: 1' 10-1\/4", 2' 10-1\/4""/);
});
