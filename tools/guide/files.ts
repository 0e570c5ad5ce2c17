import { readFileSync } from "node:fs";
import { join } from "node:path";
import { DRAWING_CSS } from "../../src/drawing/paper/drawingCss";
import { assembleGuide } from "./assemble";
import { functionsMarkdown, indexHtml } from "./listing";
import { pageHtml, pageName } from "./page";
import { trialExamples, TRIAL_FILE } from "./trial";

/** Every file of the guide, and what a trial of an Excel goes by, by its path seen from docs/. */
export async function guideFiles(root: string): Promise<Map<string, string>> {
  const pages = await assembleGuide(root);
  const css = readFileSync(join(root, "tools", "guide", "guide.css"), "utf8");
  return new Map([
    ["functions.md", functionsMarkdown(pages)],
    [`../${TRIAL_FILE}`, trialExamples(pages)],
    ["help/guide.css", `${css}\n${DRAWING_CSS}\n`],
    ["help/index.html", indexHtml(pages)],
    ...pages.map((page): [string, string] => {
      const family = pages.filter(({ family, doc }) => family === page.family && doc !== page.doc);
      return [
        `help/${pageName(page.doc.id)}`,
        pageHtml(
          page,
          family.map(({ doc }) => doc.id),
        ),
      ];
    }),
  ]);
}
