import { createContext, use, useCallback, useEffect, useRef, useState } from "react";
import { useWatched, Watched } from "#web/watched/index.ts";
import { afterNewLook, LOOK_MS, type Frames } from "./new-look.ts";
import { isTouched } from "./touched.ts";

const FRAMES: Frames = {
  next: (then) => requestAnimationFrame(then),
  cancel: (frame) => cancelAnimationFrame(frame),
  now: () => performance.now(),
};

/** Taps taken in this window. After one, things move: what stood elsewhere may come under the thumb. */
const taken = new Watched(0);

/** What a whole page shows: when it changes, every control on it waits for a new look. */
export const LookScope = createContext("");

/** A control that waits until what it says has been looked at anew. */
export interface NewLook {
  /** True while its words are too new to have been read: it takes no tap, and says so. */
  readonly isNew: boolean;
  /** A tap or key goes down on it; left out, only where the tap ends counts. */
  readonly onDown: () => void;
  /** The tap is whole: true where it began and ended on words that had been looked at. The control then waits again. */
  readonly takes: () => boolean;
}

/**
 * The one guard against a tap that was meant for what stood there before. After it appears, after its words or its page
 * change, and after each tap taken anywhere, a control waits until its words have been on the screen for a look.
 *
 * @param says - its words, and whatever else changes what it does
 * @param long - how long they must have been there [ms]; longer where the page moves by itself after a tap
 */
export function useNewLook(says: string, long = LOOK_MS): NewLook {
  const key = `${useWatched(taken)} ${use(LookScope)} ${says}`;
  const [looked, setLooked] = useState(() => (isTouched() ? undefined : key));
  const isNew = looked !== key;
  const began = useRef(true);
  useEffect(() => (isNew ? afterNewLook(FRAMES, () => setLooked(key), long) : undefined), [isNew, key, long]);
  const onDown = useCallback(() => {
    began.current = !isNew;
  }, [isNew]);
  const takes = useCallback(() => {
    const isTaken = began.current && !isNew;
    began.current = true;
    if (isTaken) taken.set(taken.read() + 1);
    return isTaken;
  }, [isNew]);
  return { isNew, onDown, takes };
}
