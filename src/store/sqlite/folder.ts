import { mkdirSync, statSync } from "node:fs";
import { dirname } from "node:path";

/**
 * Makes a folder and those above it where they are missing.
 *
 * One by one from the top: Node's own `recursive` tries for ever where a folder is there but takes none, as in /proc.
 *
 * @throws the system's error where one cannot be made
 */
export function makeFolder(path: string): void {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory()) return;
  const above = dirname(path);
  if (above !== path) makeFolder(above);
  try {
    mkdirSync(path);
  } catch (cause) {
    const madeMeanwhile = statSync(path, { throwIfNoEntry: false })?.isDirectory();
    if (!madeMeanwhile) throw cause;
  }
}
