import { useNewLook } from "#web/parts/look/use-new-look.ts";
import { useSheet } from "./use-sheet.ts";

/** The sheet moves by itself after a line was written: a second tap may come so late and still mean the first [ms]. */
const SETTLING_MS = 1500;

/**
 * Whether a button has stood still for long enough to be pressed. After every line written here the sheet moves, and
 * what a button does may have changed under the finger: a double tap must not write two things. While a line is being
 * written nothing has stood still: a tap would be lost, so the button says that it takes none.
 *
 * @param state - what else the button depends on; another device may change it
 */
export function useSettled(state = ""): boolean {
  const { last, isBusy } = useSheet();
  const { isNew } = useNewLook(`${last?.entry.id ?? ""} ${isBusy} ${state}`, SETTLING_MS);
  return !isNew && !isBusy;
}
