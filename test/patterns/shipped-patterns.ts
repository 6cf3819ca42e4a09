import { readdirSync, readFileSync } from "node:fs";
import { loadPattern, type Pattern } from "#kit";

const FOLDER = new URL("../../patterns/", import.meta.url);

export const SHIPPED_FILES: readonly string[] = readdirSync(FOLDER).filter((name) => name.endsWith(".yaml"));

export function shippedText(fileName: string): string {
  return readFileSync(new URL(fileName, FOLDER), "utf8");
}

export function shippedPattern(key: string): Pattern {
  return loadPattern(shippedText(`${key}.yaml`), `${key}.yaml`);
}
