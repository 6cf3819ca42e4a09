import { StoreError } from "#station";
import { open, rename, rm, type FileHandle } from "node:fs/promises";
import { usageError } from "./usage-error.ts";

/** Read and written by the account that made it, and by nobody else. */
const OWN = 0o600;
/** What a system says where a disk, a quota or a limit on files has no room. */
const FULL = ["ENOSPC", "EDQUOT", "EFBIG"];

/**
 * Writes a file beside its name, for this account alone, and renames it when it is whole and on disk: a file of that name
 * is never half of one. Where it cannot be written, nothing of it stays.
 *
 * @param file - as it was named at the terminal
 * @param write - writes all of it; {@link FileHandle.appendFile} goes on after a short write, which `write` does not
 * @throws StoreError CL-117 where the disk is full
 * @throws InputError CL-101 where the file cannot be written
 */
export async function writeWhole<T>(file: string, write: (handle: FileHandle) => Promise<T>): Promise<T> {
  const part = `${file}.part`;
  try {
    const written = await writePart(part, write);
    await rename(part, file);
    return written;
  } catch (cause) {
    await rm(part, { force: true });
    throw unwritable(cause, file);
  }
}

/** What an older call left under the name goes first, so that the rights are those of a new file. */
async function writePart<T>(part: string, write: (handle: FileHandle) => Promise<T>): Promise<T> {
  await rm(part, { force: true });
  const handle = await open(part, "wx", OWN);
  try {
    const written = await write(handle);
    await handle.sync();
    return written;
  } finally {
    await handle.close();
  }
}

/** What the system says of a file, in words; anything else as it is. */
export function unwritable(cause: unknown, file: string): unknown {
  const { code, errno, message } = cause as NodeJS.ErrnoException;
  if (code === undefined || typeof errno !== "number") return cause;
  const remedy = `Free some space, or name another file than ${file}. Nothing of it was kept.`;
  if (FULL.includes(code)) return new StoreError("CL-117", "The disk is full.", remedy, cause);
  return usageError("FILE", message, "a file that can be written", `Name another than ${file}.`);
}
