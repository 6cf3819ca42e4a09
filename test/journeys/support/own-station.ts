import type { Pattern } from "#kit";
import type { Page } from "playwright-core";
import type { RunningStation } from "./station.ts";

/** Sets up an empty station with one place, with the code that it printed. */
export async function setUpStation(page: Page, station: RunningStation): Promise<void> {
  await page.goto(station.url);
  const code = /with the code (\S+)/.exec(station.output())?.[1] ?? "";
  await page.getByLabel("Code from the terminal").fill(code);
  await page.getByLabel("Name of the station").fill("Harrow Sound");
  await page.getByLabel("Its first place").fill("Boat room");
  await page.getByLabel("How many kits must be ready there").fill("1");
  await page.getByLabel("Your name").fill("Nell Harrow");
  await page.getByLabel("What people call this device").fill("Nell's phone");
  const figures = [..."482913"];
  for (const figure of figures) await page.getByRole("button", { name: figure, exact: true }).click();
  await page.getByRole("button", { name: "Go on: enter it once more" }).click();
  for (const figure of figures) await page.getByRole("button", { name: figure, exact: true }).click();
  await page.getByRole("button", { name: "Set up the station" }).click();
  await page.getByRole("navigation", { name: "Station" }).waitFor();
}

interface NewKit {
  readonly pattern: Pick<Pattern, "name" | "version">;
  readonly name: string;
  readonly serial: string;
  readonly seal: string;
}

/** Takes a kit on charge at the station's one place. */
export async function enrolKit(
  page: Page,
  station: RunningStation,
  { pattern, name, serial, seal }: NewKit,
): Promise<void> {
  await page.goto(`${station.url}/enrol`);
  await page.getByText(`${pattern.name}, version ${pattern.version}`).click();
  await page.getByText("Boat room", { exact: true }).last().click();
  await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByLabel("Serial").fill(serial);
  await page.getByLabel("Number of the seal on it").fill(seal);
  await page.getByRole("button", { name: "Enrol it" }).click();
}
