import { rmSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { writeDemoFolder } from "./station.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Data folder of a demo station that no server uses: to be copied. */
    readonly demoFolder: string;
  }
}

/** Before the first journey: writes the demo station once for all of them. */
export default async function setup(project: TestProject): Promise<() => void> {
  const folder = await writeDemoFolder();
  project.provide("demoFolder", folder);
  return () => rmSync(folder, { recursive: true, force: true });
}
