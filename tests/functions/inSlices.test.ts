/** Functions that plan cuts, called as Excel calls them: with an invocation, through which a newer edit can end them. */
import { answerInSlices } from "../../functions/cell/inSlices";
import { freshModules, startOf } from "../memory/session";

const { runs, stock, issued } = startOf(60);
const invocation = (): { onCanceled: () => void } => ({ onCanceled: () => undefined });
/** A loaded machine takes its time to load the functions anew [ms]. */
jest.setTimeout(120_000);

type Call = (from: ReturnType<typeof freshModules>, invocation?: ReturnType<typeof Object>) => unknown;

const none = undefined;
/** With the invocation behind all that the function takes, as Excel hands it over. */
const call = (what: unknown, given: readonly unknown[], by: unknown): unknown => {
  const called = what as (...all: unknown[]) => unknown;
  return called(...given, ...Array.from({ length: called.length - 1 - given.length }, () => none), by);
};
const CALLS: readonly (readonly [string, Call])[] = [
  ["JOB.CUTS", (from, by) => call(from.jobCutsOf, [runs, stock], by)],
  ["JOB.CUTS with prices", (from, by) => call(from.jobCutsOf, [runs, stock, none, none, none, none, none, PRICES], by)],
  ["JOB.TAKEOFF by area", (from, by) => call(from.jobTakeoff, [runs, none, none, "Area"], by)],
  ["JOB.TAKEOFF from stock", (from, by) => call(from.jobTakeoff, [runs, none, none, none, none, none, stock], by)],
  ["JOB.TRACE", (from, by) => call(from.jobTrace, [runs, "Box", none, none, none, stock], by)],
  ["JOB.CHANGES", (from, by) => call(from.jobChanges, [issued.slice(0, -3), runs, none, none, stock], by)],
  ["CUT.PLAN", (from, by) => call(from.cutPlanOf, [lengths()], by)],
];

/** Couplings that would save sticks stand on plans, and on plans of the job with them. */
const PRICES = [
  ["Item", "Unit", "Price"],
  ...["1/2", "3/4", "1"].flatMap((size) => [
    [`EMT ${size} conduit`, "ft", 1],
    [`EMT ${size} set-screw coupling`, "each", 1],
  ]),
];

const lengths = (): unknown[][] => Array.from({ length: 30 }, (_, at) => [12 + ((at * 37) % 61) + (at % 8) / 8]);

test.each(CALLS)("%s in slices answers what it answers at once", async (_name, ask) => {
  const expected = JSON.stringify(ask(freshModules()));
  expect(expected.length).toBeGreaterThan(200);
  const sliced = freshModules();
  const promised = ask(sliced, invocation());
  expect(promised).toBeInstanceOf(Promise);
  expect(JSON.stringify(await promised)).toBe(expected);
  // Makeshift plans that stood in while it looked ahead are gone.
  expect(JSON.stringify(ask(sliced))).toBe(expected);
});

test("couplings are told in slices, too", async () => {
  const from = freshModules();
  const [, told] = CALLS.find(([name]) => name === "JOB.CUTS with prices")!;
  const rows = (await told(from, invocation())) as unknown[][];
  expect(rows.filter((row) => row[3] === "couplings")).not.toEqual([]);
});

test.each(CALLS)("%s lets others go on before it has its answer", async (_name, ask) => {
  const order: string[] = [];
  const promised = (ask(freshModules(), invocation()) as Promise<unknown>).then(() => order.push("answered"));
  setTimeout(() => order.push("another"), 0);
  await promised;
  expect(order).toEqual(["another", "answered"]);
});

test.each(CALLS)("%s that is canceled ends, and is right when it is asked again", async (_name, ask) => {
  const from = freshModules();
  const handle = invocation();
  const promised = ask(from, handle) as Promise<unknown>;
  handle.onCanceled();
  await expect(promised).rejects.toMatchObject({ message: "Canceled by a newer edit." });
  expect(JSON.stringify(await (ask(from, invocation()) as Promise<unknown>))).toBe(JSON.stringify(ask(freshModules())));
});

test("what cannot be answered is told as ever", async () => {
  const { jobCutsOf } = freshModules();
  const promised = jobCutsOf([["Run"]], none, none, none, none, none, none, none, invocation() as never);
  await expect(promised).rejects.toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("Route") as string,
  });
});

test("while a formula is only looked at in the formula bar, a plan is not made and says so at once", () => {
  let made = 0;
  const looked = { ...invocation(), isInValuePreview: true };
  const shown = answerInSlices<unknown[], string[][]>([1], looked, () => {
    made += 1;
    return [["plan"]];
  });
  expect(shown).toEqual([["worked out once it is entered"]]);
  expect(made).toBe(0);
});
