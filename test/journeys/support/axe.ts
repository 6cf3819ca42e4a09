import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type axeCore from "axe-core";
import type { Page } from "playwright-core";

declare global {
  /** In a page that axe was put into. */
  var axe: typeof axeCore;
}

const SOURCE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What is looked at, and for what; the whole page and every rule unless said. */
export interface AxeLook {
  /** Selector of the part that is looked at. */
  readonly within?: string;
  /** Ids of the only rules that are asked. */
  readonly rules?: readonly string[];
}

/**
 * What axe finds on the page as it stands. It is put into the page once for as long as that is not loaded anew: the app
 * has no frames, so nothing has to be gathered from other pages.
 *
 * @returns a line for each rule that is broken, with the elements that break it
 */
export async function axeFindings(page: Page, look: AxeLook = {}): Promise<readonly string[]> {
  if (await page.evaluate(() => !("axe" in globalThis))) await page.evaluate(SOURCE);
  return page.evaluate(async ({ within, rules }) => {
    const only = rules && { runOnly: { type: "rule" as const, values: [...rules] } };
    const { violations } = await globalThis.axe.run(within ?? document, { resultTypes: ["violations"], ...only });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`);
  }, look);
}
