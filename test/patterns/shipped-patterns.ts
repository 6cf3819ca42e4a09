import { existsSync, readdirSync, readFileSync } from "node:fs";
import { loadPattern, type Beside, type Pattern } from "#kit";

const FOLDER = new URL("../../patterns/", import.meta.url);

export const SHIPPED_FILES: readonly string[] = readdirSync(FOLDER).filter((name) => name.endsWith(".yaml"));

export function shippedText(fileName: string): string {
  return readFileSync(new URL(fileName, FOLDER), "utf8");
}

/** The files beside a shipped pattern. */
export const shippedBeside: Beside = (name) => {
  const path = new URL(name, FOLDER);
  return existsSync(path) ? readFileSync(path, "utf8") : undefined;
};

export function shippedPattern(key: string): Pattern {
  return loadPattern(shippedText(`${key}.yaml`), `${key}.yaml`, shippedBeside);
}
