import { useState } from "react";
import { DRAFT_PREFIX, drafts } from "../device/lock/draft-drawer.ts";

/** Something being entered, kept on this device from the first letter until it is written down or dropped. */
export interface Kept<Value> {
  readonly value: Value;
  readonly change: (value: Value) => void;
  readonly clear: () => void;
}

/** Keeps an unfinished entry through reloads and dead batteries; under the device's own drafts. */
export function useKept<Value extends object>(name: string, empty: Value): Kept<Value> {
  const place = `${DRAFT_PREFIX}${name}`;
  const [value, setValue] = useState(() => readKept(drafts.getItem(place), empty));
  const change = (next: Value) => {
    setValue(next);
    drafts.setItem(place, JSON.stringify(next));
  };
  const clear = () => {
    setValue(empty);
    drafts.removeItem(place);
  };
  return { value, change, clear };
}

/** What was entered, and when its first letter was [ms]. */
interface Begun<Value> {
  readonly begun?: number;
  readonly value: Value;
}

/** As {@link useKept}, and forgotten so many hours after the first letter: what was left lying is for another time. */
export function useKeptFor<Value extends object>(hours: number, name: string, empty: Value): Kept<Value> {
  const [opened] = useState(() => Date.now());
  const { value: held, change, clear } = useKept<Begun<Value>>(name, { value: empty });
  const isOld = isLongAgo(held.begun, opened, hours);
  return {
    value: isOld ? empty : { ...empty, ...held.value },
    change: (value) => change({ begun: isOld ? opened : (held.begun ?? opened), value }),
    clear,
  };
}

/** Whether it was begun more than so many hours before [ms]. */
export function isLongAgo(begun: number | undefined, now: number, hours: number): boolean {
  return begun !== undefined && now - begun > hours * 3_600_000;
}

/** A draft as kept, filled up from the empty one; what cannot be read counts as none. */
export function readKept<Value extends object>(text: string | null, empty: Value): Value {
  if (text === null) return empty;
  try {
    return { ...empty, ...(JSON.parse(text) as Partial<Value>) };
  } catch (cause) {
    if (cause instanceof SyntaxError) return empty;
    throw cause;
  }
}
