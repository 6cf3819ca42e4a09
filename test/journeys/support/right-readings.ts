import type { Locator, Page } from "playwright-core";
import { inUnit, type Dimension } from "#base";
import type { Check, Pattern } from "#kit";
import { PATIENCE_MS } from "./patience.ts";

/** What a hand that finds everything right types at the lines of a turnaround. */

const CONTROL = { timeout: PATIENCE_MS } as const;

/** A demo station's kit br-07 is on record as BR-P07. */
export function serialAt(page: Page): string {
  return `BR-P${/\/kit\/br-(\d+)/.exec(page.url())?.[1] ?? ""}`;
}

/** A lift of 2 m and full throttle where the kit has them, a rise of 1 m, the kit's own hoses, a drum. */
export async function fillRig(form: Locator): Promise<void> {
  const [lift, throttle] = [form.getByLabel("Suction lift"), form.getByText("Full throttle")];
  if (await lift.isVisible()) await lift.fill("2 m");
  await form.getByLabel("Rise", { exact: true }).fill("1 m");
  await form.getByText("The kit's own, as packed").click(CONTROL);
  if (await throttle.isVisible()) await throttle.click(CONTROL);
  await form.getByText("Timed fill of a drum").click(CONTROL);
}

/** How long a drum of 200 L takes by the curve of a shipped kit at about that height [s]. */
const FILLS: Readonly<Record<string, string>> = { "brinnet-450": "26", "ossel-200": "41", "tarvock-900": "14" };

/** A drum of 200 L filled twice in the time that the kit's curve gives. */
export async function fillDelivery(form: Locator, { id }: Pick<Pattern, "id">): Promise<void> {
  const seconds = FILLS[id]!;
  await form.getByLabel("The drum holds").fill("200 L");
  await form.getByLabel("First fill took").fill(seconds);
  await form.getByLabel("Second fill took").fill(seconds);
}

/** A reading inside the check's limits, in the unit it is asked in. */
export function rightReading({ atLeast, atMost, dimension, unit }: Extract<Check, { kind: "measure" }>): string {
  const low = atLeast ?? (atMost ?? 1) * 0.7;
  const high = atMost ?? (atLeast ?? 1) * 1.3;
  return `${Number(inUnit((low + high) / 2, unit, dimension as Dimension).toPrecision(3))} ${unit}`;
}
