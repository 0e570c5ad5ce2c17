import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

jest.setTimeout(300000);

/** Runs the command as `npm run --silent evaluate --` does; it builds first if something is older than its sources. */
function evaluate(...words: string[]) {
  const script = join(__dirname, "..", "..", "tools", "evaluate.mjs");
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...words], { encoding: "utf8" });
  return { status, stdout, stderr };
}

test("a number prints with every digit and nothing else on stdout", () => {
  // 6 / sin 30° is 12; the sine of 30° in binary is off by its last bit.
  expect(evaluate("=CONDUIT.OFFSET.SPACING(6,30)")).toMatchObject({ status: 0, stdout: "12.000000000000002\n" });
  expect(evaluate("=1/3").stdout).toBe("0.3333333333333333\n");
});

test("a table prints as tab-separated rows", () => {
  const { status, stdout } = evaluate(
    `=CONDUIT.JOB.SCHEDULE({"Run","Raceway","Size","Route";"A-1","EMT","1/2","up 10, east 20"})`,
  );
  const rows = stdout.trimEnd().split("\n");
  expect(status).toBe(0);
  expect(rows[0]!.split("\t").slice(0, 3)).toEqual(["Run", "Piece", "Cut length"]);
  expect(rows[1]!.split("\t").slice(0, 2)).toEqual(["A-1", "1"]);
});

test("an error prints its code and message, and the exit code is 1", () => {
  const { status, stdout } = evaluate("=CONDUIT.OFFSET.SPACING(6,190)");
  expect(status).toBe(1);
  expect(stdout).toMatch(/^#VALUE! angle must be .*190/);
});

test("--json gives values, rows and errors", () => {
  const { status, stdout } = evaluate("--json", "=1/4", '={1,"a";TRUE,2}', "=1/0");
  expect(status).toBe(1);
  expect(JSON.parse(stdout)).toEqual([
    0.25,
    [
      [1, "a"],
      [true, 2],
    ],
    { error: "#DIV/0!", message: "The formula divides by zero." },
  ]);
});

test("--file reads one formula a line, past comments and empty lines, and results do not meet", () => {
  const folder = mkdtempSync(join(tmpdir(), "evaluate-"));
  const file = join(folder, "formulas.txt");
  writeFileSync(file, '# first\r\n=1+1\r\n\r\n={1,2;3,4}\n=SUM(1,2)\n=REPT("ab",2)\n');
  expect(evaluate("--file", file)).toMatchObject({ status: 0, stdout: "2\n1\t2\n3\t4\n\n3\nabab\n" });
  rmSync(folder, { recursive: true });
});

test("a table longer than usual comes whole", () => {
  const { stdout } = evaluate("=SEQUENCE(1500)");
  expect(stdout.trimEnd().split("\n").at(-1)).toBe("1500");
});

test("wrong usage says how to use it, on stderr, with exit code 2", () => {
  expect(evaluate()).toMatchObject({ status: 2, stdout: "" });
  expect(evaluate("--nonsense", "=1")).toMatchObject({ status: 2, stdout: "" });
  expect(evaluate("--file").stderr).toContain("usage:");
});
