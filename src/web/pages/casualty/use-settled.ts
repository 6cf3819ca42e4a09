import { useEffect, useState } from "react";
import { useSheet } from "./use-sheet.ts";

/** A second tap that was meant for what stood here before comes within so long [ms]. */
const SETTLING_MS = 1500;

/**
 * Whether a button has stood still for long enough to be pressed. After every line written here the sheet moves, and
 * what a button does may have changed under the finger: a double tap must not write two things.
 *
 * @param state - what else the button depends on; another device may change it
 */
export function useSettled(state = ""): boolean {
  const { last } = useSheet();
  const key = `${last?.entry.id ?? ""} ${state}`;
  const [settled, settle] = useState(key);
  useEffect(() => {
    const settling = setTimeout(() => settle(key), SETTLING_MS);
    return () => clearTimeout(settling);
  }, [key]);
  return settled === key;
}
