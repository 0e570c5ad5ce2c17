/** Functions that plan cuts, called as Excel calls them: with an invocation, through which a newer edit can end them. */
import { answerInSlices } from "../../functions/cell/inSlices";
import { freshModules, startOf } from "../memory/session";

const { runs, stock, issued } = startOf(60);
const invocation = (): { onCanceled: () => void } => ({ onCanceled: () => undefined });
/** A loaded machine takes its time to load the functions anew [ms]. */
jest.setTimeout(120_000);

type Call = (from: ReturnType<typeof freshModules>, invocation?: ReturnType<typeof Object>) => unknown;

const none = undefined;
const CALLS: readonly (readonly [string, Call])[] = [
  ["JOB.CUTS", (from, by) => from.jobCutsOf(runs, stock, none, none, none, none, none, by as never)],
  [
    "JOB.TAKEOFF by area",
    (from, by) => from.jobTakeoff(runs, none, none, "Area", none, none, none, none, none, none, by as never),
  ],
  [
    "JOB.TAKEOFF from stock",
    (from, by) => from.jobTakeoff(runs, none, none, none, none, none, stock, none, none, none, by as never),
  ],
  ["JOB.TRACE", (from, by) => from.jobTrace(runs, "Box", none, none, none, stock, none, by as never)],
  ["JOB.CHANGES", (from, by) => from.jobChanges(issued.slice(0, -3), runs, none, none, stock, none, none, by as never)],
  ["CUT.PLAN", (from, by) => from.cutPlanOf(lengths(), none, none, none, none, by as never)],
];

const lengths = (): unknown[][] => Array.from({ length: 30 }, (_, at) => [12 + ((at * 37) % 61) + (at % 8) / 8]);

test.each(CALLS)("%s in slices answers what it answers at once", async (_name, call) => {
  const expected = JSON.stringify(call(freshModules()));
  expect(expected.length).toBeGreaterThan(200);
  const sliced = freshModules();
  const promised = call(sliced, invocation());
  expect(promised).toBeInstanceOf(Promise);
  expect(JSON.stringify(await promised)).toBe(expected);
  // Makeshift plans that stood in while it looked ahead are gone.
  expect(JSON.stringify(call(sliced))).toBe(expected);
});

test.each(CALLS)("%s lets others go on before it has its answer", async (_name, call) => {
  const order: string[] = [];
  const promised = (call(freshModules(), invocation()) as Promise<unknown>).then(() => order.push("answered"));
  setTimeout(() => order.push("another"), 0);
  await promised;
  expect(order).toEqual(["another", "answered"]);
});

test.each(CALLS)("%s that is canceled ends, and is right when it is asked again", async (_name, call) => {
  const from = freshModules();
  const handle = invocation();
  const promised = call(from, handle) as Promise<unknown>;
  handle.onCanceled();
  await expect(promised).rejects.toMatchObject({ message: "Canceled by a newer edit." });
  expect(JSON.stringify(await (call(from, invocation()) as Promise<unknown>))).toBe(
    JSON.stringify(call(freshModules())),
  );
});

test("what cannot be answered is told as ever", async () => {
  const { jobCutsOf } = freshModules();
  const promised = jobCutsOf([["Run"]], none, none, none, none, none, none, invocation() as never);
  await expect(promised).rejects.toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("Route") as string,
  });
});

test("while a formula is only looked at in the formula bar, a plan is not made and says so at once", () => {
  let made = 0;
  const looked = { ...invocation(), isInValuePreview: true };
  const shown = answerInSlices([1], looked, () => {
    made += 1;
    return [["plan"]];
  });
  expect(shown).toEqual([["worked out once it is entered"]]);
  expect(made).toBe(0);
});
