import { isInputError, type Fault } from "#base";
import { readSheet, type SheetTable } from "#store/sheets";
import { expose } from "comlink";

/** What crosses from the worker: errors lose their faults on the way, so they travel as what they are. */
export type SheetOutcome =
  | { readonly kind: "read"; readonly table: SheetTable }
  | { readonly kind: "refused"; readonly faults: readonly Fault[] };

/** Files of spreadsheets, read off the page's own thread and without a network. */
class SheetDesk {
  async read(bytes: Uint8Array, name: string, sheet?: string): Promise<SheetOutcome> {
    try {
      return { kind: "read", table: await readSheet(bytes, name, sheet) };
    } catch (cause) {
      if (isInputError(cause)) return { kind: "refused", faults: cause.faults };
      throw cause;
    }
  }
}

export type { SheetDesk };

expose(new SheetDesk());
