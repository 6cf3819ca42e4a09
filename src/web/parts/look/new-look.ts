/**
 * How long the words of a control must have been on the screen before it takes a tap [ms], counted from their paint.
 * Common practice: a second tap of one movement comes within half a second, the double-click time that windowing
 * systems start with. FROM MEMORY: one fixation in reading lasts about 0.25 s (Rayner, Psychological Bulletin 124(3),
 * 1998), so a look at new words and a choice take longer than this, and a person who looks is not held up.
 */
export const LOOK_MS = 600;

/** What the look goes by: frames as they are painted, and a clock that only runs forward [ms]. */
export interface Frames {
  readonly next: (then: () => void) => number;
  readonly cancel: (frame: number) => void;
  readonly now: () => number;
}

/**
 * Calls back once what was just drawn has been on the screen for a look.
 *
 * The next frame paints it; the frame after that is the first that finds it painted, and the time counts from there.
 *
 * @param frames - the window's frames and clock
 * @param isOver - called once, so long after the paint
 * @param long - how long it must have been there [ms]
 * @returns ends the waiting; nothing is called any more
 */
export function afterNewLook(frames: Frames, isOver: () => void, long = LOOK_MS): () => void {
  let [frame, painted] = [0, NaN];
  const wait = () => {
    if (frames.now() - painted >= long) isOver();
    else frame = frames.next(wait);
  };
  const onPainted = () => {
    painted = frames.now();
    frame = frames.next(wait);
  };
  frame = frames.next(() => (frame = frames.next(onPainted)));
  return () => frames.cancel(frame);
}
