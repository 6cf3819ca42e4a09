import { Held } from "./held.ts";

/** When each space is to be sounded next [ms], by {@link clockKey}, as computed on this device. */
export const soundingClocks = new Held<ReadonlyMap<string, number>>(new Map());

/** When somebody last tapped at a level that is not written down yet [ms]; undefined while none is in hand. */
export const levelInHand = new Held<number | undefined>(undefined);

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
