/** The checker of accessibility in a page, a frame or a part of one. */
import { readFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { Frame, Page } from "playwright-core";

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** Loads the checker into a page or a frame: once, before it is asked. */
export const loadChecker = (page: Page | Frame): Promise<unknown> => page.evaluate(axe);

/**
 * What the checker finds, of any weight: the rule, where, and what would mend it.
 *
 * @param parts selectors of what is looked at; the whole document when left out
 */
export async function findingsIn(page: Page | Frame, parts?: readonly string[]): Promise<string[]> {
  const context = parts ? JSON.stringify({ include: parts }) : "document";
  const { violations } = (await page.evaluate(`axe.run(${context}, { resultTypes: ['violations'] })`)) as AxeResults;
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`),
  );
}
