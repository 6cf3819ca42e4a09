import { rmSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { SHORT_PAST, TWO_YEARS, writeDemoFolder } from "./station.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Data folders of demo stations that no server uses, to be copied, by how many days their kits go back. */
    readonly demoFolders: Readonly<Record<string, string>>;
  }
}

/** Before the first journey: writes the demo station, short and whole, once for all of them. */
export default async function setup(project: TestProject): Promise<() => void> {
  const days = [SHORT_PAST, TWO_YEARS].map((past) => past.DEMO_DAYS);
  const folders = await Promise.all(days.map(writeDemoFolder));
  project.provide("demoFolders", Object.fromEntries(folders.map((folder, at) => [days[at]!, folder])));
  return () => folders.forEach((folder) => rmSync(folder, { recursive: true, force: true }));
}
