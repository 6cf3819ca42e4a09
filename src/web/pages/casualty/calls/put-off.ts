import { Watched } from "#web/watched/index.ts";

/** Calls put off for a minute, by key, and when [ms]. A reload forgets them: then it calls again. */
export const putOffCalls = new Watched<ReadonlyMap<string, number>>(new Map());

/** Puts one call off from now on. */
export function putOff(key: string, now: number): void {
  putOffCalls.set(new Map([...putOffCalls.read(), [key, now]]));
}
