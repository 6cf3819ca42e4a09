import type { Page } from "playwright-core";
import type { RunningStation } from "./station.ts";

/** Every kept line of the station, as its export has it; asked by the signed-in page. */
export async function exportedLines(page: Page): Promise<readonly ExportedLine[]> {
  const text = await page.evaluate(() => fetch("/api/export.ndjson").then((reply) => reply.text()));
  return text
    .split("\n")
    .filter((line) => line.includes('"entry":'))
    .map((line) => (JSON.parse(line) as { readonly entry: ExportedLine }).entry);
}

export interface ExportedLine {
  readonly id: string;
  readonly place: string;
  readonly subject: string;
  readonly kind: string;
  readonly by: string;
  readonly at: string;
  readonly body: Readonly<Record<string, unknown>>;
}

/** The seal that is on the container: what a keeper would read with their own eyes. */
export async function sealOn(page: Page, kit: string): Promise<string> {
  const sealings = (await exportedLines(page)).filter(
    ({ subject, kind }) => subject === `kit:${kit}` && kind === "sealed",
  );
  return String(sealings.at(-1)?.body["seal"]);
}

/** Opens a sealed kit for the turnaround that is due, by its seal as read off the container. */
export async function openKit(page: Page, station: RunningStation, kit: string): Promise<void> {
  const seal = await sealOn(page, kit);
  await page.goto(`${station.url}/kit/${kit}/turnaround`);
  await giveSeal(page, seal);
  await page.getByRole("heading", { level: 1, name: /^Line 1\b/ }).waitFor();
}

/** Fills in the form that opens a kit. */
export async function giveSeal(page: Page, seal: string): Promise<void> {
  await page.getByLabel(/^Seal number/).fill(seal);
  await page.getByRole("button", { name: /^(Routine|First turnaround)/ }).click();
}

/** Goes to one line of the open turnaround, over the list of all lines. */
export async function goToLine(page: Page, line: number): Promise<void> {
  await page.getByRole("button", { name: /^All lines,/ }).click();
  await page
    .locator(".stage-line")
    .filter({ has: page.locator(".stage-number", { hasText: new RegExp(`^${line}$`) }) })
    .click();
  await page.getByRole("heading", { level: 1, name: new RegExp(`^Line ${line}\\b`) }).waitFor();
}

/** Closes the kit with a new seal, from wherever the runner stands. */
export async function sealWith(page: Page, seal: string): Promise<void> {
  await page.getByLabel("New seal number").fill(seal);
  await page.getByLabel("Seal number again").fill(seal);
  await page.getByRole("button", { name: `Sealed with ${seal}` }).click();
}

/** Answers what the line on the screen asks as seen right; for lines where nothing is read off. */
export async function answerRight(page: Page): Promise<void> {
  await page.locator(".answer-bar button").first().click();
}

/** Waits until this device knows of so many lines answered, by whomever. */
export async function answeredLines(page: Page, count: number): Promise<void> {
  await page.getByRole("button", { name: new RegExp(`^All lines, ${count} of`) }).waitFor();
}
