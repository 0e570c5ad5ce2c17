import { act, screen, waitFor } from "@testing-library/react";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { strings } from "../../taskpane/strings";
import { showPane } from "./support/showPane";

const FOLDER = join(__dirname, "..", "..", "taskpane");
const sources = (): { file: string; text: string }[] =>
  readdirSync(FOLDER, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => ({ file, text: readFileSync(join(FOLDER, file), "utf8") }));

test("nothing in the pane blocks the person, runs text as code, or asks another machine", () => {
  const forbidden =
    /\b(alert|confirm|prompt|eval)\(|new Function|https?:\/\/|sendBeacon|XMLHttpRequest|localStorage|sessionStorage/;
  expect(
    sources()
      .filter(({ text }) => forbidden.test(text))
      .map(({ file }) => file),
  ).toEqual([]);
});

test("only excel/ speaks to Excel", () => {
  const outside = sources().filter(({ file }) => !file.startsWith("excel"));
  expect(outside.filter(({ text }) => /\bExcel\.(run|Range|Table|Work)/.test(text)).map(({ file }) => file)).toEqual(
    [],
  );
});

/** Reads many rows in parts, so that no answer of Excel is above its limit; times one request after another. */
const inParts = [join("excel", "enterAgain.ts"), join("excel", "trial", "about.ts")];

test("no call to Excel waits inside a loop but where rows are read in parts", () => {
  const loops = /\b(for|while)\s*\([^)]*\)\s*\{[^}]*await [\w.]*sync\(/;
  expect(
    sources()
      .filter(({ text }) => loops.test(text))
      .map(({ file }) => file),
  ).toEqual(inParts);
});

test("English words stand in strings.ts, not in the views", () => {
  const wordsInJsx = />\s*[A-Z][a-z]+ [a-z]+[^<{]*</;
  const views = sources().filter(({ file }) => file.endsWith(".tsx"));
  expect(views.filter(({ text }) => wordsInJsx.test(text)).map(({ file }) => file)).toEqual([]);
});

test("every control of every view has a name, and every drawing its words", async () => {
  const { user } = await showPane();
  await user.click(await screen.findByRole("button", { name: strings.start.setUp.button }));
  await screen.findByText(strings.start.ready);
  for (const name of Object.values(strings.views)) {
    await user.click(screen.getByRole("tab", { name }));
    await waitFor(() => expect(screen.getByRole("heading", { level: 2 }).textContent).toBe(name));
    await act(async () => undefined);
    for (const role of ["button", "textbox", "combobox", "radio", "slider", "tab"]) {
      const all = screen.queryAllByRole(role).length;
      expect(`${name}: ${screen.queryAllByRole(role, { name: /\S/ }).length} ${role}`).toBe(`${name}: ${all} ${role}`);
    }
    for (const drawing of document.querySelectorAll(".rl-figure svg")) {
      expect(drawing.querySelector("title")?.textContent).not.toBe("");
      expect(drawing.querySelector("desc")?.textContent).not.toBe("");
    }
  }
});

test("the views are reached by keyboard: arrows go along the tabs, Enter opens", async () => {
  const { user } = await showPane();
  await user.tab();
  expect(document.activeElement).toBe(screen.getByRole("tab", { name: "Start" }));
  await user.keyboard("{ArrowLeft}{ArrowLeft}{ArrowRight}");
  expect(document.activeElement).toBe(screen.getByRole("tab", { name: "Bender" }));
  await user.keyboard("{Home}{ArrowRight}{Enter}");
  await waitFor(() => expect(screen.getByRole("heading", { level: 2 }).textContent).toBe("A bend"));
});

test("the cautions are on the first view", async () => {
  await showPane();
  for (const line of strings.cautions.lines) expect(await screen.findByText(line)).toBeTruthy();
});
