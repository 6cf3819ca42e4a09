import { Watched } from "#web/watched/index.ts";

/** When each space is to be sounded next [ms], by {@link clockKey}, as computed on this device. */
export const soundingClocks = new Watched<ReadonlyMap<string, number>>(new Map());

/**
 * When somebody was last at a sounding that is not written down yet, at its level or at when it was read, or wrote one
 * down that was read earlier: the next from the same paper may follow [ms]. Undefined while none is in hand.
 */
export const levelInHand = new Watched<number | undefined>(undefined);

/** Spaces, by {@link clockKey}, whose sheet is on the screen: its own answer sets their clocks, and none is asked for. */
export const shownSpaces = new Watched<readonly string[]>([]);

/** Says that a space is on the screen, until the way back is called. */
export function showSpace(key: string): () => void {
  shownSpaces.set([...shownSpaces.read(), key]);
  return () => shownSpaces.set(shownSpaces.read().filter((one) => one !== key));
}

/** One space of one casualty. */
export function clockKey(casualty: string, space: string): string {
  return `${casualty} ${space}`;
}

/** Sets the clock of one space; undefined takes it away. */
export function setClock(key: string, at: number | undefined): void {
  const clocks = new Map(soundingClocks.read());
  if (clocks.get(key) === at) return;
  if (at === undefined) clocks.delete(key);
  else clocks.set(key, at);
  soundingClocks.set(clocks);
}
