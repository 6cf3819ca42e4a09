import { InputError } from "#base";
import { SHEET_LIMITS, tooLongFile, tooSlow, type SheetTable } from "#store/sheets";
import { wrap } from "comlink";
import type { SheetDesk, SheetOutcome } from "./sheet-worker.ts";

/** How long a file may take to be read [ms]. */
const PATIENCE_MS = 30_000;

/**
 * Reads a file off the page's thread, in a worker of its own that ends with it.
 *
 * @param sheet - which sheet of a workbook; the first where absent
 * @throws InputError with what is wrong with the file; ST-219 where it takes too long
 */
export async function readSheetFile(file: File, sheet?: string): Promise<SheetTable> {
  if (file.size > SHEET_LIMITS.bytes) throw tooLongFile(file.size);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const worker = new Worker(new URL("sheet-worker.ts", import.meta.url), { type: "module" });
  try {
    const outcome = await within(wrap<SheetDesk>(worker).read(bytes, file.name, sheet), worker, file.name);
    if (outcome.kind === "refused") throw new InputError(outcome.faults);
    return outcome.table;
  } finally {
    worker.terminate();
  }
}

function within(reading: Promise<SheetOutcome>, worker: Worker, name: string): Promise<SheetOutcome> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(tooSlow(name)), PATIENCE_MS);
    worker.addEventListener("error", () => reject(tooSlow(name)));
    reading.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
