import { readFile } from "node:fs/promises";
import { usageError } from "./usage-error.ts";

/**
 * Reads a text file that a person named.
 *
 * @param field - what the file is for
 * @throws InputError CL-101 where it cannot be read
 */
export async function readText(file: string, field: string, remedy: string): Promise<string> {
  return readFile(file, "utf8").catch((cause: Error) => {
    throw usageError(field, cause.message, "a file that can be read", remedy);
  });
}
